#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "core/wording/gone_words.h"
#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// What was played and what was noted about the box, newest first. Nothing about days without play.
class NotebookViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(int count READ count NOTIFY loaded FINAL)
    /// There is more to read of goals: others, ended ones, all that was said of them.
    Q_PROPERTY(bool knowsGoals READ knowsGoals NOTIFY loaded FINAL)
    Q_PROPERTY(QString goal READ goal NOTIFY loaded FINAL) ///< Empty: none agreed.
    Q_PROPERTY(QString goalNow READ goalNow NOTIFY loaded FINAL)
    Q_PROPERTY(QString goalNext READ goalNext NOTIFY loaded FINAL)
    Q_PROPERTY(QString goalDates READ goalDates NOTIFY loaded FINAL)

public:
    enum Role { HeadingRole = Qt::UserRole, NameRole, DrawingRole, NoticedRole, NoteRole };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] bool knowsGoals() const { return m_knowsGoals; }
    [[nodiscard]] QString goal() const;
    [[nodiscard]] QString goalNow() const;
    [[nodiscard]] QString goalNext() const;
    [[nodiscard]] QString goalDates() const;

signals:
    void loaded();

private:
    void load();
    [[nodiscard]] const child::Goal *firstGoal() const;
    [[nodiscard]] QString noteOf(const play::Play &play) const;
    [[nodiscard]] wording::PieceNames namesOf(const ItemId &item) const;
    [[nodiscard]] QString headingOf(int row) const;
    [[nodiscard]] QVariant dataOf(const play::Play &play, int role) const;
    [[nodiscard]] QVariant dataOf(const usecase::BoxNote &note, int role) const;

    /// A play, or something noted about the box.
    struct Entry {
        DayPart when;
        std::int64_t ms = 0;
        const play::Play *play = nullptr;
        const usecase::BoxNote *note = nullptr;
    };

    Household *m_household = nullptr;
    bool m_knowsGoals = false;
    std::optional<usecase::Family> m_family;
    std::vector<usecase::BoxNote> m_notes;
    std::vector<Entry> m_entries; ///< Into the two above, newest first.
};

} // namespace lidlark::mobile

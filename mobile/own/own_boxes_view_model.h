#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/own_desk.h"
#include "mobile/bridge/own_item_desk.h"

#include <set>

namespace lidlark::mobile {

/// Child by child: what an own activity or thing means for the box and the home, whether it is
/// there, and who is chosen to have it.
class OwnBoxesViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString entry READ entry WRITE setEntry REQUIRED)
    /// It is a thing, and no activity.
    Q_PROPERTY(bool thing READ isThing WRITE setThing FINAL)
    /// Nothing is asked of the gate for what is still being written. Read whenever this changes.
    Q_PROPERTY(bool asked READ isAsked WRITE setAsked REQUIRED)
    Q_PROPERTY(int chosen READ chosen NOTIFY loaded FINAL)
    /// Those for whom nothing changes: "Fin, Lewis".
    Q_PROPERTY(QString unchanged READ unchanged NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ChildRole = Qt::UserRole,
        NoteRole,    ///< What the gate says, and how it stands in the box.
        ChangesRole, ///< What it changes there; empty: nothing.
        InBoxRole,
        ChosenRole ///< To have it as it is written.
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString entry() const { return m_entry; }
    void setEntry(const QString &entry);
    [[nodiscard]] bool isThing() const { return m_thing; }
    void setThing(bool thing);
    [[nodiscard]] bool isAsked() const { return m_asked; }
    void setAsked(bool asked);
    [[nodiscard]] int chosen() const { return static_cast<int>(m_chosen.size()); }
    [[nodiscard]] QString unchanged() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    Q_INVOKABLE void choose(const QString &child, bool chosen);
    /// To all that are chosen. @returns whether every box has it.
    Q_INVOKABLE bool send();
    Q_INVOKABLE void withdraw(const QString &child);

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    struct Row {
        QString child;
        QString note;
        QString changes;
        bool inBox = false;
    };
    void load();
    void answer(const Outcome &outcome);
    Result<std::vector<Row>> activityRows();
    Result<std::vector<Row>> thingRows();
    [[nodiscard]] QString noteOf(const usecase::OwnFit &fit, const std::string &text) const;
    [[nodiscard]] QString changesOf(const usecase::OwnReach &reach) const;
    [[nodiscard]] QString hiddenWords(const usecase::BoxRecheck &gate) const;
    [[nodiscard]] QString namesOf(const std::vector<ActivityId> &activities) const;

    Household *m_household = nullptr;
    QString m_entry;
    bool m_thing = false;
    bool m_asked = false;
    std::vector<Row> m_rows;
    std::set<QString> m_chosen;
    QString m_problem;
};

} // namespace lidlark::mobile

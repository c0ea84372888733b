#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/play_in_hand.h"
#include "mobile/bridge/sitting.h"

#include <map>
#include <optional>
#include <set>

namespace lidlark::mobile {

/// Seven days from today on, a row each. It decides nothing: the plan comes from the core, and what
/// an adult changes by hand is planned around.
class WeekViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(lidlark::mobile::Sitting *sitting MEMBER m_sitting REQUIRED)
    Q_PROPERTY(lidlark::mobile::PlayInHand *playInHand MEMBER m_playInHand REQUIRED)
    /// Some day is still as the plan has it.
    Q_PROPERTY(bool somethingOpen READ somethingOpen NOTIFY refreshed FINAL)
    /// Some day was kept or left free by hand.
    Q_PROPERTY(bool somethingSaid READ somethingSaid NOTIFY refreshed FINAL)
    /// How far the plan may be from the best there is; empty: it is the best.
    Q_PROPERTY(QString gap READ gap NOTIFY refreshed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY refreshed FINAL)

public:
    enum Role {
        DayWordsRole = Qt::UserRole,
        NameRole,
        NoteRole,
        DrawingRole,
        KeptRole,
        FreeRole,
        TodayRole,
        PlayedRole
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] bool somethingOpen() const;
    [[nodiscard]] bool somethingSaid() const;
    [[nodiscard]] QString gap() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void refresh();
    Q_INVOKABLE void keep(int row);
    Q_INVOKABLE void leaveFree(int row);
    /// Gives the day back to the plan.
    Q_INVOKABLE void giveBack(int row);
    /// The next best for that day, kept there; none that was there already.
    Q_INVOKABLE void another(int row);
    Q_INVOKABLE void keepAll();
    Q_INVOKABLE void giveAllBack();
    /// Begins what is planned for today. @returns false when it does not fit who is here now.
    Q_INVOKABLE bool begin();

signals:
    void refreshed();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    [[nodiscard]] const usecase::WeekDay *dayAt(int row) const;
    [[nodiscard]] QString dayWordsOf(int row) const;
    [[nodiscard]] QString nameOf(const usecase::WeekDay &day) const;
    [[nodiscard]] QString noteOf(const usecase::WeekDay &day) const;
    void say(int row, const play::DayWish &wish);
    void after(const Outcome &outcome);

    Household *m_household = nullptr;
    Sitting *m_sitting = nullptr;
    PlayInHand *m_playInHand = nullptr;
    std::optional<usecase::Week> m_week;
    std::map<Day, std::set<ActivityId>> m_seen; ///< What stood on a day and was swapped away.
    QString m_problem;
};

} // namespace lidlark::mobile

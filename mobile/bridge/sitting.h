#pragma once

#include <QJsonObject>
#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "core/usecase/suggest_today.h"

#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// What an adult has said about this sitting: who is in the room, which life words are on, what the
/// kite is doing. Kept for the day and part of day, so that a dead battery does not ask again; then
/// forgotten. The screens Today, Kite and Choose share one.
class Sitting : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by main")
    /// "resting", "steady", "whirling", "clouds", "bag", or empty: not asked.
    Q_PROPERTY(QString kite READ kite NOTIFY changed FINAL)
    /// The tap is from the last minute: it can still be changed without a word.
    Q_PROPERTY(bool kiteFromAdult READ kiteFromAdult NOTIFY changed FINAL)
    /// After three "not now" the kite waits in the corner (checkin.md 6).
    Q_PROPERTY(bool kiteInCorner READ kiteInCorner NOTIFY changed FINAL)
    /// Turned off for good by the adult.
    Q_PROPERTY(bool kiteOff READ kiteOff WRITE setKiteOff NOTIFY changed FINAL)
    /// A kite was shown before play, so that an after-kite would make a pair.
    Q_PROPERTY(bool kiteToComplete READ kiteToComplete NOTIFY changed FINAL)
    Q_PROPERTY(bool roomAnswered READ roomAnswered NOTIFY changed FINAL)
    /// Minutes the family has, 0: no limit.
    Q_PROPERTY(int minutes READ minutes WRITE setMinutes NOTIFY changed FINAL)

public:
    explicit Sitting(Household *household, QObject *parent = nullptr);

    [[nodiscard]] QString kite() const;
    [[nodiscard]] bool kiteFromAdult() const { return m_fromAdult; }
    [[nodiscard]] bool kiteInCorner() const;
    [[nodiscard]] bool kiteOff() const { return m_kiteOff; }
    void setKiteOff(bool off);
    [[nodiscard]] bool kiteToComplete() const
    {
        return !m_kiteOff && !m_checkInId.empty() && m_kite && *m_kite != checkin::Kite::Bag;
    }
    [[nodiscard]] bool roomAnswered() const { return m_room.present.has_value(); }
    [[nodiscard]] int minutes() const { return m_minutes; }
    void setMinutes(int minutes);

    /// Keeps the tap (or changes the last one) as a check-in. A bag is a check-in too.
    /// @param fromAdult the adult's guess, kept apart.
    Q_INVOKABLE void showKite(const QString &kite, bool fromAdult);
    /// Asked and gone without an answer: as good as "not now".
    Q_INVOKABLE void skipKite();
    /// "That wasn't me."
    Q_INVOKABLE void removeKite();
    /// The after-kite of a play.
    Q_INVOKABLE void showKiteAfter(const QString &kite, const QString &activityId);

    [[nodiscard]] const safety::Room &room() const { return m_room; }
    void setRoom(const safety::Room &room);
    [[nodiscard]] const rotation::Filters &filters() const { return m_filters; }
    void setFilters(const rotation::Filters &filters);

    /// The question for the menu as it stands.
    [[nodiscard]] usecase::MenuRequest request() const;

signals:
    void changed();
    void failed(const QString &problem);

private:
    void load();
    void restore(const QJsonObject &object);
    void keep();
    [[nodiscard]] std::string key() const;

    Household *m_household;
    safety::Room m_room;
    rotation::Filters m_filters;
    std::optional<checkin::Kite> m_kite;
    std::string m_checkInId;
    bool m_fromAdult = false;
    bool m_kiteOff = false;
    int m_notNows = 0;
    int m_minutes = 0;
    DayPart m_when;
};

} // namespace lidlark::mobile

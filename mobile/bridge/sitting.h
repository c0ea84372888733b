#pragma once

#include <QJsonObject>
#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "core/usecase/suggest_today.h"

#include "mobile/bridge/household.h"
#include "mobile/bridge/kite_tap.h"

#include <optional>
#include <set>

namespace lidlark::mobile {

/// What an adult has said about this sitting: who is in the room, which life words are on, what the
/// kite is doing. Kept for the day and part of day, so that a dead battery does not ask again; then
/// forgotten. The screens Today, Kite and Choose share one.
class Sitting : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by main")
    /// What the child showed: "resting", "steady", "whirling", "clouds", "bag"; empty: not asked.
    Q_PROPERTY(QString kite READ kite NOTIFY changed FINAL)
    /// The child showed it a few minutes ago, and not before this start.
    Q_PROPERTY(bool kiteJustNow READ kiteJustNow NOTIFY changed FINAL)
    /// What the child showed before the play that is just done.
    Q_PROPERTY(QString kiteBefore READ kiteBefore NOTIFY changed FINAL)
    /// The adult's own guess, kept apart; never shown in a child's view.
    Q_PROPERTY(QString guess READ guess NOTIFY changed FINAL)
    /// After three "not now" the kite waits in the corner (checkin.md 6).
    Q_PROPERTY(bool kiteInCorner READ kiteInCorner NOTIFY changed FINAL)
    /// Turned off for good by the adult.
    Q_PROPERTY(bool kiteOff READ kiteOff WRITE setKiteOff NOTIFY changed FINAL)
    /// Drawings show this child's left hand at work. Said on this phone, kept with the child.
    Q_PROPERTY(
        bool childLeftHanded READ childLeftHanded WRITE setChildLeftHanded NOTIFY changed FINAL)
    /// The child showed a kite before play, so that an after-kite would make a pair.
    Q_PROPERTY(bool kiteToComplete READ kiteToComplete NOTIFY changed FINAL)
    Q_PROPERTY(bool roomAnswered READ roomAnswered NOTIFY changed FINAL)
    /// Minutes the family has, 0: no limit.
    Q_PROPERTY(int minutes READ minutes WRITE setMinutes NOTIFY changed FINAL)
    /// The notice "not yet checked by a clinician" was put away.
    Q_PROPERTY(bool noticeRead READ noticeRead NOTIFY changed FINAL)
    /// "Every kite does all of these." is due with the child's last tap: the first ever, and every
    /// tenth from there (checkin.md 3.1).
    Q_PROPERTY(bool everyKiteDue READ everyKiteDue NOTIFY changed FINAL)
    /// An adult says that the box is not where everybody thinks it is: household and no-box offers
    /// for today, on this phone alone; "box is here" forgets it (job.md scenario 12).
    Q_PROPERTY(bool boxNotHere READ boxNotHere WRITE setBoxNotHere NOTIFY changed FINAL)
    /// The four kite breaths were begun in this sitting; once is enough (checkin.md 5).
    Q_PROPERTY(bool breathsBegun READ breathsBegun NOTIFY changed FINAL)

public:
    explicit Sitting(Household *household, QObject *parent = nullptr);

    [[nodiscard]] QString kite() const;
    [[nodiscard]] bool kiteJustNow() const;
    [[nodiscard]] QString kiteBefore() const;
    [[nodiscard]] QString guess() const;
    [[nodiscard]] bool kiteInCorner() const;
    [[nodiscard]] bool kiteOff() const { return m_kiteOff; }
    void setKiteOff(bool off);
    [[nodiscard]] bool childLeftHanded() const { return m_childLeftHanded; }
    void setChildLeftHanded(bool leftHanded);
    [[nodiscard]] bool kiteToComplete() const;
    [[nodiscard]] bool roomAnswered() const { return m_room.present.has_value(); }
    [[nodiscard]] int minutes() const { return m_minutes; }
    void setMinutes(int minutes);
    [[nodiscard]] bool noticeRead() const { return m_noticeRead; }
    [[nodiscard]] bool everyKiteDue() const { return m_everyKiteDue; }
    [[nodiscard]] bool boxNotHere() const { return m_boxNotHere; }
    void setBoxNotHere(bool notHere);
    [[nodiscard]] bool breathsBegun() const { return m_breathsBegun; }

    /// Keeps the tap as a check-in; within a minute of the last one it takes its place. A bag is a
    /// check-in too.
    /// @param fromAdult the adult's guess, kept apart.
    Q_INVOKABLE void showKite(const QString &kite, bool fromAdult);
    /// Asked and gone without an answer: as good as "not now".
    Q_INVOKABLE void skipKite();
    /// "That wasn't me": the child's tap goes, everywhere.
    Q_INVOKABLE void removeKite();
    /// Every kite the child has shown goes, everywhere; guesses and pairs too.
    Q_INVOKABLE void forgetKites();
    /// The after-kite of a play.
    Q_INVOKABLE void showKiteAfter(const QString &kite, const QString &activityId);
    /// The after-kite was offered and left alone: it is not offered again for this tap.
    Q_INVOKABLE void leaveKiteAfter();
    Q_INVOKABLE void beginBreaths();

    [[nodiscard]] const safety::Room &room() const { return m_room; }
    void setRoom(const safety::Room &room);
    [[nodiscard]] const rotation::Filters &filters() const { return m_filters; }
    void setFilters(const rotation::Filters &filters);
    Q_INVOKABLE void readNotice();

    /// Today's menu as the sitting stands, without what "three others" has put aside.
    [[nodiscard]] Result<usecase::TodayMenu> menu() const;
    /// The offers of @p menu stand on the screen.
    void shown(const usecase::TodayMenu &menu) const;
    /// "Three others": the offers of @p menu stay away until something else is said, or until
    /// nothing would be left.
    void setAside(const usecase::TodayMenu &menu);
    [[nodiscard]] bool hasSetAside() const { return !m_aside.empty(); }
    /// Something at random; never the same twice running while there is another.
    [[nodiscard]] Result<safety::Admitted> anything();

    /// Forgets what has grown old, after the app has slept through a part of the day.
    Q_INVOKABLE void freshen();

signals:
    void changed();
    void failed(const QString &problem);

private:
    void load();
    void restore(const QJsonObject &object);
    void keep();
    void say();
    [[nodiscard]] std::string key() const;
    [[nodiscard]] usecase::MenuRequest request() const;
    [[nodiscard]] std::int64_t nowMs() const;
    std::optional<KiteTap> newTap(checkin::Kite kite, checkin::ShownBy by);
    bool report(const Outcome &outcome);
    void countNotNow();
    void countTowardsEveryKite();

    Household *m_household;
    safety::Room m_room;
    rotation::Filters m_filters;
    std::optional<KiteTap> m_shown; ///< By the child.
    std::optional<KiteTap> m_guess; ///< By the adult.
    std::set<ActivityId> m_aside;
    ActivityId m_lastAnything;
    DayPart m_when;
    bool m_kiteOff = false;
    bool m_childLeftHanded = false;
    bool m_noticeRead = false;
    int m_notNows = 0; ///< In a row, one a part of the day.
    std::optional<DayPart> m_lastNotNow;
    int m_minutes = 0;
    int m_tapsToEveryKite = 0; ///< Taps that pass without the words; 0: due with the next.
    bool m_everyKiteDue = false;
    bool m_breathsBegun = false;
    bool m_boxNotHere = false;
};

} // namespace lidlark::mobile

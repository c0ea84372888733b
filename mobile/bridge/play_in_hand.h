#pragma once

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "core/safety/admit.h"
#include "core/usecase/closing_count.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/progress.h"

#include "mobile/bridge/household.h"

#include <map>
#include <optional>

namespace lidlark::mobile {

/// The play that is going on with the current child: begun, stepped through, put back. Every call
/// that changes something has kept it on the phone before it returns, so a dead battery loses no
/// acknowledged tap. The screens Play and Put back share one.
class PlayInHand : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by main")
    Q_PROPERTY(bool active READ active NOTIFY changed FINAL)
    Q_PROPERTY(QString activityId READ activityId NOTIFY changed FINAL)
    Q_PROPERTY(QString activityName READ activityName NOTIFY changed FINAL)
    Q_PROPERTY(bool puttingBack READ puttingBack NOTIFY changed FINAL)
    Q_PROPERTY(int step READ step NOTIFY changed FINAL)
    /// The play is from another part of the day: ask what became of it instead of going on
    /// (job.md scenario 6).
    Q_PROPERTY(bool fromBefore READ fromBefore NOTIFY changed FINAL)
    /// "yesterday", "Saturday": for that question.
    Q_PROPERTY(QString beganWhen READ beganWhen NOTIFY changed FINAL)
    Q_PROPERTY(bool nothingFromBox READ nothingFromBox NOTIFY changed FINAL)
    /// Why the play cannot end yet: small parts are counted home first, where a small child lives
    /// (core/usecase/closing_count.h). Empty: it can.
    Q_PROPERTY(QString countFirst READ countFirst NOTIFY changed FINAL)
    /// "Keep the box out of Mirren's reach."; empty: no small child lives here.
    Q_PROPERTY(QString outOfReach READ outOfReach NOTIFY changed FINAL)
    /// "Long band: look along its whole length ...": what is looked over before the play.
    Q_PROPERTY(QList<QString> lookFirst READ lookFirst NOTIFY changed FINAL)

public:
    explicit PlayInHand(Household *household, QObject *parent = nullptr);

    [[nodiscard]] bool active() const { return m_progress.has_value(); }
    [[nodiscard]] QString activityId() const;
    [[nodiscard]] QString activityName() const;
    [[nodiscard]] bool puttingBack() const;
    [[nodiscard]] int step() const;
    [[nodiscard]] bool fromBefore() const;
    [[nodiscard]] QString beganWhen() const;
    [[nodiscard]] bool nothingFromBox() const;
    [[nodiscard]] QString countFirst() const { return m_countFirst; }
    [[nodiscard]] QString outOfReach() const { return m_outOfReach; }
    [[nodiscard]] QStringList lookFirst() const { return m_lookFirst; }

    /// Begins what the gate has let through. @returns false with `failed` when it could not be
    /// kept.
    bool begin(const safety::Admitted &admitted);

    Q_INVOKABLE bool goToStep(int step);
    /// A tap on "easier" or "harder": that way, its next line, or as written again.
    Q_INVOKABLE bool tapGrading(const QString &way);
    [[nodiscard]] play::GradingUsed grading() const;
    [[nodiscard]] usecase::GradingFrom gradingFrom() const;
    /// From Play to Put back, and the other way round.
    Q_INVOKABLE bool startPuttingBack();
    Q_INVOKABLE bool goOnPlaying();
    /// A piece came home (the child's tray). @p pieces: how many are home now.
    bool tapHome(const ItemId &item, int pieces);

    /// What became of one item of this play; replaces what was said of it. All zero: all home.
    bool nameExceptions(const ItemId &item, const box::Exceptions &exceptions);
    /// As written so far, for the current play.
    [[nodiscard]] std::map<ItemId, box::Exceptions> exceptions() const;

    /// What went out of the box, and how much of it is home.
    [[nodiscard]] std::vector<usecase::HomeCount> homeCounts() const;

    /// What had to be looked over is good.
    Q_INVOKABLE bool lookedOver();
    /// The one big yes. Named exceptions stay.
    Q_INVOKABLE bool allBack();
    /// "We stopped early."
    Q_INVOKABLE bool stop();
    /// "asked-again", "needed-help", "found-own-way" for the play that was just put back.
    Q_INVOKABLE bool notice(const QString &phrase);

    /// What went out, swaps applied.
    [[nodiscard]] const std::vector<catalogue::ItemUse> &items() const;
    [[nodiscard]] const std::map<ItemId, ItemId> &swaps() const;
    /// Cautions and supervision of the form that was admitted.
    [[nodiscard]] catalogue::TagSet cautions() const;
    [[nodiscard]] catalogue::Supervision supervision() const;
    [[nodiscard]] const catalogue::Activity *activity() const;
    [[nodiscard]] Household *household() const { return m_household; }

    /// Reads again what this phone has kept (after a change from elsewhere, or another child).
    Q_INVOKABLE void reload();

signals:
    void changed();
    void failed(const QString &problem);
    /// The play has ended; the last one can still be noticed about.
    void ended(const QString &activityId);

private:
    bool keep(const usecase::Progress &progress);
    void mindTheFamily();
    void mindTheCounting(const usecase::Family &family);
    bool report(const Outcome &outcome);
    bool end(bool stopped);
    void forget();
    void keepGrading();

    Household *m_household;
    BoxId m_box;
    std::optional<usecase::Progress> m_progress;
    PlayId m_lastPlay;
    QString m_countFirst;
    QString m_outOfReach;
    QStringList m_lookFirst;
    std::vector<ItemId> m_toLookOver;
};

} // namespace lidlark::mobile

#pragma once

#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include "core/usecase/remind.h"

#include "mobile/bridge/household.h"
#include "mobile/platform/notifier.h"

namespace lidlark::mobile {

/// The phone's one quiet reminder a day (job.md F10), kept on the phone and with no family. While
/// the app runs it asks by itself whether it is due.
class Reminders : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by main")
    Q_PROPERTY(bool on READ on WRITE setOn NOTIFY changed FINAL)
    /// "after-bath", "after-tea", "before-bed", "after-school", "own".
    Q_PROPERTY(QString hook READ hook WRITE setHook NOTIFY changed FINAL)
    Q_PROPERTY(QString ownLine READ ownLine NOTIFY changed FINAL)
    /// Quarter hours since midnight, 0 to 95.
    Q_PROPERTY(int quarter READ quarter WRITE setQuarter NOTIFY changed FINAL)
    Q_PROPERTY(QString timeText READ timeText NOTIFY changed FINAL) ///< "18:30".
    /// What stands on the locked screen.
    Q_PROPERTY(QString line READ line NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    /// Somebody on this phone shows it; true until it is known.
    Q_PROPERTY(bool canBeShown READ canBeShown NOTIFY changed FINAL)

public:
    /// @param notifier outlives this.
    Reminders(Household *household, Notifier *notifier, QObject *parent = nullptr);

    [[nodiscard]] bool on() const { return m_reminder.on; }
    void setOn(bool on);
    [[nodiscard]] QString hook() const;
    /// Its usual time comes with it.
    void setHook(const QString &hook);
    [[nodiscard]] QString ownLine() const;
    [[nodiscard]] int quarter() const;
    void setQuarter(int quarter);
    [[nodiscard]] QString timeText() const;
    [[nodiscard]] QString line() const;
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] bool canBeShown() const { return m_canBeShown; }

    /// @returns false with `problem` said: it is too long, or it names somebody.
    Q_INVOKABLE bool keepOwnLine(const QString &line);
    /// Asks the phone anew whether it can show anything.
    Q_INVOKABLE void look() { m_notifier->ask(); }
    /// Says the line if it is due now, and asks again when it may be.
    void check();

signals:
    void changed();

private:
    bool keep(const reminder::Reminder &reminder);
    void askAgain(std::optional<std::int64_t> at);
    void told(bool shown);

    Household *m_household;
    Notifier *m_notifier;
    reminder::Reminder m_reminder;
    QTimer m_timer;
    QString m_problem;
    bool m_canBeShown = true;
};

} // namespace lidlark::mobile

#include "mobile/bridge/reminders.h"

#include <QLocale>

#include "core/base/instant.h"
#include "core/wording/reminder_words.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

constexpr int minutesInAQuarter = 15;
constexpr int lastQuarter = 95;
/// A clock may be set, and a phone may sleep: no wait is longer.
constexpr std::int64_t longestWaitMs = 10 * msPerMinute;

} // namespace

Reminders::Reminders(Household *household, Notifier *notifier, QObject *parent)
    : QObject(parent), m_household(household), m_notifier(notifier)
{
    m_timer.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &Reminders::check);
    connect(notifier, &Notifier::said, this, &Reminders::told);
    connect(notifier, &Notifier::answered, this, [this](bool available) {
        m_canBeShown = available;
        emit changed();
    });
    if (household->phone() == nullptr)
        return;
    if (const auto kept = usecase::reminderOf(*household->phone()))
        m_reminder = *kept;
    askAgain(household->clock().nowMs());
}

QString Reminders::hook() const
{
    return fromCore(reminder::hookNames.of(m_reminder.hook));
}

QString Reminders::ownLine() const
{
    return fromCore(m_reminder.ownLine);
}

int Reminders::quarter() const
{
    return m_reminder.minuteOfDay / minutesInAQuarter;
}

QString Reminders::timeText() const
{
    return numerals(fromCore(wording::timeText({m_reminder.minuteOfDay})));
}

QString Reminders::line() const
{
    return translated(wording::reminderLine(m_reminder, m_household->namesOnPhone()));
}

void Reminders::setOn(bool on)
{
    reminder::Reminder reminder = m_reminder;
    reminder.on = on;
    keep(reminder);
    if (on)
        look();
}

void Reminders::setHook(const QString &hook)
{
    const auto chosen = reminder::hookNames.parse(toCore(hook));
    if (!chosen || *chosen == m_reminder.hook)
        return;
    reminder::Reminder reminder = m_reminder;
    reminder.hook = *chosen;
    reminder.minuteOfDay = reminder::usualMinute(*chosen);
    keep(reminder);
}

void Reminders::setQuarter(int quarter)
{
    reminder::Reminder reminder = m_reminder;
    reminder.minuteOfDay = qBound(0, quarter, lastQuarter) * minutesInAQuarter;
    keep(reminder);
}

bool Reminders::keepOwnLine(const QString &line)
{
    reminder::Reminder reminder = m_reminder;
    reminder.ownLine = toCore(line.trimmed());
    return keep(reminder);
}

bool Reminders::keep(const reminder::Reminder &reminder)
{
    if (m_household->phone() == nullptr)
        return false;
    const std::vector<std::string> names = m_household->namesOnPhone();
    const Outcome done = usecase::keepReminder(*m_household->phone(), reminder, names);
    m_problem.clear();
    if (done) {
        m_reminder = reminder;
    } else if (reminder::namesSomebody(reminder.ownLine, names)) {
        m_problem =
            tr("It stands on a locked screen, so it names nobody. Write it without a name.");
    } else {
        m_problem = m_household->sentenceFor(done.error());
    }
    emit changed();
    askAgain(m_household->clock().nowMs());
    return done.ok();
}

void Reminders::check()
{
    if (m_household->phone() == nullptr)
        return;
    const auto answer = usecase::takeTurnToRemind(*m_household->phone(), m_household->families(),
                                                  m_household->clock());
    if (answer.due)
        m_notifier->say(line());
    askAgain(answer.nextMs);
}

void Reminders::told(bool shown)
{
    if (!shown && m_household->phone() != nullptr)
        (void)usecase::giveTurnBack(*m_household->phone());
    m_canBeShown = shown;
    emit changed();
}

void Reminders::askAgain(std::optional<std::int64_t> at)
{
    m_timer.stop();
    if (!m_reminder.on || !at)
        return;
    const std::int64_t wait = *at - m_household->clock().nowMs();
    m_timer.start(static_cast<int>(qBound(std::int64_t{0}, wait, longestWaitMs)));
}

} // namespace lidlark::mobile

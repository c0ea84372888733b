#include "core/usecase/remind.h"

#include "core/base/utf8.h"
#include "core/journal/fields.h"
#include "core/store/recording.h"
#include "core/usecase/families.h"

#include <nlohmann/json.hpp>

namespace lidlark::usecase {

namespace {

constexpr auto reminderKey = "phone.reminder";
constexpr auto saidKey = "phone.reminder-said";
constexpr int lastMinute = 24 * 60 - 1;

std::string textOf(const reminder::Reminder &reminder)
{
    return nlohmann::json{{"on", reminder.on},
                          {"hook", reminder::hookNames.of(reminder.hook)},
                          {"own-line", reminder.ownLine},
                          {"minute", reminder.minuteOfDay}}
        .dump();
}

reminder::Reminder reminderFrom(const std::string &text)
{
    const journal::Fields fields(text);
    reminder::Reminder reminder;
    reminder.on = fields.isTrue("on");
    reminder.hook = reminder::hookNames.parse(fields.text("hook").value_or(""))
                        .value_or(reminder::Hook::AfterBath);
    reminder.ownLine = fields.text("own-line").value_or("");
    reminder.minuteOfDay =
        fields.whole("minute", 0, lastMinute).value_or(reminder::usualMinute(reminder.hook));
    return reminder;
}

std::optional<Day> lastSaid(store::Database &phone)
{
    const auto said = store::DeviceRepository(phone).localState(saidKey);
    return said && *said ? dayFromText(**said) : std::nullopt;
}

/// Written within one transaction with the question, which another program may have asked too.
bool writeSaid(store::Database &phone, const reminder::RemindQuestion &asked, Day today)
{
    auto transaction = store::Transaction::begin(phone);
    if (!transaction)
        return false;
    reminder::RemindQuestion now = asked;
    now.lastSaid = lastSaid(phone);
    return whenToRemind(now).due &&
           store::DeviceRepository(phone).setLocalState(saidKey, toText(today)).ok() &&
           transaction->commit().ok();
}

} // namespace

Result<reminder::Reminder> reminderOf(store::Database &phone)
{
    const auto kept = store::DeviceRepository(phone).localState(reminderKey);
    if (!kept)
        return kept.error();
    return *kept ? reminderFrom(**kept) : reminder::Reminder{};
}

Outcome keepReminder(store::Database &phone, const reminder::Reminder &reminder,
                     std::span<const std::string> names)
{
    if (reminder.ownLine.size() > reminder::longestOwnLine || !isPlainUtf8(reminder.ownLine))
        return Error{ErrorCode::Invalid, "line: too long"};
    if (reminder::namesSomebody(reminder.ownLine, names))
        return Error{ErrorCode::Invalid, "line: a name"};
    if (reminder.minuteOfDay < 0 || reminder.minuteOfDay > lastMinute)
        return Error{ErrorCode::Invalid, "time: not of this day"};
    return store::DeviceRepository(phone).setLocalState(reminderKey, textOf(reminder));
}

reminder::RemindAnswer takeTurnToRemind(store::Database &phone, const store::FamilyFolder &folder,
                                        const Clock &clock)
{
    const auto today = store::todayOf(clock);
    const auto reminder = reminderOf(phone);
    if (!today || !reminder)
        return {}; // a phone that knows no day has no day to speak on
    reminder::RemindQuestion question{*reminder, clock.nowMs(), clock.offsetMinutes(),
                                      lastSaid(phone), false};
    reminder::RemindAnswer answer = whenToRemind(question);
    if (!answer.due)
        return answer;
    question.playedToday = playedOnPhone(folder, today->day);
    answer = whenToRemind(question);
    if (answer.due)
        answer.due = writeSaid(phone, question, today->day);
    return answer;
}

Outcome giveTurnBack(store::Database &phone)
{
    return store::DeviceRepository(phone).clearLocalState(saidKey);
}

} // namespace lidlark::usecase

#include "core/wording/reminder_words.h"

namespace lidlark::wording {

Sentence reminderLine(const reminder::Reminder &reminder, std::span<const std::string> names)
{
    switch (reminder.hook) {
    case reminder::Hook::AfterBath:
        return {say("After bath: five minutes to play?"), {}};
    case reminder::Hook::AfterTea:
        return {say("After tea: five minutes to play?"), {}};
    case reminder::Hook::BeforeBed:
        return {say("Before bed: five minutes to play?"), {}};
    case reminder::Hook::AfterSchool:
        return {say("After school: five minutes to play?"), {}};
    case reminder::Hook::Own:
        break;
    }
    if (reminder.ownLine.empty() || reminder::namesSomebody(reminder.ownLine, names))
        return {say("Five minutes to play?"), {}};
    return {say("%1: five minutes to play?"), {reminder.ownLine}};
}

} // namespace lidlark::wording

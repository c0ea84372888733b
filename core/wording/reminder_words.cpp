#include "core/wording/reminder_words.h"

namespace lidlark::wording {

Sentence reminderLine(const reminder::Reminder &reminder, std::span<const std::string> names)
{
    switch (reminder.hook) {
    case reminder::Hook::AfterBath:
        return {"After bath: five minutes to play?", {}};
    case reminder::Hook::AfterTea:
        return {"After tea: five minutes to play?", {}};
    case reminder::Hook::BeforeBed:
        return {"Before bed: five minutes to play?", {}};
    case reminder::Hook::AfterSchool:
        return {"After school: five minutes to play?", {}};
    case reminder::Hook::Own:
        break;
    }
    if (reminder.ownLine.empty() || reminder::namesSomebody(reminder.ownLine, names))
        return {"Five minutes to play?", {}};
    return {"%1: five minutes to play?", {reminder.ownLine}};
}

} // namespace lidlark::wording

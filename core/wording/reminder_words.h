#pragma once

#include "core/reminder/reminder.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// The one line on a locked screen: "After bath: five minutes to play?" It names no child and no
/// condition (job.md D9); an own line that holds one of @p names is left out.
Sentence reminderLine(const reminder::Reminder &reminder, std::span<const std::string> names);

} // namespace lidlark::wording

#pragma once

#include "core/base/clock.h"
#include "core/reminder/remind_when.h"
#include "core/store/device_repository.h"
#include "core/store/family_folder.h"

#include <span>
#include <string>

namespace lidlark::usecase {

/// What this phone has been asked to remind of. @param phone its first store.
Result<reminder::Reminder> reminderOf(store::Database &phone);

/// @param names nobody of whom may stand in an own line. Errors: Invalid, with what is wrong in it.
Outcome keepReminder(store::Database &phone, const reminder::Reminder &reminder,
                     std::span<const std::string> names);

/// Asks whether the one line of the day is due. When it is, this call is the one that says it: it
/// is written down before, so that the app and a timer of the system never both do.
reminder::RemindAnswer takeTurnToRemind(store::Database &phone, const store::FamilyFolder &folder,
                                        const Clock &clock);

/// It could not be shown: today's turn is open again.
Outcome giveTurnBack(store::Database &phone);

} // namespace lidlark::usecase

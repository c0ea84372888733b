#pragma once

#include "core/checkin/checkin_events.h"
#include "core/store/recording.h"
#include "core/usecase/workplace.h"

#include <string>

namespace lidlark::usecase {

/// Keeps what the child showed (checkin.md 9), in a lane of its own. On a guest's phone nothing of
/// a check-in is written, here and below: it colours the menu at hand and is forgotten. @returns
/// the entry's id, for a second tap within a minute, the after-kite, or "that wasn't me".
Result<std::string> checkIn(Workplace &workplace, const std::string &childAlias, checkin::Kite kite,
                            checkin::ShownBy by);

/// The last tap within a minute counts: the same entry with another kite.
Outcome changeCheckIn(Workplace &workplace, const checkin::CheckIn &entry, checkin::Kite kite);

/// Completes the pair for one activity (checkin.md 7).
Outcome checkInAfter(Workplace &workplace, const checkin::CheckIn &entry, checkin::Kite after,
                     const ActivityId &activity);

/// "That wasn't me": removed everywhere, and what it held is gone from this phone at once.
Outcome removeCheckIn(Workplace &workplace, const std::string &id, const ChildId &child);

/// All that this home has kept of one child's check-ins, guesses and pairs goes the same way, or
/// nothing does (checkin.md 9).
Outcome forgetCheckIns(Workplace &workplace, const std::string &childAlias);

/// Writes a check-in as part of another act. @returns Done, or why not.
Outcome writeCheckIn(store::Recording &recording, Workplace &workplace, const ChildId &child,
                     checkin::Kite kite, checkin::ShownBy by);

} // namespace lidlark::usecase

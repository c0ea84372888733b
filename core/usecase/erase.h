#pragma once

#include "core/usecase/workplace.h"

#include <string>

namespace lidlark::usecase {

/// What of a child's record can be erased by the family (job.md D6). The box's own ledger is not
/// among it: without it nobody knows what may lie on a floor; it goes when the box is closed.
enum class Erasable { CheckIns, Plays };
inline constexpr EnumNames<Erasable, 2> erasableNames{{"check-ins", "plays"}};

/// Erases it on this phone, up to and with a day, and says so to every other phone of the home:
/// they do the same when they meet, and what was shared is told again without it (events.md 9).
/// It cannot be brought back.
/// Errors: NotAllowed (a parent's phone only), NotFound (nothing of it is here), Invalid (a day to
/// come).
/// @returns how many entries are gone here.
Result<int> erase(Workplace &workplace, Erasable what, Day upTo);

} // namespace lidlark::usecase

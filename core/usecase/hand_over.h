#pragma once

#include "core/usecase/workplace.h"

#include <string>
#include <vector>

namespace lidlark::usecase {

/// Who may write on this phone, by name: whoever does now, and the adults who live in its home. One
/// phone in two hands. A guest's and a therapist's phone is theirs alone.
Result<std::vector<std::string>> writersOf(Workplace &workplace);

/// From now on @p person writes on this phone: what is written is theirs, in their language.
/// @returns the phone as it stands now. Errors: NotFound (nobody of this home).
Result<store::Device> handOver(Workplace &workplace, const std::string &person);

} // namespace lidlark::usecase

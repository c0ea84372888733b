#pragma once

#include "core/usecase/workplace.h"

#include <optional>
#include <string>

namespace lidlark::usecase {

/// The language in which this phone's person reads; nothing: they have not said.
Result<std::optional<std::string>> readingLanguage(Workplace &workplace);

/// This phone's person reads @p language from now on ("ur"). Kept with the home, so that it follows
/// them to another phone of it. A guest's and a therapist's stays on the phone, as they have no
/// home lane; so does that of a phone which is not set up yet.
/// Errors: Invalid (no language code), ClockUnset.
Outcome readIn(Workplace &workplace, const std::string &language);

} // namespace lidlark::usecase

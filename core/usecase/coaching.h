#pragma once

#include "core/usecase/workplace.h"

#include <string>
#include <vector>

namespace lidlark::usecase {

/// Lines of the list (core/wording/caseload_words.h). Source: job.md T17.
inline constexpr int coachingLines = 6;

/// What the parent has done at the handing over of a box (job.md T17): a list for the one who hands
/// it over, kept on this phone alone and shown to nobody else.
/// @returns a tick or none for each line. Errors: NotFound (child).
Result<std::vector<bool>> coachingOf(Workplace &workplace, const std::string &childAlias);

/// Errors: NotFound (child), Invalid (a line that is none).
Outcome tickCoaching(Workplace &workplace, const std::string &childAlias, int line, bool done);

} // namespace lidlark::usecase

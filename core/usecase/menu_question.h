#pragma once

#include "core/usecase/suggest_today.h"

namespace lidlark::usecase {

/// What is asked of the rotation for this family. The question refers to @p family.
/// @param when the day and part asked for. @param now of this phone's clock.
rotation::Question questionFor(const Workplace &workplace, const Family &family,
                               const MenuRequest &request, DayPart when, DayPart now);

} // namespace lidlark::usecase

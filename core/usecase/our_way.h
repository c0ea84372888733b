#pragma once

#include "core/play/our_way.h"
#include "core/usecase/workplace.h"

#include <optional>
#include <string>

namespace lidlark::usecase {

/// Keeps a family's own way of playing an activity, in one line; empty: takes it off again. It
/// stays on the devices of that home (job.md F12). Errors: NotFound (child, activity), Invalid
/// (longer than play::longestWay, more than one line; a guest, who has no home lane).
Outcome keepOurWay(Workplace &workplace, const std::string &childAlias, const ActivityId &activity,
                   const std::string &words);

/// The family's own way as it stands. Errors: NotFound (child).
Result<std::optional<play::OurWay>> ourWayOf(Workplace &workplace, const std::string &childAlias,
                                             const ActivityId &activity);

} // namespace lidlark::usecase

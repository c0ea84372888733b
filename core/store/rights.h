#pragma once

#include "core/base/day.h"
#include "core/base/result.h"
#include "core/journal/event.h"
#include "core/store/device_repository.h"

namespace lidlark::store {

/// Whether the person of @p device may write a @p kind on @p today: a guest plays for the days of
/// the invitation and no longer (job.md G7). What was noted before stays.
/// Errors: AccessEnded with the last day; NotAllowed with the kind's name.
Outcome maySay(const Device &device, journal::Kind kind, Day today);

/// The invitation of a guest is over. Never so for others.
bool accessEnded(const Device &device, Day today);

} // namespace lidlark::store

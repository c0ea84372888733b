#pragma once

#include "core/play/grading_events.h"
#include "core/play/plan_events.h"
#include "core/store/event_repository.h"

#include <optional>

namespace lidlark::store {

/// Writing the projection rows of how activities are played and when. Nothing to write removes the
/// row.
Outcome writeGrading(Database &database, const LaneSubject &subject,
                     const std::optional<play::GradingUsed> &used);
Outcome writeGradingPin(Database &database, const LaneSubject &subject,
                        const std::optional<play::GradingUsed> &pinned);
Outcome writeDayWish(Database &database, const LaneSubject &subject,
                     const std::optional<play::DayWish> &wish);

} // namespace lidlark::store

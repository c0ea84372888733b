#pragma once

#include "core/rotation/plan_draft.h"

#include <functional>
#include <span>

namespace lidlark::rotation {

/// Fills the days one after the other, each time with the entry that adds most and fits.
void fillDayByDay(PlanDraft &draft, std::span<const std::size_t> entries);

/// Fills all days at once, each time with the entry that adds most and fits anywhere, on the first
/// day where it does.
void fillFirstDays(PlanDraft &draft, std::span<const std::size_t> entries);

/// The same, on the day with the most minutes for each place left.
void fillRoomiestDays(PlanDraft &draft, std::span<const std::size_t> entries);

/// Puts the entries in, in this order, wherever they fit; then, for places still empty, moves one
/// that stands there already to another day where that makes room.
void fillInOrder(PlanDraft &draft, std::span<const std::size_t> entries);

/// Raises the value of a full plan by exchanges until none raises it: an entry for another on its
/// day, or for another that comes in on a second day, from which a third moves to the first.
/// Deterministic. Where it is stopped the plan is still full.
/// @param entries that may be in the plan and are not pinned.
/// @param isOver asked at every exchange.
void improveByExchange(PlanDraft &draft, std::span<const std::size_t> entries,
                       const std::function<bool()> &isOver);

} // namespace lidlark::rotation

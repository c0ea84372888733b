#pragma once

#include "core/forecast/item_forecast.h"
#include "core/forecast/lifetime.h"
#include "core/store/box_repository.h"

#include <vector>

namespace lidlark::usecase {

/// Pieces that went, by day, whatever became of them.
std::vector<forecast::UseDay> useDaysOf(const store::ItemRow &row);

/// Stretches up to @p today on which the box held none of the item, as far as its arrivals and uses
/// tell: on these days none could go.
std::vector<forecast::DaySpan> daysWithout(const store::ItemRow &row, Day today);

/// The lives of the pieces that were opened: those that are gone ended on the days on which pieces
/// went, the first opened first; those still here are good up to @p today.
std::vector<forecast::SeenLife> livesOf(const store::ItemRow &row, Day today);

} // namespace lidlark::usecase

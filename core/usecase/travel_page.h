#pragma once

#include "core/safety/admit.h"
#include "core/usecase/family.h"

#include <string>
#include <vector>

namespace lidlark::usecase {

/// What can be played away from home with nothing from the box (job.md F7), for one page of paper.
/// Paper asks nobody who is in the room, so everyone of the home sheet is taken to be there.
struct TravelPage {
    std::string child; ///< Alias.
    Day day;           ///< On which the gate was asked: an older page may be wrong.
    /// Quiet ones first (job.md scenario 9), then by name.
    std::vector<safety::Admitted> entries;
};

TravelPage travelPageOf(const Family &family, const catalogue::Catalogue &catalogue, Day today);

} // namespace lidlark::usecase

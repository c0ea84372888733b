#pragma once

#include "core/box/request_events.h"
#include "core/catalogue/catalogue.h"
#include "core/child/avoided.h"

#include <map>
#include <vector>

namespace lidlark::usecase {

/// What could stand in for the things of a box that must leave the house, and lies in no box: one
/// request for each (job.md scenario 3, "the swaps appear as asked for").
/// @param pieces of the box, those that are out for the moment too.
std::vector<box::RequestSaid> swapsToAsk(const std::map<ItemId, int> &pieces,
                                         const catalogue::Catalogue &catalogue,
                                         child::Avoided what);

} // namespace lidlark::usecase

#pragma once

#include "core/crew/crew.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lidlark::crew {

/// The key of an epoch, given to those who may read the lane and were not named when it was opened:
/// somebody else let them in at the same time, or nobody who let them in had it (events.md 10: all
/// read both). Stands in the box lane as openings do.
struct GivenKey {
    Digest epoch{};
    DeviceId by;
    std::map<DeviceId, std::string> letters;
};

std::string fieldsOf(const GivenKey &given);
/// @returns nothing for another kind, or where a field is missing or astray.
std::optional<GivenKey> readGivenKey(const journal::Event &event);

/// Those among @p events whose writers are no guests, and were in when they wrote.
std::vector<GivenKey> givenAmong(std::span<const journal::Event> events, const Crew &crew);

} // namespace lidlark::crew

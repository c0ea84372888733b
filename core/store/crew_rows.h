#pragma once

#include "core/store/event_repository.h"

#include <set>
#include <string>
#include <string_view>

namespace lidlark::store {

/// What is said of members, of letting in and removing alike.
inline constexpr std::string_view membersSubject = "members";

/// Folds who is in the crew of one box lane. From all of its events: what does not count, the fold
/// of the crew itself tells.
Outcome writeMembers(Database &database, const journal::Lane &lane);

/// The box's lanes, and those of every home that somebody of its crew belongs to.
Result<std::set<journal::Lane>> lanesAbout(Database &database, const std::string &box);

} // namespace lidlark::store

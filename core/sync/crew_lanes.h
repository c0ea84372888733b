#pragma once

#include "core/crew/crew.h"
#include "core/journal/lane.h"

#include <set>
#include <string>

namespace lidlark::sync {

/// The lanes that the crew of @p box shares: the box's and those of its homes; of the clinic's crew
/// its own two, whatever home anybody in it claims. Who may read which, the keys decide.
std::set<journal::Lane> lanesOf(const std::string &box, const crew::Crew &crew);

} // namespace lidlark::sync

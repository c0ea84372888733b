#pragma once

#include "core/journal/event.h"
#include "core/sync/post.h"

#include <string>
#include <vector>

namespace lidlark::sync {

/// The box as it stands, for a guest: whose it is, what lies in it, where it is, what is open of
/// it, and what may have been lost on a floor. Facts and numbers, no history: who used up what, and
/// when, is not in it. The numbers are careful ends, said by a device that nobody is.
/// Not in it: names of pieces other than those packed first.
Result<std::vector<journal::Event>> boxAsItStands(Post &post, const std::string &box);

/// The statements of the home sheet and the permissions that stand, as they were made.
Result<std::vector<journal::Event>> homeSheetAsItStands(Post &post, const HomeId &home);

} // namespace lidlark::sync

#pragma once

#include "core/box/exceptions.h"
#include "core/usecase/family.h"
#include "core/usecase/progress.h"

#include <map>
#include <vector>

namespace lidlark::usecase {

/// Pieces of one item that went out: those expected home, and those that somebody has counted home.
struct HomeCount {
    ItemId item;
    int out = 0;  ///< Went out.
    int due = 0;  ///< Went out, less what was named as lost, used up ...
    int home = 0; ///< At most `due`.
    bool operator==(const HomeCount &) const = default;
};

/// What went out of the box and comes home, in the order of the activity; at least one of each.
/// @param named what has become of the others.
std::vector<HomeCount> homeCounts(const Progress &progress,
                                  const std::map<ItemId, box::Exceptions> &named);

/// What was named of this play so far.
std::map<ItemId, box::Exceptions> namedOf(const Family &family, const PlayId &play);

/// The closing count (safety.md SP-04): where somebody lives who may swallow a small part, every
/// item with one is counted home piece by piece before the play can end, however it ends. With the
/// home sheet unknown somebody may. @returns those not all home yet.
std::vector<HomeCount> stillToCount(const Family &family, const catalogue::Catalogue &catalogue,
                                    const Progress &progress,
                                    const std::map<ItemId, box::Exceptions> &named, Day today);

/// Whom a box must be kept from: those who live here, the playing child apart, and may swallow a
/// small part.
struct SmallOthers {
    bool any = false;               ///< Also when nobody can be named.
    std::vector<std::string> names; ///< Aliases.
};
SmallOthers smallOthersOf(const Family &family, Day today);

} // namespace lidlark::usecase

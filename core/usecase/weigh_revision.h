#pragma once

#include "core/usecase/family.h"

#include <map>
#include <vector>

namespace lidlark::usecase {

/// A thing of the box with a number of pieces.
struct Pieces {
    ItemId item;
    int pieces = 0;
    bool operator==(const Pieces &) const = default;
};

/// What a new lid list would do in this home, said before it is sent (job.md scenario 7).
struct RevisionWeighed {
    std::vector<ActivityId> goes; ///< Hidden at once, and not back when all that is added has come.
    std::vector<ActivityId> waits; ///< Hidden at once, and back once what is added is counted in.
    std::vector<ActivityId> comes; ///< Not possible now; possible once what is added is counted in.
    std::vector<Pieces> takeOut;   ///< The home takes out: pieces that may be in the box.
    std::vector<Pieces> onTheWay;  ///< To be sent: what is added, or more of what is there.
    std::vector<ItemId> avoided;   ///< Added, though a home of the child must avoid it: refused.
    bool operator==(const RevisionWeighed &) const = default;
};

/// The gate over the whole catalogue today, with the list in force and with @p packed; once with
/// everyone of the home in the room and once with the child alone beside an adult, as if the box
/// were at hand. Changes nothing. Activities in the catalogue's order, items in the order of ids.
Result<RevisionWeighed> weighRevision(Workplace &workplace, const Family &family,
                                      const std::map<ItemId, int> &packed);

} // namespace lidlark::usecase

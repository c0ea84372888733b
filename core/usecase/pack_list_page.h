#pragma once

#include "core/usecase/pack_box.h"

#include <map>
#include <string>
#include <vector>

namespace lidlark::usecase {

/// One box that needs an item.
struct PackListPlace {
    std::string code;
    std::string whose;    ///< The child's alias; empty: nobody's.
    bool special = false; ///< A second person looks it over.
    workbench::PackLine line;
    /// What is called out of this item in this box: the hand, a swap, another count.
    std::vector<workbench::CallOut> callOuts;
};

/// One item, and every box that it goes into.
struct PackListItem {
    ItemId item;
    std::vector<PackListPlace> places; ///< In the order of the build.

    [[nodiscard]] int pieces() const;
};

/// What stands on a printed pack list (job.md T4).
struct PackListPage {
    std::string name; ///< Of the build.
    Day day;
    std::vector<workbench::PackBox> boxes; ///< Those that were not handed over.
    std::vector<PackListItem> items;       ///< The same by item, in the order boxes name them.
    std::map<ItemId, std::string> names;   ///< As their supplies are kept.
};

/// Errors: NotFound (build), those of the store.
Result<PackListPage> packListPageOf(Workplace &therapist, const workbench::BuildId &build);

/// The newest build with a box that was not handed over as it; where there is none, the newest.
/// Errors: NotFound (there is no build), those of the store.
Result<workbench::BuildId> buildToPack(Workplace &therapist);

} // namespace lidlark::usecase

#pragma once

#include "core/box/request.h"
#include "core/usecase/workplace.h"

#include <string>
#include <vector>

namespace lidlark::usecase {

/// What one box waits for of one item.
struct RestockBox {
    std::string child; ///< Alias.
    std::string code;
    int pieces = 1; ///< That would fill the lid list again; at least one.
    box::RequestStep step = box::RequestStep::Asked;
    ItemId insteadOf; ///< What it stands in for; empty: itself.
    bool operator==(const RestockBox &) const = default;
};

/// One item of a round, and the boxes that wait for it.
struct RestockItem {
    ItemId item;
    std::vector<RestockBox> boxes; ///< By alias.

    [[nodiscard]] int pieces() const;
    bool operator==(const RestockItem &) const = default;
};

/// All that families have asked for and that is not on its way yet, over all boxes of this phone
/// (job.md T13), by item, in the order of the tray.
struct RestockPage {
    Day day;
    std::vector<RestockItem> items;

    [[nodiscard]] int boxes() const; ///< How many boxes wait for something.
};

/// Errors: NotAllowed (a therapist's phone only), ClockUnset, those of the store.
Result<RestockPage> restockPageOf(Workplace &workplace);

} // namespace lidlark::usecase

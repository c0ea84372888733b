#pragma once

#include "core/journal/event.h"
#include "core/store/box_repository.h"
#include "core/usecase/workplace.h"

#include <string>
#include <vector>

namespace lidlark::usecase {

/// The box that something is said of, with what is kept of its items.
struct BoxInHand {
    store::BoxRow box;
    std::vector<store::ItemRow> items;

    /// Null: nobody has ever spoken of such an item in this box.
    [[nodiscard]] const store::ItemRow *row(const ItemId &item) const;
};

/// Errors: NotFound (child).
Result<BoxInHand> boxInHand(Workplace &workplace, const std::string &childAlias);

/// The error for an item that this box does not have.
Error notInThisBox(const ItemId &item);

struct Saying {
    journal::Kind kind;
    std::string fields;
};

/// All or none of @p sayings, in the lane of that box. @param author empty: the phone's person.
Outcome sayOfBox(Workplace &workplace, const BoxInHand &box, const std::string &author,
                 const std::vector<Saying> &sayings);

} // namespace lidlark::usecase

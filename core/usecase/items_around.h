#pragma once

#include "core/usecase/family.h"

#include <vector>

namespace lidlark::usecase {

/// Where a thing of the catalogue is to be had.
enum class ItemPlace {
    InBox,     ///< On the lid list, or known to lie there.
    NotInBox,  ///< A thing for boxes, and not of this one.
    AtHome,    ///< A household extra.
    NotAtHome, ///< A household extra that this home has said it lacks.
};

/// How one thing of the catalogue stands for a child today: what a search for it tells.
struct ItemStanding {
    const catalogue::ItemKind *kind = nullptr;
    ItemPlace place = ItemPlace::NotInBox;
    int low = 0; ///< In the box.
    int high = 0;
    int fits = 0; ///< Activities with it that may be played now.
    /// With it none may be played, and these reasons are the thing's own; each once.
    safety::Refusal heldBack;
};

/// Every item of @p catalogue, in its order. A pure view. @param gated the catalogue through the
/// gate, for who is here now.
std::vector<ItemStanding> itemsAround(const Family &family, const catalogue::Catalogue &catalogue,
                                      const safety::Gated &gated);

} // namespace lidlark::usecase

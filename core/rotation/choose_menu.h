#pragma once

#include "core/rotation/candidate.h"
#include "core/rotation/menu.h"

#include <span>
#include <vector>

namespace lidlark::rotation {

/// One offer of a menu that has not yet been joined with its Admitted.
struct Pick {
    std::size_t candidate = 0; ///< Its place among the candidates.
    OfferFacts facts;
};

/// A menu over candidates: what `chooseMenu` gives, without the admitted activities themselves.
struct MenuDraft {
    std::vector<Pick> picks; ///< In the order in which they are shown.
    int value = 0;
    std::vector<SideCondition> gaveWay;
    std::int64_t nodes = 0;
};

/// @param candidates everything the gate let through, in any order; ids unique.
MenuDraft draftMenu(std::span<const Candidate> candidates, const Question &question);

} // namespace lidlark::rotation

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/workbench/kept_build.h"
#include "core/workbench/kept_supply.h"

#include <set>

namespace lidlark::workbench {

/// What a home asks of a box that goes there.
struct HomeAsks {
    std::set<child::Avoided> avoids; ///< What anybody there must not have.
    bool mouther = false;            ///< Somebody there puts things in the mouth.
};

/// The design as it would be for such a home (job.md T3): each thing that must not go there is
/// swapped as its catalogue entry says, where that swap may go there and belongs in boxes, else
/// left out. Of a swap go in as many pieces as any activity asks for of what it stands in for, at
/// most as many as the design has. The reasons are given; whoever keeps the box may change all of
/// it but what is avoided. What the catalogue does not know stays as it is.
/// @param kept its code, whose it is, and its design's id; the rest is filled in.
KeptBox fittedBox(KeptBox kept, const Design &design, const HomeAsks &home,
                  const catalogue::Catalogue &catalogue);

/// The child cuts with that hand: blades for it go in, where a supply of them is kept, instead of
/// those for the other. A box without blades only notes the hand.
void fitHand(KeptBox &kept, Hand hand, const KeptSupplies &supplies,
             const catalogue::Catalogue &catalogue);

} // namespace lidlark::workbench

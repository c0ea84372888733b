#include "tests/states/leg.h"

namespace lidlark::test {

namespace {

/// The demo's own shelf and build (core/usecase/island_shelf.h).
void lookAtBuying(Walk &walk)
{
    walk.tap("#builds");
    walk.tap("Spring boxes");
    walk.see("build");
    walk.tap("K4 for Lewis");
    walk.see("build-box");
    walk.tap("Back");
    walk.tap("Build sheet");
    walk.see("build-sheet");
    walk.tap("Back");
    walk.tap("Back");
    walk.tap("Kinds of box");
    walk.tap("Standard");
    walk.see("design");
    walk.tap("Back");
    walk.tap("Back");
    walk.tap("#shelf");
    walk.see("shelf");
    walk.tap("Rubber bands");
    walk.see("supply");
    walk.tap("#measureWanted");
    walk.tap("One piece, as it is packed: A disc");
    walk.write("One piece, as it is packed: Across", "28");
    walk.write("One piece, as it is packed: Thick", "12");
    walk.tap("See whom it affects");
    walk.see("own-item");
}

} // namespace

void addBuyingLegs(std::vector<Leg> &legs)
{
    legs.push_back({"Builds and buying", "fresh/morven.lidlark", "buying", "2027-01-12T19:30:00Z",
                    lookAtBuying});
}

} // namespace lidlark::test

#pragma once

#include "core/workbench/build.h"
#include "core/workbench/supply.h"

#include <rapidcheck.h>

#include <string>
#include <vector>

/// Builds for properties: a few boxes that hold different things, packs of any size, some shelves
/// full.
namespace samples {

using namespace lidlark;
using namespace lidlark::workbench;

struct RandomBuild {
    Build build;
    std::vector<Supply> supplies;
};

inline Supply randomSupply(int number)
{
    Supply supply{{"item-" + std::to_string(number)}, "thing", {}, 0, *rc::gen::arbitrary<bool>()};
    supply.inStock = *rc::gen::element(0, 0, 3, 40);
    const int offers = *rc::gen::inRange(1, 5);
    for (int i = 0; i < offers; ++i)
        supply.offers.push_back(
            {"shop", *rc::gen::inRange(1, 60), *rc::gen::inRange(0, 2'000), ""});
    return supply;
}

inline RandomBuild randomBuild()
{
    RandomBuild random;
    const int items = *rc::gen::inRange(1, 7);
    for (int i = 0; i < items; ++i)
        random.supplies.push_back(randomSupply(i));
    random.build.sparesPercent = *rc::gen::inRange(0, 101);
    const int boxes = *rc::gen::inRange(0, 9);
    for (int i = 0; i < boxes; ++i) {
        BuildBox box{std::to_string(i), "", {}, {}};
        for (const Supply &supply : random.supplies) {
            if (*rc::gen::inRange(0, 3) > 0)
                box.parts.push_back({supply.item, *rc::gen::inRange(1, 15), {}});
        }
        random.build.boxes.push_back(box);
    }
    return random;
}

} // namespace samples

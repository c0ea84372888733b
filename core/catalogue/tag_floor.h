#pragma once

#include "core/catalogue/tag.h"

#include <algorithm>

namespace lidlark::catalogue {

/// Earliest age in whole months at which anything that carries @p tag is offered; 0: the tag sets
/// none.
/// Source: activities.md 1.4, column "Rule". FORK: "hard below 30".
constexpr int floorMonthsOf(Tag tag)
{
    switch (tag) {
    case Tag::Dough:
        return 24;
    case Tag::Sticker:
    case Tag::Fork:
        return 30;
    case Tag::Small:
    case Tag::Cord:
    case Tag::Sharp:
    case Tag::Foam:
    case Tag::Foil:
        return 36;
    case Tag::Band:
    case Tag::Coin:
    case Tag::Straw:
        return 48;
    case Tag::Balloon:
    case Tag::Elastic:
        return 60;
    default:
        return 0;
    }
}

} // namespace lidlark::catalogue

#pragma once

#include "core/catalogue/item_kind.h"

#include <cstdint>

namespace lidlark::usecase {

/// What a lost piece of a kind means for a small child of the home.
enum class LostDanger : std::uint8_t { None, SmallPart, Balloon };

/// Which losses ask for a floor check: small parts and coins (activities.md 2.1.7; events.md 5,
/// "floor note"), and pieces of a balloon (job.md scenario 2).
/// @param kind null: an item nobody knows any more may be small.
inline LostDanger dangerOfLosing(const catalogue::ItemKind *kind)
{
    if (kind == nullptr)
        return LostDanger::SmallPart;
    if (kind->tags.has(catalogue::Tag::Balloon))
        return LostDanger::Balloon;
    const bool small =
        kind->tags.has(catalogue::Tag::Small) || kind->tags.has(catalogue::Tag::Coin);
    return small ? LostDanger::SmallPart : LostDanger::None;
}

} // namespace lidlark::usecase

#pragma once

#include "core/catalogue/tag.h"

/// Groups of tags that several rules read. Source: activities.md 1.4.
namespace lidlark::safety {

/// Hidden for an under-three or a mouther in the room.
inline constexpr catalogue::TagSet notNearSmallOnes{
    catalogue::Tag::Small, catalogue::Tag::Coin, catalogue::Tag::Balloon, catalogue::Tag::Elastic,
    catalogue::Tag::Foam,  catalogue::Tag::Foil, catalogue::Tag::Straw,   catalogue::Tag::Cord};

/// Hidden for a mouther only.
inline constexpr catalogue::TagSet notNearMouthers{catalogue::Tag::Sticker, catalogue::Tag::Dough};

/// All whose gate is "hard". FORK is hard below 30 months; where the age or the allergies are not
/// known it counts as hard.
inline constexpr catalogue::TagSet hardTags =
    notNearSmallOnes | notNearMouthers |
    catalogue::TagSet{catalogue::Tag::Latex, catalogue::Tag::Wheat, catalogue::Tag::Band,
                      catalogue::Tag::Sharp, catalogue::Tag::Fork};

/// What a body does, not what a thing is: these stay when a thing is swapped.
inline constexpr catalogue::TagSet movementTags{
    catalogue::Tag::Breath, catalogue::Tag::Face, catalogue::Tag::Touch, catalogue::Tag::Spin,
    catalogue::Tag::Trip,   catalogue::Tag::Lift, catalogue::Tag::Noise};

} // namespace lidlark::safety

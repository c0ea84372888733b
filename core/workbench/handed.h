#pragma once

#include "core/base/enum_names.h"
#include "core/base/id.h"
#include "core/catalogue/item_kind.h"

#include <optional>
#include <string_view>

namespace lidlark::workbench {

/// With which hand a child cuts.
enum class Hand { Unsaid, Right, Left };
inline constexpr EnumNames<Hand, 3> handNames{{"unsaid", "right", "left"}};

inline constexpr std::string_view leftSuffix = "-left";
inline constexpr std::string_view rightSuffix = "-right";

/// The hand that a supply is made for: "scissors-left" are bought in packs of their own.
inline Hand handOf(const ItemId &item)
{
    if (item.value.ends_with(leftSuffix))
        return Hand::Left;
    return item.value.ends_with(rightSuffix) ? Hand::Right : Hand::Unsaid;
}

/// The item of the catalogue that a supply is: "scissors-left" are scissors.
inline ItemId kindOf(const ItemId &item)
{
    const Hand hand = handOf(item);
    if (hand == Hand::Unsaid)
        return item;
    const std::size_t tail = hand == Hand::Left ? leftSuffix.size() : rightSuffix.size();
    return {item.value.substr(0, item.value.size() - tail)};
}

/// Whether the hand matters: blades of a box cut for one hand only (common practice, no source).
/// @param kind null: not in the catalogue; then its id alone tells.
inline bool isHanded(const ItemId &item, const catalogue::ItemKind *kind)
{
    return handOf(item) != Hand::Unsaid ||
           (kind != nullptr && kind->source == catalogue::Source::Box &&
            kind->tags.has(catalogue::Tag::Sharp));
}

} // namespace lidlark::workbench

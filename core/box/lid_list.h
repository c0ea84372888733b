#pragma once

#include "core/box/item_ledger.h"
#include "core/journal/seen.h"

#include <map>
#include <optional>
#include <span>

namespace lidlark::box {

/// What belongs in a box now, folded from all its revisions (events.md 5, box revision). Revisions
/// point at those they have seen by having seen them; one that no other has seen is in force.
struct LidList {
    /// By the revisions in force: of two, the larger number, the fewer pieces, and whatever either
    /// of them removes.
    Revision inForce;
    Day issued; ///< Of the later written one.
    /// More than one: they were written without knowing of each other, and the therapist has yet to
    /// write the next, which knows both.
    int heads = 1;
    /// What lay in the box when it was handed over: stock is counted from it. What a later revision
    /// adds is in the box once somebody has counted it in.
    std::map<ItemId, int> began;
    Day begun;
};

/// @param events of the box lane's subject "revision", in any order; malformed ones have no effect.
/// @returns nothing where there is no revision.
std::optional<LidList> foldLidList(std::span<const journal::Event> events,
                                   const journal::Seen &seen);

/// Whether somebody has said, knowing of its removal, that an item is out of the house: a
/// confirmation becomes true once and stays (events.md 5), until a later list has the item again.
/// @param revisions of the box. @param ofItem what was said of the item.
/// @returns the first such word; null: none.
const journal::Event *confirmationOf(const ItemId &item, std::span<const journal::Event> revisions,
                                     std::span<const journal::Event> ofItem,
                                     const journal::Seen &seen);

} // namespace lidlark::box

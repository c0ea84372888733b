#pragma once

#include "core/child/avoided.h"
#include "core/journal/seen.h"
#include "core/workbench/supply.h"

#include <map>
#include <set>
#include <span>

namespace lidlark::workbench {

/// A supply as the clinic keeps it: how it is bought, and what is written on it.
struct KeptSupply {
    Supply supply;
    std::string lot;  ///< Of what lies on the shelf, as it is printed there; empty: not known.
    std::string note; ///< To oneself, one line.
    /// For what the catalogue does not know, a box say: looked at, and found to hold none of it.
    /// What the catalogue knows is answered there.
    std::set<child::Avoided> freeOf = {};
    bool operator==(const KeptSupply &) const = default;
};

using KeptSupplies = std::map<ItemId, KeptSupply>;

std::string fieldsOf(const KeptSupply &kept);
/// @returns nothing for malformed fields: such an event stays in the set without effect.
std::optional<KeptSupply> supplyFrom(const std::string &fields);

/// A register for each item: what has seen a value replaces it (events.md 3).
/// @param events of one subject "supply:<item>", any order.
std::optional<KeptSupply> foldSupply(std::span<const journal::Event> events,
                                     const journal::Seen &seen);

/// The field that cannot be kept, and why, as an error's detail: "pack size: 1 to 100000";
/// nothing: all of it can.
std::optional<std::string> problemWith(const KeptSupply &kept);

} // namespace lidlark::workbench

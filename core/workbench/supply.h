#pragma once

#include "core/base/id.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lidlark::workbench {

/// One way to buy an item: so many pieces, in one shop, for one price. Packs come whole.
struct PackOffer {
    std::string shop;
    int pieces = 0;                    ///< In one pack; what is sold by length: in metres.
    std::optional<std::int64_t> pence; ///< For one pack. Nothing: nobody has looked yet.
    std::string currency;              ///< ISO 4217: "GBP". Empty: that of the build.
    bool operator==(const PackOffer &) const = default;
};

/// How the therapist comes by one item, and what lies on the shelf.
struct Supply {
    ItemId item;
    std::string name;              ///< As on the lid list: "clothes pegs".
    std::vector<PackOffer> offers; ///< Sizes and shops in the order the therapist likes them.
    int inStock = 0;               ///< Pieces on the shelf.
    bool usedUp = false;           ///< Play uses it up, so a build takes spares of it along.
    bool operator==(const Supply &) const = default;
};

// What a supply can be, so that no sum of a build leaves 64 bits.
inline constexpr int mostPiecesInPack = 100'000;
inline constexpr std::int64_t mostPenceForPack = 10'000'000;
inline constexpr int mostInStock = 1'000'000'000;
inline constexpr int mostOffers = 50;
inline constexpr int mostItems = 1'000;
/// Bytes of a name, a shop or a note of what the clinic keeps.
inline constexpr std::size_t longestName = 80;

} // namespace lidlark::workbench

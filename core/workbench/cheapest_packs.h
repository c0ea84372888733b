#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace lidlark::workbench {

/// A pack as the search for the cheapest packs sees it.
struct PackPrice {
    std::int64_t pieces = 1; ///< 1 to mostPiecesInPack.
    std::int64_t pence = 0;  ///< 0 to mostPenceForPack.
};

/// The packs that bring at least @p pieces for the least money. Exact, by proof and not by luck:
/// - Let b be the offer with the lowest price a piece (of several, the largest pack). Of any
/// b.pieces
///   packs of other offers some add up to a multiple of b.pieces, and packs of b bring the same for
///   no more money, or for the same money in fewer packs. So a best purchase has fewer than
///   b.pieces other packs.
/// - Each other pack costs more a piece than b does, and all that together cannot be more than what
///   buying b alone wastes on its last pack.
/// - Both bound what other packs bring; what lies above the bound is bought from b, and what is
/// left
///   is looked at piece by piece (dynamic programming over the pieces still wanted).
/// Of purchases that cost the same: fewer packs, then fewer pieces, then more of the first offer,
/// of the second and so on.
/// @param offers at least one, at most mostOffers. @param pieces at most 20,000,000.
/// @returns packs of each offer, in their order; all 0 where no piece is wanted.
std::vector<int> cheapestPacks(std::span<const PackPrice> offers, std::int64_t pieces);

} // namespace lidlark::workbench

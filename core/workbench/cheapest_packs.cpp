#include "core/workbench/cheapest_packs.h"

#include <algorithm>
#include <compare>
#include <numeric>
#include <optional>

namespace lidlark::workbench {

namespace {

using Offers = std::span<const PackPrice>;

/// What some packs come to; the smaller one is the better purchase.
struct Bill {
    std::int64_t pence = 0;
    std::int64_t packs = 0;
    std::int64_t pieces = 0;
    auto operator<=>(const Bill &) const = default;

    [[nodiscard]] Bill with(const PackPrice &pack) const
    {
        return {pence + pack.pence, packs + 1, pieces + pack.pieces};
    }
};

std::int64_t dividedUp(std::int64_t whole, std::int64_t by)
{
    return (whole + by - 1) / by;
}

/// What one pack of @p offer costs more than the same pieces at the price of @p best, in pence
/// times the pieces of @p best. Never below zero.
std::int64_t dearer(const PackPrice &offer, const PackPrice &best)
{
    return offer.pence * best.pieces - best.pence * offer.pieces;
}

/// The lowest price a piece; of several the largest pack; of equal ones the first.
std::size_t bestValue(Offers offers)
{
    std::size_t best = 0;
    for (std::size_t i = 1; i < offers.size(); ++i) {
        const std::int64_t more = dearer(offers[i], offers[best]);
        if (more < 0 || (more == 0 && offers[i].pieces > offers[best].pieces))
            best = i;
    }
    return best;
}

/// Packs of @p offer that a best purchase can hold at most.
std::int64_t mostOf(const PackPrice &offer, const PackPrice &best, std::int64_t wasted)
{
    const std::int64_t most = best.pieces / std::gcd(offer.pieces, best.pieces) - 1;
    const std::int64_t more = dearer(offer, best);
    return more > 0 ? std::min(most, wasted / more) : most;
}

/// The offers that a best purchase can hold, and what those other than the best can bring.
struct Useful {
    std::vector<std::size_t> offers; ///< In their order.
    std::int64_t broughtByOthers = 0;
};

Useful usefulOf(Offers offers, std::size_t best, std::int64_t pieces)
{
    const PackPrice &value = offers[best];
    // In pence times the pieces of the best, as dearer() is.
    const std::int64_t wasted =
        value.pence * (dividedUp(pieces, value.pieces) * value.pieces - pieces);
    Useful useful;
    std::int64_t largest = 0;
    for (std::size_t i = 0; i < offers.size(); ++i) {
        const std::int64_t most = i == best ? 0 : mostOf(offers[i], value, wasted);
        if (i != best && most == 0)
            continue;
        useful.offers.push_back(i);
        useful.broughtByOthers += most * offers[i].pieces;
        if (i != best)
            largest = std::max(largest, offers[i].pieces);
    }
    useful.broughtByOthers = std::min(useful.broughtByOthers, (value.pieces - 1) * largest);
    return useful;
}

/// For each number of pieces up to the wanted one, the first offer of a best purchase of so many.
class FirstOffers
{
public:
    FirstOffers(Offers offers, const std::vector<std::size_t> &useful, std::int64_t wanted)
        : m_offers(offers), m_useful(useful), m_first(static_cast<std::size_t>(wanted) + 1)
    {
        std::int64_t largest = 1;
        for (const std::size_t i : useful)
            largest = std::max(largest, offers[i].pieces);
        // A purchase looks back by one pack and no further.
        m_bills.resize(static_cast<std::size_t>(std::min(largest, wanted)));
        for (std::int64_t pieces = 1; pieces <= wanted; ++pieces)
            fill(pieces);
    }

    [[nodiscard]] std::size_t operator[](std::int64_t pieces) const
    {
        return m_first[static_cast<std::size_t>(pieces)];
    }

private:
    [[nodiscard]] Bill &billAt(std::int64_t pieces)
    {
        return m_bills[static_cast<std::size_t>(pieces) % m_bills.size()];
    }

    void fill(std::int64_t pieces)
    {
        std::optional<Bill> best;
        for (const std::size_t i : m_useful) {
            const std::int64_t rest = pieces - m_offers[i].pieces;
            const Bill bill = (rest > 0 ? billAt(rest) : Bill()).with(m_offers[i]);
            if (best && !(bill < *best))
                continue; // the earlier offer stands
            best = bill;
            m_first[static_cast<std::size_t>(pieces)] = static_cast<std::uint8_t>(i);
        }
        billAt(pieces) = *best;
    }

    Offers m_offers;
    const std::vector<std::size_t> &m_useful;
    std::vector<std::uint8_t> m_first;
    std::vector<Bill> m_bills;
};

} // namespace

std::vector<int> cheapestPacks(Offers offers, std::int64_t pieces)
{
    std::vector<int> packs(offers.size(), 0);
    if (pieces <= 0)
        return packs;
    const std::size_t best = bestValue(offers);
    const Useful useful = usefulOf(offers, best, pieces);
    const std::int64_t above = std::max<std::int64_t>(0, pieces - useful.broughtByOthers);
    const std::int64_t sure = dividedUp(above, offers[best].pieces);
    packs[best] = static_cast<int>(sure);
    std::int64_t wanted = pieces - sure * offers[best].pieces;
    if (wanted <= 0)
        return packs;
    const FirstOffers first(offers, useful.offers, wanted);
    while (wanted > 0) {
        const std::size_t offer = first[wanted];
        ++packs[offer];
        wanted -= offers[offer].pieces;
    }
    return packs;
}

} // namespace lidlark::workbench

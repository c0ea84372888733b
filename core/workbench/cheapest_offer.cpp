#include "core/workbench/cheapest_offer.h"

namespace lidlark::workbench {

namespace {

/// Both products stay far below 64 bits: pence and pieces of a pack are bounded (supply.h).
bool isCheaper(const PackOffer &one, const PackOffer &other)
{
    return *one.pence * other.pieces < *other.pence * one.pieces;
}

std::string_view currencyOf(const PackOffer &offer, std::string_view ofBuild)
{
    return offer.currency.empty() ? ofBuild : std::string_view(offer.currency);
}

std::optional<std::size_t> cheapestIn(std::span<const PackOffer> offers, std::string_view ofBuild,
                                      std::string_view wanted)
{
    std::optional<std::size_t> best;
    for (std::size_t i = 0; i < offers.size(); ++i) {
        if (!offers[i].pence || currencyOf(offers[i], ofBuild) != wanted)
            continue;
        if (!best || isCheaper(offers[i], offers[*best]))
            best = i;
    }
    return best;
}

} // namespace

std::optional<std::size_t> cheapestOffer(std::span<const PackOffer> offers,
                                         std::string_view currency)
{
    if (const auto best = cheapestIn(offers, currency, currency))
        return best;
    for (const PackOffer &offer : offers) {
        if (offer.pence)
            return cheapestIn(offers, currency, currencyOf(offer, currency));
    }
    return std::nullopt;
}

} // namespace lidlark::workbench

#include "core/workbench/check_supply.h"

#include <algorithm>

namespace lidlark::workbench {

namespace {

std::string fieldOf(const Supply &supply)
{
    return "items." + supply.item.value;
}

BuildProblem ofOffer(BuildFault fault, const Supply &supply, std::size_t offer, const char *field)
{
    return {fault, fieldOf(supply) + ".offers." + std::to_string(offer) + "." + field, supply.name,
            supply.offers[offer].shop};
}

} // namespace

bool isCurrency(std::string_view text)
{
    return text.size() == 3 &&
           std::ranges::all_of(text, [](char letter) { return letter >= 'A' && letter <= 'Z'; });
}

void checkNumbers(const Supply &supply, BuildProblems &problems)
{
    if (supply.item.empty())
        problems.push_back({BuildFault::NoItem, "items", supply.name, {}});
    if (supply.inStock < 0 || supply.inStock > mostInStock)
        problems.push_back(
            {BuildFault::StockOutOfRange, fieldOf(supply) + ".in_stock", supply.name, {}});
    if (supply.offers.size() > static_cast<std::size_t>(mostOffers))
        problems.push_back(
            {BuildFault::TooManyOffers, fieldOf(supply) + ".offers", supply.name, {}});
    for (std::size_t i = 0; i < supply.offers.size(); ++i) {
        const PackOffer &offer = supply.offers[i];
        if (offer.pieces < 1 || offer.pieces > mostPiecesInPack)
            problems.push_back(ofOffer(BuildFault::PackOutOfRange, supply, i, "pieces"));
        if (offer.pence && (*offer.pence < 0 || *offer.pence > mostPenceForPack))
            problems.push_back(ofOffer(BuildFault::PriceOutOfRange, supply, i, "pence"));
    }
}

void checkPrices(const Supply &supply, std::string_view currency, BuildProblems &problems)
{
    for (std::size_t i = 0; i < supply.offers.size(); ++i) {
        const PackOffer &offer = supply.offers[i];
        if (!offer.pence)
            problems.push_back(ofOffer(BuildFault::NoPrice, supply, i, "pence"));
        if (!offer.currency.empty() && offer.currency != currency)
            problems.push_back(ofOffer(BuildFault::TwoCurrencies, supply, i, "currency"));
    }
}

} // namespace lidlark::workbench

#include "core/workbench/sheet.h"

#include "core/workbench/cheapest_packs.h"

#include <algorithm>
#include <numeric>

namespace lidlark::workbench {

namespace {

std::vector<PackPrice> pricesOf(const Supply &supply)
{
    std::vector<PackPrice> prices;
    prices.reserve(supply.offers.size());
    for (const PackOffer &offer : supply.offers)
        prices.push_back({offer.pieces, offer.pence.value_or(0)});
    return prices;
}

/// What was paid for a piece where some are bought; else what it would cost where it is cheapest.
PiecePrice pieceOf(const SheetLine &line, const std::vector<PackPrice> &prices)
{
    if (line.bought > 0)
        return {line.spend.pence, line.bought};
    const auto cheapest =
        std::ranges::min_element(prices, [](const PackPrice &one, const PackPrice &other) {
            return one.pence * other.pieces < other.pence * one.pieces;
        });
    return cheapest == prices.end() ? PiecePrice() : PiecePrice{cheapest->pence, cheapest->pieces};
}

SheetLine lineOf(const Supply &supply, const Need &need)
{
    SheetLine line{supply.item, need, supply.inStock, {}, 0, {}, 0, {}};
    const std::vector<PackPrice> prices = pricesOf(supply);
    line.packs = cheapestPacks(prices, need.pieces + need.spares - supply.inStock - need.back);
    for (std::size_t i = 0; i < prices.size(); ++i) {
        line.bought += line.packs[i] * prices[i].pieces;
        line.spend.pence += line.packs[i] * prices[i].pence;
    }
    line.leftover = line.inStock + line.bought + need.back - need.pieces;
    if (need.pieces + need.covered > 0)
        line.piece = pieceOf(line, prices);
    return line;
}

} // namespace

std::int64_t SheetLine::packCount() const
{
    return std::accumulate(packs.begin(), packs.end(), std::int64_t{0});
}

OrProblems<Sheet> sheetOf(const Build &build, std::span<const Supply> supplies,
                          const SetAside &aside)
{
    const auto needs = needsOf(build, supplies, aside);
    if (const auto *problems = std::get_if<BuildProblems>(&needs))
        return *problems;
    Sheet sheet;
    std::vector<PiecePrice> pieces;
    for (std::size_t i = 0; i < supplies.size(); ++i) {
        sheet.lines.push_back(lineOf(supplies[i], std::get<std::vector<Need>>(needs)[i]));
        sheet.spend.pence += sheet.lines.back().spend.pence;
        pieces.push_back(sheet.lines.back().piece);
    }
    sheet.boxes = costsOf(build.boxes, supplies, pieces);
    return sheet;
}

std::vector<Supply> shelfAfter(std::vector<Supply> supplies, const Sheet &sheet)
{
    for (std::size_t i = 0; i < supplies.size(); ++i)
        supplies[i].inStock = static_cast<int>(sheet.lines[i].leftover);
    return supplies;
}

} // namespace lidlark::workbench

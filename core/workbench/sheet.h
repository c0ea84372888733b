#pragma once

#include "core/workbench/box_cost.h"
#include "core/workbench/build.h"
#include "core/workbench/build_problem.h"
#include "core/workbench/money.h"
#include "core/workbench/needs.h"
#include "core/workbench/supply.h"

#include <cstdint>
#include <span>
#include <vector>

namespace lidlark::workbench {

/// What a build asks of one item, and what is bought for it (job.md 2.8).
struct SheetLine {
    ItemId item;
    Need need;
    std::int64_t inStock = 0;
    std::vector<int> packs;  ///< Of each offer of the supply, in their order.
    std::int64_t bought = 0; ///< Pieces in those packs.
    TillPence spend;
    /// On the shelf afterwards: in stock + bought + put back - needed. Spares are part of it.
    std::int64_t leftover = 0;
    PiecePrice piece; ///< What one piece is worth in a box.
    bool operator==(const SheetLine &) const = default;

    [[nodiscard]] std::int64_t packCount() const;
};

/// What to buy for a build, and what lies in each of its boxes afterwards.
struct Sheet {
    std::vector<SheetLine> lines; ///< One for each supply, in their order, needed or not.
    TillPence spend;              ///< What you spend today.
    std::vector<BoxCost> boxes;   ///< What is in each box, in the order of the build.
    bool operator==(const Sheet &) const = default;
};

/// The build sheet: of each item the cheapest packs (cheapest_packs.h) that cover need and spares
/// beyond what lies on the shelf.
/// @param aside what lies ready for these boxes: only what they need beyond it is bought.
OrProblems<Sheet> sheetOf(const Build &build, std::span<const Supply> supplies,
                          const SetAside &aside = {});

/// The shelf once everything is bought and every box is packed: what is left over is the stock that
/// the next build finds (job.md T19).
/// @param supplies those that the sheet was made of.
std::vector<Supply> shelfAfter(std::vector<Supply> supplies, const Sheet &sheet);

} // namespace lidlark::workbench

#pragma once

#include <string>
#include <variant>
#include <vector>

namespace lidlark::workbench {

/// Why a build cannot be reckoned. The words are in core/wording/build_words.h.
enum class BuildFault {
    TooManyBoxes,
    TooManyItems,
    SparesOutOfRange,
    NoCurrency,      ///< Not three capital letters.
    NoCode,          ///< A box without a code.
    CodeTwice,       ///< Two boxes with the same code.
    UnknownItem,     ///< A box holds what no supply is about.
    PartTwice,       ///< A box lists an item twice.
    TooFewPieces,    ///< Of an item in a box: less than one.
    TooManyPieces,   ///< Of an item in a box.
    NoItem,          ///< A supply without an item.
    SupplyTwice,     ///< Two supplies of one item.
    StockOutOfRange, ///< Below nothing, or more than any shelf holds.
    TooManyOffers,
    PackOutOfRange,  ///< A pack of no piece, or of more than any pack holds.
    PriceOutOfRange, ///< Below nothing, or more than any pack costs.
    NoPrice,         ///< Of an item that the build needs.
    TwoCurrencies,   ///< A price in another currency than the build's.
    NowhereToBuy     ///< More is needed than lies on the shelf, and nobody sells it.
};

/// One thing to put right, where it is, and whom or what it is about.
struct BuildProblem {
    BuildFault fault = BuildFault::UnknownItem;
    std::string field; ///< "items.pegs.offers.0.pieces", "boxes.HAL-07.parts.pegs".
    std::string about; ///< The item's name, or the box's code where it is about a box.
    std::string also;  ///< The shop of an offer; the item in a box. Empty: neither.
    bool operator==(const BuildProblem &) const = default;
};

/// In the order in which they were found; never empty where it stands for an answer.
using BuildProblems = std::vector<BuildProblem>;

/// What was asked for, or all that is to be put right first.
template <class T> using OrProblems = std::variant<T, BuildProblems>;

} // namespace lidlark::workbench

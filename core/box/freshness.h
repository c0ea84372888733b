#pragma once

#include "core/box/item_care.h"
#include "core/box/item_ledger.h"

#include <optional>
#include <vector>

namespace lidlark::box {

/// How long a kind of thing keeps; absent: not limited.
struct KeepingRules {
    std::optional<int> openedDays;  ///< Days after opening.
    std::optional<int> openAirDays; ///< Of these, what each time left open costs.
    std::optional<int> replaceDays; ///< Days after it came into the box.
    std::optional<int> checkDays;   ///< Days between two looks.
    bool perishable = false;        ///< Pieces have an identity and a date of opening.
};

enum class PieceState { Unopened, Good, UseSoon, PastDate };
inline constexpr EnumNames<PieceState, 4> pieceStateNames{
    {"unopened", "good", "use-soon", "past-date"}};

struct PieceFreshness {
    PieceId id;
    PieceState state = PieceState::Good;
    std::optional<Day> opened;
    int timesLeftOpen = 0;
    std::optional<Day> lastDay; ///< The last day it may be used.
};

/// How one item stands today.
struct Freshness {
    std::vector<PieceFreshness> pieces; ///< Still in the box, in the order to use them up.
    int pastDate = 0;                   ///< Of these.
    int usable = 0;              ///< Of the low end of the stock: neither past date nor mouthed.
    bool useSoon = false;        ///< A piece nears its last day, and it is fit for use.
    bool lookDue = false;        ///< The look that comes with `checkDays` is due.
    std::optional<Day> lastLook; ///< None: nobody has looked since it came.
    [[nodiscard]] const PieceFreshness *inUse() const; ///< Opened first; null: none is open.
    /// The piece that a play now opens; nothing where one is open and fit, or none is left.
    [[nodiscard]] std::optional<PieceId> toOpen() const;
};

/// A piece is used soon in its last days. [P]
inline constexpr int soonDays = 2;

/// How many pieces there are, and how they came.
struct Stock {
    std::vector<Arrival> arrivals; ///< Oldest first.
    int low = 0;                   ///< In the box.
    int high = 0;
    int out = 0; ///< Still in use: in the house, not in the box.
};

/// A pure view: which of the pieces that came are still here (those opened first go first), and how
/// they stand on @p today. A look dated after today counts as none: a clock was wrong.
Freshness freshnessOf(const Stock &stock, const ItemCare &care, const KeepingRules &rules,
                      Day today);

} // namespace lidlark::box

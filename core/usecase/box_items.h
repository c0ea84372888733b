#pragma once

#include "core/box/freshness.h"
#include "core/box/request.h"
#include "core/usecase/family.h"

#include <optional>
#include <span>
#include <vector>

namespace lidlark::usecase {

/// All that a screen tells of one item of the box.
struct BoxItem {
    store::ItemRow row;
    const catalogue::ItemKind *kind = nullptr; ///< Null: of a newer catalogue.
    box::Freshness freshness;
    std::optional<box::Request> request;  ///< The last one, open or counted in.
    std::vector<box::Question> questions; ///< Open ones.
    bool lookAlone = false;               ///< A look is due, and no count is that would bring it.
    bool runsLow = false;                 ///< Half or less of what belongs here, and not none.
    bool none = false;                    ///< Nothing usable is left.
};

/// In the order of the items' ids. A pure view of what @p family knows on @p today.
std::vector<BoxItem> boxItemsOf(const Family &family, const catalogue::Catalogue &catalogue,
                                Day today);

/// How long the pieces of @p kind keep.
box::KeepingRules keepingRulesOf(const catalogue::ItemKind &kind);

/// How one item stands today. Who counts a thing has it in hand: a count is a look, too.
/// @param kind null: of a newer catalogue; nothing limits it.
box::Freshness freshnessOf(const store::ItemRow &row, const catalogue::ItemKind *kind, Day today);

/// What of these is looked over before the play: what is looked at before every use, and what a
/// look is due of. Each once, in their order. A band is left to its own caution, which says so
/// every time (safety.md RB-01).
std::vector<const catalogue::ItemKind *> toLookOver(const Family &family,
                                                    const catalogue::Catalogue &catalogue,
                                                    std::span<const catalogue::ItemUse> items,
                                                    Day today);

/// Pieces gone for good in one week.
struct WeekOfUse {
    Day first; ///< Monday.
    int pieces = 0;
};

/// The use of one item over the last @p weeks weeks at most, oldest first, this one included, and
/// none from before it came: for adults.
std::vector<WeekOfUse> weeksOfUse(const store::ItemRow &row, Day today, int weeks);

/// A full count is worth asking for: none for a month, counted from the handing over. [P]
bool countIsDue(const Family &family, Day today);

} // namespace lidlark::usecase

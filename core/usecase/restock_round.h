#pragma once

#include "core/usecase/restock.h"

#include <string>
#include <vector>

namespace lidlark::usecase {

/// How what was packed gets to a home.
enum class Way { Post, Visit };
inline constexpr EnumNames<Way, 2> wayNames{{"post", "visit"}};

/// What one box has asked for of one item.
struct RoundLine {
    std::string child; ///< Alias.
    int pieces = 1;    ///< That would fill the lid list again.
    bool packed = false;
    ItemId insteadOf;    ///< What it stands in for; empty: itself.
    std::string askedBy; ///< Empty: sent without anybody asking.
    DayPart asked;
    bool operator==(const RoundLine &) const = default;
};

/// One item, and every box that waits for it.
struct RoundItem {
    ItemId item;
    std::vector<RoundLine> lines; ///< In the order of the children's aliases.
    [[nodiscard]] int piecesToPack() const;
    bool operator==(const RoundItem &) const = default;
};

/// A box that something goes to.
struct RoundBox {
    std::string child;
    Way way = Way::Post;
    int toPack = 0; ///< Items asked for and not packed yet.
    int packed = 0; ///< Items packed and not sent yet.
    bool operator==(const RoundBox &) const = default;
};

/// Everything to be packed and sent now, of all boxes (job.md T13). What is on its way already is
/// none of it.
struct RestockRound {
    std::vector<RoundItem> items; ///< In the order of the items' ids.
    std::vector<RoundBox> boxes;  ///< In the order of the children's aliases.
    bool operator==(const RestockRound &) const = default;
};

/// Errors: those of `loadFamily` and of the store.
Result<RestockRound> restockRound(Workplace &workplace);

/// A tick: this family's request is packed. Errors: as moveRequest.
Outcome packFor(Workplace &workplace, const std::string &childAlias, const ItemId &item);

/// Post or visit, kept on this phone alone until it is said otherwise. Errors: NotFound (child).
Outcome goBy(Workplace &workplace, const std::string &childAlias, Way way);

/// All that is packed for a box has left: each request is on its way, in one transaction. Errors:
/// NotFound (child; nothing is packed for it).
Outcome sendOff(Workplace &workplace, const std::string &childAlias);

} // namespace lidlark::usecase

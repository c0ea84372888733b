#pragma once

#include "core/child/avoided.h"
#include "core/usecase/family.h"

#include <set>
#include <string>
#include <vector>

namespace lidlark::usecase {

/// Lines on one card of a lid list (job.md T5); what is more goes on to a second card.
inline constexpr int mostLidLines = 14;

/// One kind of thing on a printed lid list.
struct LidPart {
    ItemId item;
    int pieces = 0;
    bool operator==(const LidPart &) const = default;
};

/// One line: nearly always one thing; a lace stands beside the card it belongs to.
struct LidLine {
    std::vector<LidPart> parts;
    bool operator==(const LidLine &) const = default;
};

/// What belongs in the box, for its lid. By the list in force, never by what is in it just now.
struct LidListPage {
    std::string child; ///< Alias.
    std::string code;  ///< Of the box (core/box/box_code.h).
    int revision = 0;
    Day issued;
    std::vector<LidLine> lines; ///< In the order of the tray.
    /// On the list, and not in such a home: a lid must not ask for it back (job.md scenario 3).
    std::vector<ItemId> keptOut;

    /// The lines, so many as one card holds at a time.
    [[nodiscard]] std::vector<std::vector<LidLine>> cards() const;
};

/// @param avoided by the homes of the child (avoided_at_home.h).
/// Errors: NotFound where the box has no lid list yet.
Result<LidListPage> lidListPageOf(const Family &family, const catalogue::Catalogue &catalogue,
                                  const std::set<child::Avoided> &avoided);

} // namespace lidlark::usecase

#pragma once

#include "core/workbench/sheet.h"

#include <span>
#include <vector>

namespace lidlark::workbench {

/// A line that is bought differently once there is one box more.
struct ChangedLine {
    SheetLine before;
    SheetLine after;
    bool operator==(const ChangedLine &) const = default;
};

/// What one box more does: packs come whole, so the till may ask for nothing, or for far more than
/// lies in the box. To be said before the box is added (job.md 2.8).
struct OneMoreBox {
    std::vector<ChangedLine> changed; ///< Only lines whose packs change, in the sheet's order.
    TillPence spend;                  ///< What you spend today, with it.
    TillPence more;                   ///< What the till asks for it.
    BoxCost inTheBox;                 ///< What is in it.
    bool operator==(const OneMoreBox &) const = default;
};

/// @param box the one more, with a code of its own.
/// @param aside what was set aside for the boxes that are there.
OrProblems<OneMoreBox> oneMoreBox(const Build &build, std::span<const Supply> supplies,
                                  const BuildBox &box, const SetAside &aside = {});

/// The same of several: `inTheBox` is of the first of them.
/// @param boxes one or more, each with a code of its own.
OrProblems<OneMoreBox> moreBoxes(const Build &build, std::span<const Supply> supplies,
                                 std::span<const BuildBox> boxes, const SetAside &aside = {});

} // namespace lidlark::workbench

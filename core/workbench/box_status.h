#pragma once

#include "core/journal/seen.h"
#include "core/workbench/status_event.h"

#include <set>
#include <span>
#include <vector>

namespace lidlark::workbench {

/// Where a box stands between two families.
enum class Standing { New, Issued, Returned, Retired };
inline constexpr EnumNames<Standing, 4> standingNames{{"new", "issued", "returned", "retired"}};

/// What was done to one item of a box that came back: by whom, how and when.
struct Tended {
    bool replaced = false; ///< Else cleaned.
    CleanedHow how = CleanedHow::SoapAndWater;
    std::string by;
    Day day;
    bool operator==(const Tended &) const = default;
};

/// A box as the clinic knows it, folded from all that was said of it.
struct BoxStatus {
    std::string code;
    Standing standing = Standing::New;
    std::string child; ///< Alias of whom it was handed to last.
    Day day;           ///< Of the step that brought it to where it stands.
    std::string by;    ///< Who said so.
    std::string round; ///< Identity of the handing over that stands; empty: never handed over.
    std::map<ItemId, int> pieces; ///< What was inside then.
    std::map<ItemId, Tended> tended;
    /// Lots that may be in it, by item. Where two people wrote without knowing of each other, or a
    /// word was taken back, all of them: a recall must miss no box.
    std::map<ItemId, std::set<std::string>> lots;
    /// To whom else it was handed over, as somebody else wrote without knowing.
    std::vector<std::string> alsoWith;
    std::set<std::string> builds; ///< As which it was ever packed and handed over.
    std::string why;              ///< Retired: in words.
    bool operator==(const BoxStatus &) const = default;
};

/// Any order, any repetition, the same. A handing over that has seen another replaces it; retired
/// is true once and stays; an item counts as clean or replaced only when nobody who did not know
/// better says "not yet".
/// @param events of one subject "box-status:<code>". @returns nothing where nothing is readable.
std::optional<BoxStatus> foldBoxStatus(std::span<const journal::Event> events,
                                       const journal::Seen &seen);

} // namespace lidlark::workbench

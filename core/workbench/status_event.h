#pragma once

#include "core/base/day.h"
#include "core/base/enum_names.h"
#include "core/base/id.h"
#include "core/journal/event.h"

#include <map>
#include <optional>
#include <set>
#include <string>

namespace lidlark::workbench {

/// What can be said of a box between two families (job.md T8).
enum class BoxStep {
    Issued,   ///< Handed over to a child.
    Returned, ///< Came back.
    Cleaned,  ///< One of its items was cleaned.
    Replaced, ///< One of its items was replaced by a new one.
    NotYet,   ///< Neither, after all: a tick was a slip.
    Retired   ///< It is used no more, and never again.
};
inline constexpr EnumNames<BoxStep, 6> boxStepNames{
    {"issued", "returned", "cleaned", "replaced", "not-yet", "retired"}};

/// How an item was cleaned. Common practice, no source: detergent and water, or a wipe for what
/// must not get wet, or a washing machine for cloth.
enum class CleanedHow { SoapAndWater, Wiped, Machine };
inline constexpr EnumNames<CleanedHow, 3> cleanedHowNames{{"soap-and-water", "wiped", "machine"}};

/// One event of the kind `box-status`.
struct StatusSaid {
    std::string box; ///< The code on its label.
    BoxStep step = BoxStep::Issued;
    Day day; ///< On which it happened.
    /// Identity of the handing over it belongs to; empty for one, and for a retired box.
    std::string round = {};
    std::string to = {};               ///< Issued: the child's alias.
    std::string build = {};            ///< Issued: as which it was packed.
    std::map<ItemId, int> pieces = {}; ///< Issued: what was inside.
    /// Issued: where a lot is known; two where two people packed one line.
    std::map<ItemId, std::set<std::string>> lots = {};
    ItemId item = {};                          ///< Cleaned, replaced, not yet.
    CleanedHow how = CleanedHow::SoapAndWater; ///< Cleaned.
    std::string lot = {};                      ///< Replaced: of the new one; empty: not known.
    std::string why = {};                      ///< Retired, in words; may be empty.
    bool operator==(const StatusSaid &) const = default;
};

std::string fieldsOf(const StatusSaid &said);

/// @returns nothing for malformed fields: such an event stays in the set without effect.
std::optional<StatusSaid> readStatus(const journal::Event &event);

} // namespace lidlark::workbench

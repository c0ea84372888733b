#pragma once

#include "core/base/enum_names.h"
#include "core/journal/seen.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lidlark::workbench {

/// What of a therapist's own an entry is.
enum class OwnSort { Item, Activity };
inline constexpr EnumNames<OwnSort, 2> ownSortNames{{"item", "activity"}};

/// An own entry as the clinic keeps it: one catalogue file, finished or not.
struct OwnKept {
    std::string id;
    OwnSort sort = OwnSort::Activity;
    std::string text;       ///< Empty: thrown away.
    bool signedOff = false; ///< Its writer has found it ready for boxes; else a draft.
    bool operator==(const OwnKept &) const = default;
};

/// For Kind::OwnItem or Kind::OwnActivity, as `sort` says.
std::string fieldsOf(const OwnKept &kept);
/// @returns nothing for another kind, malformed fields, or a text beyond longestOwnText.
std::optional<OwnKept> ownKeptFrom(const journal::Event &event);
/// A register: what has seen a text replaces it (events.md 3). @returns nothing when it was thrown
/// away. @param events of one subject "own-activity:<id>" or "own-item:<id>", any order.
std::optional<OwnKept> foldOwnKept(std::span<const journal::Event> events,
                                   const journal::Seen &seen);

/// What a therapist says to one box of an own entry.
struct OwnSaid {
    std::string id;
    OwnSort sort = OwnSort::Activity;
    std::string text; ///< Empty: withdrawn.
    int version = 1;  ///< Of the entry, as its text says too.
    bool operator==(const OwnSaid &) const = default;
};

std::string fieldsOf(const OwnSaid &said);
std::optional<OwnSaid> ownSaidFrom(const journal::Event &event);

/// One wording of an own entry, and who sent it.
struct OwnText {
    std::string text;
    int version = 1;
    std::string by; ///< Alias.
    bool operator==(const OwnText &) const = default;
};

/// How an own entry stands in one box.
struct OwnEntry {
    std::string id;
    OwnSort sort = OwnSort::Activity;
    /// What nothing has replaced, without repetition, the one said last first. Of an item each
    /// stands (the most careful of all is in force); of an activity one alone can be offered.
    std::vector<OwnText> standing;
    OwnText known;          ///< The last there was, so that what was played keeps its name.
    bool withdrawn = false; ///< By whoever spoke last, on every side.
    /// Two devices have said different things, and neither had seen the other's.
    bool unsettled = false;

    /// An activity that may be offered.
    [[nodiscard]] bool isOffered() const
    {
        return sort == OwnSort::Activity && !withdrawn && !unsettled && standing.size() == 1;
    }
    bool operator==(const OwnEntry &) const = default;
};

inline constexpr auto ownEntryPrefix = "own-entry:"; ///< Of the subjects in a box's lane.

/// The events that no other one of the subject and sort has replaced, the one said last first.
/// @param events of one subject "own-entry:<id>", any order.
std::vector<journal::Event> standingOwnEvents(std::span<const journal::Event> events, OwnSort sort,
                                              const journal::Seen &seen);

/// At most one of each sort.
std::vector<OwnEntry> foldOwnEntries(std::span<const journal::Event> events,
                                     const journal::Seen &seen);

} // namespace lidlark::workbench

#pragma once

#include "core/journal/seen.h"
#include "core/workbench/build.h"
#include "core/workbench/handed.h"

#include <map>
#include <set>
#include <span>

namespace lidlark::workbench {

enum class Mark {
    Packed,    ///< So many pieces of it lie in the box.
    NotPacked, ///< After all not, or it was not right and is out again.
    SecondLook ///< Somebody else has looked at what was packed, and it is right.
};
inline constexpr EnumNames<Mark, 3> markNames{{"packed", "not-packed", "second-look"}};

/// One event of the kind `pack-mark`. Who says so is its author.
struct MarkSaid {
    BuildId build;
    std::string box; ///< Code.
    ItemId item;
    Mark mark = Mark::Packed;
    int pieces = 0;           ///< Packed.
    Hand hand = Hand::Unsaid; ///< Packed: for which hand it is made, as it was read off the thing.
    std::string lot = {};     ///< Packed; empty: not known.
    /// Second look: identities of all words of its being packed that were on this device.
    std::set<std::string> of = {};
    bool operator==(const MarkSaid &) const = default;
};

std::string fieldsOf(const MarkSaid &said);
/// @returns nothing for malformed fields: such an event stays in the set without effect.
std::optional<MarkSaid> readMark(const journal::Event &event);

/// Somebody's word that one line lies in a box.
struct PackedBy {
    std::string identity; ///< Of the event.
    std::string who;
    int pieces = 0;
    Hand hand = Hand::Unsaid;
    std::string lot;
    bool operator==(const PackedBy &) const = default;
};

struct LookedBy {
    std::string who;
    std::set<std::string> of;
    bool operator==(const LookedBy &) const = default;
};

/// What stands of one line of one box.
struct LineMarks {
    /// By identity. More than one: two people packed it without knowing of each other. None as soon
    /// as one word that stands says that it is not in.
    std::vector<PackedBy> packed;
    std::vector<LookedBy> looks; ///< By name; all that was ever said, whatever it was of.
    bool operator==(const LineMarks &) const = default;
};

using LineKey = std::pair<std::string, ItemId>; ///< Box and item.
using Marks = std::map<LineKey, LineMarks>;

/// @param events of one subject "build:<id>", any order; the build's own are passed over.
Marks foldMarks(std::span<const journal::Event> events, const journal::Seen &seen);

/// Whether two names are one person's: large and small letters of ASCII and spaces make no
/// difference. A second person has another name; no name is nobody.
bool isSamePerson(const std::string &a, const std::string &b);

} // namespace lidlark::workbench

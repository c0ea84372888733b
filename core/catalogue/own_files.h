#pragma once

#include "core/catalogue/catalogue.h"

#include <set>
#include <span>
#include <string_view>

namespace lidlark::catalogue {

/// Entries that a therapist wrote have ids that begin so, and no entry of ours has.
inline constexpr std::string_view ownPrefix = "own-";
inline bool isOwnId(std::string_view id)
{
    return id.starts_with(ownPrefix);
}

/// Bounds of an own entry, so that a text from another phone neither slows this one nor breaks a
/// page. [P]
inline constexpr std::size_t longestOwnText = std::size_t{16} * 1024; ///< Bytes of one file.
inline constexpr std::size_t longestOwnName = 80;                     ///< Bytes of a name.
inline constexpr std::size_t longestOwnLine = 600;                    ///< Bytes of a line.
inline constexpr std::size_t mostOwnVersions = 8; ///< Of one item, written at once.
/// So many files that cannot be read are enough: no further one is looked into. A text made to be
/// read slowly costs a tenth of a second, and a box may hold a hundred.
inline constexpr int mostOwnUnread = 3;

inline bool operator==(const SourceFile &one, const SourceFile &other)
{
    return one.name == other.name && one.text == other.text;
}

/// Catalogue files of a therapist's own.
struct OwnFiles {
    /// Files of one name are versions of one item that were written at the same time: all of them
    /// stand (mostCareful), and the first one's words are shown. One with the id of a built-in item
    /// says that this one measures otherwise (corrected).
    std::vector<SourceFile> items;
    std::vector<SourceFile> activities; ///< Names differ.
    std::set<ItemId> doubtful;          ///< Something is said of them that cannot be read.
    std::set<ActivityId> withdrawn; ///< Known, so that what was played has a name; never offered.

    [[nodiscard]] bool empty() const
    {
        return items.empty() && activities.empty() && doubtful.empty();
    }
    bool operator==(const OwnFiles &) const = default;
};

/// The catalogue with a therapist's own entries over it, through the same checks as `load`: a file
/// that does not pass is left out with a problem. An activity, built in or own, that uses an item
/// of which something cannot be read is left out too, and so is one whose cautions lack a tag that
/// a corrected item now carries.
/// @param base as `load` or `translate` gives it; translated entries keep their words.
Catalogue catalogueWith(const Catalogue &base, const OwnFiles &own);

} // namespace lidlark::catalogue

#pragma once

#include "core/box/answers.h"
#include "core/box/item_changes.h"
#include "core/journal/meetings.h"

#include <cstddef>
#include <functional>
#include <vector>

namespace lidlark::box {

/// The number of one kind in one change (events.md 7.1).
struct Entry {
    std::size_t change = 0; ///< Index into the changes.
    ExceptionKind kind = ExceptionKind::UsedUp;
    auto operator<=>(const Entry &) const = default;
};

/// Entries that tell of the same pieces: they count once, with the largest number among them.
using Group = std::vector<Entry>;

/// Which entries of one item may tell of the same pieces (events.md 7).
struct DoubleEntries {
    std::vector<Group> answered; ///< Joined because somebody said "same".
    std::vector<Group> possible; ///< Joined besides, until somebody says "two".
    std::vector<Question> questions;
};

/// @param isClosed whether a count covers both of two changes: then it no longer matters.
DoubleEntries doubleEntriesOf(const std::vector<Change> &changes, const Answers &answers,
                              const journal::Meetings &meetings,
                              const std::function<bool(std::size_t, std::size_t)> &isClosed);

} // namespace lidlark::box

#pragma once

#include "core/base/id.h"
#include "core/checkin/checkin_events.h"

#include <map>
#include <optional>
#include <span>

namespace lidlark::checkin {

/// What became of a kite from before a play to after it. No change is better than another
/// (checkin.md 1): the words say where the kite went, not whether that was good.
enum class Change {
    TowardsSteady,
    NoChange,
    AwayFromSteady,
    PastSteady ///< From one side of steady to the other.
};

/// @returns nothing where one of the two tells no state: clouds, or the bag.
std::optional<Change> changeOf(Kite before, Kite after);

/// Pairs that were told about one activity, counted.
struct PairCounts {
    int towards = 0;
    int same = 0;
    int away = 0;
    int past = 0;
    /// Of those: it was tugging afterwards, and not before.
    int busier = 0;

    [[nodiscard]] int total() const { return towards + same + away + past; }
    void add(Kite before, Kite after);
    bool operator==(const PairCounts &) const = default;
};

/// Fewer pairs than this say nothing to anybody (checkin.md 7).
inline constexpr int pairsBeforeSummary = 6;

/// Counts the pairs of each activity. What a child told and what an adult guessed are never added
/// up.
std::map<ActivityId, PairCounts> pairsByActivity(std::span<const CheckIn> checkIns, ShownBy by);

} // namespace lidlark::checkin

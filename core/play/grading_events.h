#pragma once

#include "core/catalogue/activity.h"
#include "core/journal/seen.h"

#include <optional>
#include <span>
#include <string>

namespace lidlark::play {

/// How an activity is played: as it is written, or with one of its lines for easier or harder.
enum class Way { AsWritten, Easier, Harder };
inline constexpr EnumNames<Way, 3> wayNames{{"as-written", "easier", "harder"}};

/// One grading: the way, and by which lever. An activity has each lever at most once a way.
struct GradingUsed {
    Way way = Way::AsWritten;
    catalogue::Lever lever = catalogue::Lever::Support; ///< Meaningless as written.

    bool operator==(const GradingUsed &other) const
    {
        return way == other.way && (way == Way::AsWritten || lever == other.lever);
    }
};

/// The lines of an activity that go one way; none as written.
const std::vector<catalogue::Grading> &linesOf(const catalogue::Activity &activity, Way way);
/// The line of the activity that this grading is. @returns null as written, and where a newer
/// version of the activity no longer has it.
const catalogue::Grading *lineFor(const catalogue::Activity &activity, const GradingUsed &used);

/// What a tap on "easier" or "harder" makes of the grading in use: the first line of that way, then
/// its next, and after the last as written again. @p way is not AsWritten.
GradingUsed afterTap(const catalogue::Activity &activity, const GradingUsed &current, Way way);

/// home lane: how this child played it last.
std::string fieldsOf(const ChildId &child, const ActivityId &activity, const GradingUsed &used);
/// box lane: how the therapist asks for it to be played; nothing: not pinned (any more).
std::string fieldsOfPin(const ActivityId &activity, const std::optional<GradingUsed> &pinned);

/// A register (events.md 5). @param kind Grading or GradingPin. @returns nothing when never said,
/// withdrawn, or malformed.
std::optional<GradingUsed> foldGrading(std::span<const journal::Event> events,
                                       const journal::Seen &seen, journal::Kind kind);

} // namespace lidlark::play

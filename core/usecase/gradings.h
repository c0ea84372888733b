#pragma once

#include "core/play/grading_events.h"
#include "core/usecase/family.h"

#include <optional>

namespace lidlark::usecase {

/// Why a grading stands first.
enum class GradingFrom {
    Nobody,   ///< It is played as it is written.
    LastTime, ///< How this child played it last.
    Therapist ///< Pinned for this child.
};
inline constexpr EnumNames<GradingFrom, 3> gradingFromNames{{"nobody", "last-time", "therapist"}};

struct FirstGrading {
    play::GradingUsed used;
    GradingFrom from = GradingFrom::Nobody;
};

/// The grading that stands first when the activity is played next: the therapist's pin, else how it
/// was played last in this home, else as written. One whose line the activity no longer has does
/// not count.
FirstGrading firstGradingOf(const Family &family, const catalogue::Activity &activity);

/// Keeps how @p child played the activity, where it differs from what is kept.
/// A guest has no history and keeps nothing.
Outcome keepGrading(Workplace &workplace, const Family &family, const ActivityId &activity,
                    const play::GradingUsed &used);

/// The therapist pins one grading for a child and activity, or takes the pin off.
/// Errors: Invalid (not a therapist's phone; a grading that the activity does not have), NotFound.
Outcome pinGrading(Workplace &workplace, const std::string &childAlias, const ActivityId &activity,
                   const std::optional<play::GradingUsed> &pinned);

} // namespace lidlark::usecase

#pragma once

#include "core/base/part_of_day.h"
#include "core/catalogue/activity.h"
#include "core/usecase/gradings.h"
#include "core/usecase/workplace.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lidlark::usecase {

/// How far a play has come on this phone.
enum class Stage { Playing, PuttingBack };
inline constexpr EnumNames<Stage, 2> stageNames{{"playing", "putting-back"}};

/// What a phone needs to come back after a dead battery (job.md scenario 6). Kept at every tap,
/// on this phone only; it is no history.
struct Progress {
    PlayId play;
    ActivityId activity;
    Stage stage = Stage::Playing;
    int step = 0;                          ///< 0-based.
    std::vector<catalogue::ItemUse> items; ///< What went out, swaps applied.
    std::map<ItemId, ItemId> swaps;
    catalogue::TagSet cautions; ///< Of the form that was admitted.
    catalogue::Supervision supervision = catalogue::Supervision::Beside;
    std::map<ItemId, int> home; ///< Pieces the child has tapped home.
    DayPart began;
    play::GradingUsed grading; ///< As it is played now.
    /// Why that grading stood there when the play began; Nobody once somebody has chosen another.
    GradingFrom gradingFrom = GradingFrom::Nobody;
    bool operator==(const Progress &) const = default;
};

Outcome keepProgress(Workplace &workplace, const BoxId &box, const Progress &progress);

/// The play in hand, if nobody has ended it, here or on another phone. A play that was begun just
/// before the phone died, with nothing kept yet, is found from its event.
/// @param box,child whose play. @returns nothing when all is put back.
Result<std::optional<Progress>> loadProgress(Workplace &workplace, const BoxId &box,
                                             const ChildId &child);

Outcome clearProgress(Workplace &workplace, const BoxId &box);

} // namespace lidlark::usecase

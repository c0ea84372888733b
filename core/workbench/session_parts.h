#pragma once

#include "core/catalogue/catalogue.h"
#include "core/workbench/video_plan.h"

namespace lidlark::workbench {

/// One thing that a session needs, by the activities of its plan.
struct ThingNeeded {
    ItemId item;
    catalogue::Source source = catalogue::Source::Box;
    int pieces = 0;        ///< The most that any one activity needs.
    bool forSpare = false; ///< Only a spare needs it.
    std::optional<AtHand> said;
    bool operator==(const ThingNeeded &) const = default;
};

/// What each activity of a session uses: swaps applied, as the gate let it through; where the gate
/// has not been asked, what its entry says.
using UsesOf = std::map<ActivityId, std::vector<catalogue::ItemUse>>;
UsesOf usesAsWritten(const VideoPlan &plan, const catalogue::Catalogue &catalogue);

/// Everything to have ready: of the box first, then of the household, each in the order in which it
/// is needed. What is nice to have but can be done without is not among it.
std::vector<ThingNeeded> thingsNeeded(const VideoPlan &plan, const UsesOf &uses,
                                      const std::map<ItemId, AtHand> &said);

/// One place of a session.
struct SessionPart {
    ActivityId planned;
    std::optional<ActivityId> played; ///< The planned one, or a spare; absent: nothing fits.
    std::vector<ItemId> missing;      ///< Why not the planned one.
    bool operator==(const SessionPart &) const = default;
};

/// What is played as things stand: an activity that lacks something gives its place to the first
/// spare that lacks nothing and is not yet taken. What nobody has spoken of counts as at hand.
std::vector<SessionPart> partsNow(const VideoPlan &plan, const UsesOf &uses,
                                  const std::map<ItemId, AtHand> &said);

/// When each part begins, in minutes from the session's start. @param minutes of each part.
/// The first minutes are for greeting and the camera; the last for what was seen and what is next.
/// Common practice, no source.
inline constexpr int minutesToArrive = 3;
inline constexpr int minutesToPart = 5;
std::vector<int> beginningsOf(std::span<const int> minutes);

} // namespace lidlark::workbench

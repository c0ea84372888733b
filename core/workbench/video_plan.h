#pragma once

#include "core/base/day.h"
#include "core/base/id.h"
#include "core/journal/seen.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lidlark::workbench {

/// What therapist and family will play in one video session, each with a box of their own (job.md
/// T14). Written by the therapist into the box's lane, so that the family has it offline.
struct VideoPlan {
    std::string id;
    HomeId home; ///< Where the family will be.
    Day day;
    int minuteOfDay = 0;                ///< Local time in the home, 0 to 1439.
    int revision = 1;                   ///< Of the lid list that it was made from.
    std::vector<ActivityId> activities; ///< One to three, in the order in which they are played.
    std::vector<ActivityId> spares;     ///< At most two: played where a thing is missing.
    bool calledOff = false;
    bool operator==(const VideoPlan &) const = default;
};

inline constexpr std::size_t mostPlayed = 3;
inline constexpr std::size_t mostSpares = 2;

std::string fieldsOf(const VideoPlan &plan);
/// @returns nothing where a field is missing, astray, or a number beyond its bounds.
std::optional<VideoPlan> readVideoPlan(const journal::Event &event);
/// What an event of a plan is about within its lane.
std::string subjectOfPlan(const std::string &id);

/// The plan as it was written last (events.md 3). @param events of one plan's subject, any order.
std::optional<VideoPlan> foldVideoPlan(std::span<const journal::Event> events,
                                       const journal::Seen &seen);

/// Whether one thing is at hand, as somebody in the home has said.
struct AtHand {
    bool here = false;
    std::string author;
    Day day;
    bool operator==(const AtHand &) const = default;
};

std::string fieldsOfAtHand(const std::string &plan, const ItemId &item, bool here);
/// By item, what was said last. @param events of one plan's subject, any order.
std::map<ItemId, AtHand> foldAtHand(std::span<const journal::Event> events,
                                    const journal::Seen &seen);

} // namespace lidlark::workbench

#pragma once

#include "core/rotation/menu.h"

#include <array>
#include <vector>

namespace lidlark::rotation {

/// One straight piece of a curve: so many minutes, each worth so much.
struct Segment {
    int width = 0; ///< Minutes.
    int slope = 0; ///< Tenths of a point a minute.
    bool operator==(const Segment &) const = default;
};

/// What further minutes of one skill are worth: slopes strictly fall, flat after the last segment
/// (reference/rotation.md). Empty: nothing is lacking.
using Curve = std::vector<Segment>;

/// What @p more minutes add after the first @p from minutes of the curve.
int gainOf(const Curve &curve, int from, int more);

/// What the week is worth in one skill, before anything is practised:
/// - the first 5 minutes 2 tenths each: one play of the usual length makes 1 point, which is the
///   "spread" part of activities.md 2.2, "main skill not practised this week";
/// - the next 10 minutes 1 tenth each: up to three bouts of five minutes, because an even gap of 2
///   to 4 days between bouts gives two or three a week (development.md g, rule 2);
/// - nothing after that: more of the same is not what the week lacks.
/// A skill that a current goal names counts twice. The numbers are practice judgement, to be
/// confirmed by a clinician.
inline constexpr std::array<Segment, 2> weekSegments{{{5, 2}, {10, 1}}};
inline constexpr int goalSkillWeight = 2;

/// The most that one activity can add: two main skills, two further ones, all named by goals, none
/// practised, and the longest play the catalogue allows (8 minutes, activities.md 1.1).
inline constexpr int largestCoverage =
    2 * goalSkillWeight * (5 * 2 + 3 * 1) + 2 * goalSkillWeight * (4 * 2);

/// Minutes of practice that one play gives to one skill.
struct Practice {
    catalogue::Skill skill = catalogue::Skill::Pin;
    int minutes = 0;
};

/// A main skill has all the minutes of play, a further one half of them, rounded down. Each skill
/// comes once.
std::vector<Practice> practiceOf(const catalogue::Activity &activity);

/// For each skill, in the order of the enumeration, what is left of its curve after the minutes
/// this child has practised in the last seven days.
std::vector<Curve> weekCurves(const Question &question);

} // namespace lidlark::rotation

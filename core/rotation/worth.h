#pragma once

#include "core/rotation/candidate.h"
#include "core/rotation/coverage.h"
#include "core/rotation/kite_roles.h"
#include "core/rotation/menu.h"

namespace lidlark::rotation {

/// The parts of one entry's worth, in tenths of a point (activities.md 2.2; the weights are
/// practice judgement, to be confirmed by a clinician):
///
/// | part            | tenths    | rule                                                         |
/// |-----------------|-----------|--------------------------------------------------------------|
/// | goal link       | 0 to 40   | goal_link.h                                                  |
/// | check-in fit    | 0 to 30   | kite_roles.h                                                 |
/// | own record      | -20 to 20 | below                                                        |
/// | freshness       | -30, 0,   | played in the last 2 days; not played for 10 days, where an  |
/// |                 | 20        | entry never played counts from the box's issue               |
/// | known friend    | 0, 20     | familiarity.h                                                |
/// | use soon        | 0, 10     | uses a perishable near its date                              |
/// | spare the stock | -20, 0    | would use up the last piece of something                     |
/// | waiting         | 0 and up  | 0 for the first n / k days (rounded down), then 10 a day     |
/// | put-back cost   | -10, 0    | mess 2 in the evening or for a tired adult                   |
///
/// **Own record**, from three plays on: what was seen of this child is counted, never averaged on a
/// screen. Each before / after pair is one observation, +1 towards steady, -1 away from it, else 0;
/// each play about which an adult noticed something is one, +1 where it was asked for again or the
/// child found an own way, else 0. Four observations of "as expected" (0) stand beside them, so
/// that few pull little: 20 * sum / (observations + 4).
///
/// "After 18:00" of the table is the evening part of the day here, so that two phones that are
/// asked at different minutes show the same menu.
///
/// **No starvation.** An entry that on every day could be offered, in some choice that satisfies
/// all that is in force that day, is offered at the latest in menu number `longestWait(n, r)` after
/// the one it was last in, with one menu a day:
///
///     r * (R + n) + n - 1
///
/// n: entries that are admitted at one time or another in those days; k: offers a menu; R: the most
/// points by which the other parts of two entries, with their coverage and role bonus, can differ
/// (`otherRange`); r: how many of a menu would have to leave for the entry to come in, with r - 1
/// others beside it. r is 1 where no side condition bars it, and never more than k: the classes of
/// the side conditions (new, friends, without a table, families, messy ones) matter through r
/// alone, whatever their sizes, and time does not come in at all. The proof stands in worth.cpp.
///
/// @param admitted n of the waiting part: how many entries the gate let through.
Worth worthOf(const Candidate &candidate, const Question &question, std::size_t admitted);

/// Tenths between the lowest and the highest sum of all parts but waiting: -80 to 140.
inline constexpr int otherPartsRange = 220;

/// R: whole points, rounded up, with coverage and role bonus.
inline constexpr int otherRange =
    (otherPartsRange + largestCoverage + kiteRoleBonus * static_cast<int>(kiteRoleCount) + 9) / 10;

/// The bound above, in menus. @param entries n. @param displaced r, 1 to k.
constexpr int longestWait(int entries, int displaced)
{
    return displaced * (otherRange + entries) + entries - 1;
}

} // namespace lidlark::rotation

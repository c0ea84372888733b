#pragma once

#include "core/rotation/candidate.h"
#include "core/rotation/menu.h"
#include "core/rotation/menu_problem.h"

#include <span>
#include <vector>

namespace lidlark::rotation {

/// The question in numbers, with the way back to the candidates.
struct PosedProblem {
    MenuProblem problem;                 ///< Entries in the order of rank, then id.
    std::vector<std::size_t> candidates; ///< For each entry, its place among the candidates.
    std::vector<Worth> worths;           ///< For each entry.
};

/// Curves of the problem: the skills in the order of their enumeration, then one for each kite
/// role.
inline constexpr std::size_t firstRoleCurve = catalogue::skillCount;

/// Leaves out what was played today, what is asked to be left out, what does not fit the minutes,
/// the life words, or the check-in's rules; puts the rest into numbers.
/// @param candidates everything the gate let through.
PosedProblem poseProblem(std::span<const Candidate> candidates, const Question &question);

} // namespace lidlark::rotation

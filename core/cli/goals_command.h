#pragma once

#include <string>

namespace lidlark::cli {

/// The T-score of each row of a table id,weights,levels,rho, as CSV (core/goals/attainment.h). A
/// row that cannot be scored keeps its place with an empty score, and goes to standard error with
/// its line, its id and the field. @returns the exit status.
int runGoals(const std::string &csv);

} // namespace lidlark::cli

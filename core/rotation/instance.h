#pragma once

#include "core/base/result.h"
#include "core/rotation/menu_problem.h"
#include "core/rotation/partial_menu.h"

#include <string>
#include <vector>

namespace lidlark::rotation {

/// A problem in the text format `lidrot 1` (reference/rotation.md): activities of whole numbers,
/// some to be chosen for each day.
struct Instance {
    MenuProblem problem; ///< Entries in the order of their ids.
    std::size_t perDay = 1;
    std::vector<int> minutes; ///< Of each day.
    std::vector<int> messy;   ///< Of each day, at most so many.
};

/// The rules of one day of an instance.
ChoiceRules rulesOf(const Instance &instance, std::size_t day);

/// Reads the format. Every number has a range (instance.cpp), so that nothing overflows and nothing
/// huge is made: at most 20,000 activities, 10 a day, 31 days.
/// Errors: Invalid, "line 7, minutes: not a whole number from 0 to 1000000".
Result<Instance> readInstance(const std::string &text);

} // namespace lidlark::rotation

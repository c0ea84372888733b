#pragma once

#include "core/child/avoided.h"
#include "core/usecase/family.h"

#include <set>
#include <vector>

namespace lidlark::usecase {

/// The sheets of all homes in which a child lives. Errors: those of the store.
Result<std::vector<child::HomeSheet>> sheetsOfHomesOf(Workplace &workplace, const Family &family);

/// What the homes of a child must avoid, all of them together: a box goes from home to home, and so
/// does what is printed about it. Errors: those of the store.
Result<std::set<child::Avoided>> avoidedAtHomesOf(Workplace &workplace, const Family &family);

} // namespace lidlark::usecase

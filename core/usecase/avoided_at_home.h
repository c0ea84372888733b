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

/// The alias of a child of this store as it is kept, where @p typed differs from it in capitals or
/// spaces alone; else @p typed. Errors: those of the store.
Result<std::string> aliasOnThisPhone(Workplace &workplace, const std::string &typed);

/// The same as avoidedAtHomesOf, by alias. Nothing for a child whose homes are not known here.
Result<std::set<child::Avoided>> avoidedForBoxOf(Workplace &workplace, const std::string &alias);

} // namespace lidlark::usecase

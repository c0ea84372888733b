#pragma once

#include "core/child/avoided.h"
#include "core/usecase/family.h"

#include <set>

namespace lidlark::usecase {

/// What the homes of a child must avoid, all of them together: a box goes from home to home, and so
/// does what is printed about it. Errors: those of the store.
Result<std::set<child::Avoided>> avoidedAtHomesOf(Workplace &workplace, const Family &family);

/// Whether something of that kind is kept out of such a home.
bool isKeptOut(const catalogue::ItemKind &kind, const std::set<child::Avoided> &avoided);

} // namespace lidlark::usecase

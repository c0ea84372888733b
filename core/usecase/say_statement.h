#pragma once

#include "core/child/home_facts.h"
#include "core/usecase/workplace.h"

namespace lidlark::usecase {

/// One statement of the home sheet. Where it means that things must leave the house ("yes, latex"),
/// also one request for what stands in, for each box of that home, in the same transaction. Asked
/// once: a swap that is in the box or was asked for before is not asked for again.
Outcome sayStatement(Workplace &workplace, const HomeId &home, const child::Fact &fact);

} // namespace lidlark::usecase

#pragma once

#include "core/usecase/workplace.h"

namespace lidlark::usecase {

/// Whether this phone packs at somebody else's table: it was let into the clinic's crew
/// (core/crew/clinic_crew.h) under another name than who founded it. False where there is no such
/// crew, and on every phone of the one who founded it.
Result<bool> packsForAnother(Workplace &workplace);

} // namespace lidlark::usecase

#pragma once

#include "core/journal/event.h"
#include "core/usecase/workplace.h"

#include <string>

namespace lidlark::usecase {

/// One event in the phone's person's name, in a transaction of its own.
Outcome sayOne(Workplace &workplace, const journal::Lane &lane, journal::Kind kind,
               std::string fields);

} // namespace lidlark::usecase

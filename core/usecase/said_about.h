#pragma once

#include "core/journal/event.h"

#include <string>

namespace lidlark::usecase {

/// Which register an event writes: what has seen another event of the same register replaces it.
/// Empty: the event is a fact of its own, and replaces nothing.
std::string registerOf(const journal::Event &event);

} // namespace lidlark::usecase

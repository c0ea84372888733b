#pragma once

#include "graph.h"

#include "core/base/clock.h"

#include <memory>

namespace lidlark::mobile {

/// The phone's own clock, or the one that the command line asks for.
std::unique_ptr<Clock> clockFrom(const StartOptions &options);

} // namespace lidlark::mobile

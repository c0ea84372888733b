#pragma once

#include "core/sync/chain.h"
#include "core/sync/findings.h"
#include "core/sync/segment.h"

#include <optional>

namespace lidlark::sync {

/// How what is wrong with bytes is named.
FindingKind kindOf(SegmentFault fault);
/// The same of a place in a chain. @returns nothing where there is nothing wrong with it.
std::optional<FindingKind> kindOf(Standing standing);

} // namespace lidlark::sync

#pragma once

#include "core/sync/fetch.h"

namespace lidlark::sync {

/// Whether what was caught may let more be found right away: not all was taken at once, something
/// waits for what came with it, or who is in and which keys there are has changed. Else every chain
/// was followed to its end, and asking all of them once more would bring nothing.
bool needsAnotherLook(const Catch &caught);

} // namespace lidlark::sync

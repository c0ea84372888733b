#pragma once

#include "core/sync/sharing_state.h"
#include "core/wording/sentence.h"

namespace lidlark::sync {

/// "On this phone only", "3 notes wait on this phone", "Shared at 16:10", "Shared yesterday".
wording::Sentence sentenceFor(const SharingState &state, std::int64_t nowMs, int offsetMinutes);

} // namespace lidlark::sync

#pragma once

#include "core/base/result.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// One plain sentence or two: what happened, that nothing was lost, what to do.
Sentence sentenceFor(const Error &error);

} // namespace lidlark::wording

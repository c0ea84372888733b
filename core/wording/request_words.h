#pragma once

#include "core/box/request.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// "Asked for", "Seen", "Packed", "On its way", "Counted in" (job.md G5).
Sentence requestStepWord(box::RequestStep step);

/// The step that stands, and who said it when: "Asked for, says Ruth, Monday."
Sentence requestLine(const box::Request &request, Day today);

/// Who said so and when, beside the step: "Morven, Tuesday".
Sentence requestSaidBy(const box::Request &request, Day today);

} // namespace lidlark::wording

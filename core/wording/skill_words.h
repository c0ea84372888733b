#pragma once

#include "core/catalogue/skill.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// What a family reads for a skill code (activities.md 1.2): "finger-and-thumb pick-up".
Sentence skillWords(catalogue::Skill skill);

} // namespace lidlark::wording

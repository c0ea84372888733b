#pragma once

#include "core/catalogue/skill.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// What a family reads for a skill code (activities.md 1.2): "finger-and-thumb pick-up".
Sentence skillWords(catalogue::Skill skill);

/// What a family reads for a part of its life (activities.md 1.1): "getting dressed".
Sentence lifeAreaWords(catalogue::LifeArea area);

} // namespace lidlark::wording

#pragma once

#include "core/rotation/menu.h"
#include "core/safety/admit.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// For a menu with fewer offers than asked for, or none: the one thing that would bring more, by
/// what most entries are held back for and nothing else. What an adult has put on by hand (life
/// words, minutes) is named first, since it is taken off in one tap.
Sentence whatWouldHelp(const safety::Gated &gated, const rotation::Filters &filters,
                       bool minutesAreShort);

} // namespace lidlark::wording

#pragma once

#include "core/wording/label_words.h"

namespace lidlark::mobile {

/// Whose label words are shown: those of the country the phone is set to.
wording::Region labelRegionHere();

} // namespace lidlark::mobile

#pragma once

#include "core/usecase/workplace.h"

namespace lidlark::usecase {

/// What the island's therapist keeps beside the boxes that were handed over: the shelf with its
/// packs and prices, the standard box (job.md 2.8), and boxes for the spring that nobody has bought
/// for or packed yet. One act. Shops and prices are invented.
Outcome layOutShelf(Workplace &therapist);

} // namespace lidlark::usecase

#pragma once

#include "tests/audit/page.h"

#include <QStringList>

namespace lidlark::audit {

/// What cannot be hit or is not called anything, one line each: targets under 48 x 48 px (job.md
/// A2), on each other, under words that are not their own, out of reach, or without a name.
[[nodiscard]] QStringList checkTouch(const Page &page);

/// What a child's finger would miss (checkin.md 10, job.md A2): on a child's screen each target is
/// at least 20 mm high, on the smallest phone 16 mm; of the kite's page the hand 12 mm, with clouds
/// and bag beside it on the smallest; 4 mm lie between the kite's.
/// @param dotsPerMm px for one mm.
[[nodiscard]] QStringList checkChildsTouch(const Page &page, double dotsPerMm);

} // namespace lidlark::audit

#pragma once

#include "core/box/item_tally.h"
#include "core/box/open_matters.h"

#include <vector>

namespace lidlark::box {

/// Every open matter counted against the box, from one count of the basis.
Reading carefulReading(const OpenMatters &matters, const journal::Event *count);

/// Every open matter counted for the box, from one count of the basis: one reading for each way to
/// choose among values that differ, since which of them leaves most depends on what else is joined.
std::vector<Reading> hopefulReadings(const OpenMatters &matters, const journal::Event *count);

/// The lowest and the highest stock of all readings.
struct Ends {
    Tally careful;
    Tally hopeful;
    const journal::Event *carefulBasis = nullptr;
};

Ends endsOf(int packed, const OpenMatters &matters, const journal::Seen &seen);

} // namespace lidlark::box

#pragma once

#include "tests/tour/evening.h"

namespace lidlark::test {

/// Walks what an ordinary evening does not show: a first run, a kite in the clouds, a grown-up
/// asked for, an adult's guess, a balloon that bursts, a lost small part in a home with a toddler,
/// a phone that died in the middle of a play. Pictures and account as in walkAnEvening.
[[nodiscard]] Evening walkOtherWays(const QDir &folder, const PhoneInHand &phone);

} // namespace lidlark::test

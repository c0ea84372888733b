#pragma once

#include "tests/tour/evening.h"

namespace lidlark::test {

/// Opens every page of the app in turn on Zoya's demo phone, by its route and not by tapping, so
/// that it goes in any language; leaves NN-name.png in @p folder. One application object must
/// exist.
[[nodiscard]] Evening openEveryPage(const QDir &folder, const PhoneInHand &phone);

} // namespace lidlark::test

#pragma once

#include "tests/tour/account.h"

namespace lidlark::test {

/// Parts of walkOtherWays: one walk each, on a store of the island.

/// The phone of somebody who looks after several children; to be laid out by `layOutFamilies`.
void walkSeveralFamilies(Account &account);
/// Two further families beside @p store of @p island.
void layOutFamilies(const QDir &island, const QString &store);
void setAReminder(Account &account);
void findAThing(Account &account);

} // namespace lidlark::test

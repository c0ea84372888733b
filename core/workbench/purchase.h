#pragma once

#include "core/base/day.h"
#include "core/journal/event.h"
#include "core/workbench/build.h"
#include "core/workbench/money.h"
#include "core/workbench/sheet.h"

#include <map>
#include <span>
#include <string>
#include <vector>

namespace lidlark::workbench {

/// What was bought for a build on one day, and what went from the shelf and the packs into the
/// build's own pile for its boxes (job.md T19).
struct Purchase {
    Day day;
    TillPence spend;
    /// Pieces set aside by it; below zero: put back on the shelf, since no box needs them any more.
    SetAside setAside;
    bool operator==(const Purchase &) const = default;
};

/// What lies in the build's pile now: all its purchases together. What is set aside is on nobody's
/// shelf, so no other build is reckoned with it; what is on the shelf and what is set aside for the
/// builds change together by nothing but what is bought.
SetAside setAsideBy(std::span<const Purchase> purchases);

/// What buying @p sheet sets aside: what its boxes still need, and back what none needs any more.
SetAside setAsideFrom(const Sheet &sheet);

/// There is nothing to buy on it, nothing to set aside and nothing to put back.
bool isSettled(const Sheet &sheet);

/// One event of the build: purchases are added to each other, and none replaces another. So two
/// people who bought for the same boxes without knowing of each other have both bought; what is
/// twice in the pile goes back on the shelf with the next purchase.
std::string fieldsOfPurchase(const BuildId &build, const Purchase &purchase);

/// @param events of one subject "build:<id>", any order. @returns by day, then as they were
/// written: the same on every device.
std::vector<Purchase> foldPurchases(std::span<const journal::Event> events);

} // namespace lidlark::workbench

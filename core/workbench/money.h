#pragma once

#include <compare>
#include <cstdint>

namespace lidlark::workbench {

/// What is paid at the till, in whole pence of the build's one currency: whole packs, spares and
/// all. Never mixed up with `MaterialPence`: the two do not convert.
struct TillPence {
    std::int64_t pence = 0;
    auto operator<=>(const TillPence &) const = default;
};

/// What lies in one box, in pence: every piece its share of the price of its pack, summed exactly
/// and rounded once, half up (job.md 2.8).
struct MaterialPence {
    std::int64_t pence = 0;
    auto operator<=>(const MaterialPence &) const = default;
};

} // namespace lidlark::workbench

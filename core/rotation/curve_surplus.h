#pragma once

#include "core/rotation/coverage.h"

#include <algorithm>
#include <cstdint>

namespace lidlark::rotation {

/// Prices are whole numbers of this part of a value.
inline constexpr std::int64_t priceUnit = 4096;

/// The whole values in a sum of prices, rounded down.
inline std::int64_t wholeOf(std::int64_t price)
{
    return price >= 0 ? price / priceUnit : -((-price + priceUnit - 1) / priceUnit);
}

/// max over x of G(x) - b x, for a curve G and a price b of a minute on it.
inline std::int64_t surplusOf(const Curve &curve, std::int64_t price)
{
    std::int64_t surplus = 0;
    for (const Segment &segment : curve)
        surplus += segment.width * std::max<std::int64_t>(0, segment.slope * priceUnit - price);
    return surplus;
}

/// The x where that maximum is; the least of several.
inline std::int64_t filledOf(const Curve &curve, std::int64_t price)
{
    std::int64_t filled = 0;
    for (const Segment &segment : curve)
        filled += segment.slope * priceUnit > price ? segment.width : 0;
    return filled;
}

} // namespace lidlark::rotation

#pragma once

#include "core/base/result.h"

#include <QString>

#include <array>
#include <limits>

/// What a slip of the keyboard or of a unit may hand to core/grading.
namespace absurd {

inline constexpr double noNumber = std::numeric_limits<double>::quiet_NaN();
inline constexpr double endless = std::numeric_limits<double>::infinity();
inline constexpr std::array amounts{noNumber, endless, -endless, -1.0, 0.0, 1e-300, 1e300};

/// "across_mm" for a refusal that names this field; empty where nothing was refused.
template <class T> QString refusedField(const lidlark::Result<T> &result)
{
    if (result || result.error().code != lidlark::ErrorCode::Invalid)
        return {};
    return QString::fromStdString(result.error().detail).section(": ", 0, 0);
}

} // namespace absurd

#pragma once

#include "core/base/enum_names.h"

#include <cstdint>
#include <string_view>

namespace lidlark::catalogue {

/// What of a line for easier or harder core/grading can compute.
enum class FactKind : std::uint8_t {
    BalloonFall, ///< How long a balloon stays in the air, seconds.
    BalloonPush, ///< How many times as fast the same push sends a smaller balloon.
    BandPull,    ///< How hard a band pulls, newtons.
    BandTimes,   ///< How many times as hard as at another stretch.
    TrayTilt     ///< How far one end of a tray may be up before a ball rolls, mm; a range.
};
inline constexpr EnumNames<FactKind, 5> factKindNames{
    {"balloon_fall", "balloon_push", "band_pull", "band_times", "tray_tilt"}};
inline constexpr EnumNames<FactKind, 5> factUnits{{"seconds", "times", "newtons", "times", "mm"}};

/// True where more of it makes the play easier: more time to get there, a balloon that answers more
/// slowly, a ball that stays longer.
constexpr bool moreIsEasier(FactKind kind)
{
    return kind != FactKind::BandPull && kind != FactKind::BandTimes;
}

/// A fact as core/grading computes it; `high` is `low` where it is no range.
struct GradingFact {
    FactKind kind = FactKind::BalloonFall;
    double low = 0;
    double high = 0;
    bool operator==(const GradingFact &) const = default;
};

/// How far what a file says may lie from what is computed.
inline constexpr double factTolerance = 0.1;

} // namespace lidlark::catalogue

#pragma once

#include "core/base/clock.h"

namespace lidlark::mobile {

/// The phone's own clock and time zone.
class DeviceClock final : public Clock
{
public:
    [[nodiscard]] std::int64_t nowMs() const override;
    [[nodiscard]] int offsetMinutes() const override;
};

} // namespace lidlark::mobile

#include "app_clock.h"

#include "running_clock.h"

#include "mobile/bridge/device_clock.h"

namespace lidlark::mobile {

std::unique_ptr<Clock> clockFrom(const StartOptions &options)
{
    if (options.fromMs)
        return std::make_unique<RunningClock>(*options.fromMs);
    return std::make_unique<DeviceClock>();
}

} // namespace lidlark::mobile

#include "mobile/bridge/device_clock.h"

#include <QDateTime>

namespace lidlark::mobile {

std::int64_t DeviceClock::nowMs() const
{
    return QDateTime::currentMSecsSinceEpoch();
}

int DeviceClock::offsetMinutes() const
{
    return QDateTime::currentDateTime().offsetFromUtc() / 60;
}

} // namespace lidlark::mobile

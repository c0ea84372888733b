#include "running_clock.h"

namespace lidlark::mobile {

std::int64_t RunningClock::nowMs() const
{
    return m_startMs + m_since.elapsed();
}

} // namespace lidlark::mobile

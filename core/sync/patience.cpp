#include "core/sync/patience.h"

#include <algorithm>

namespace lidlark::sync {

/// Between half of it and all of it, by chance.
std::chrono::milliseconds Patience::pauseAfter(int asked)
{
    std::chrono::milliseconds pause = m_backoff.first;
    for (int doubled = 1; doubled < asked && pause < m_backoff.longest; ++doubled)
        pause *= 2;
    pause = std::min(pause, m_backoff.longest);
    const auto bytes = m_entropy.sixteenBytes();
    const int chance = bytes[0] * 256 + bytes[1];
    return pause / 2 + pause * chance / (2 * 0xffff);
}

} // namespace lidlark::sync

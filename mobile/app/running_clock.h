#pragma once

#include <QElapsedTimer>

#include "core/base/clock.h"

namespace lidlark::mobile {

/// A clock that is set to a moment and runs on from there: the demo island's time.
class RunningClock final : public Clock
{
public:
    explicit RunningClock(std::int64_t startMs) : m_startMs(startMs) { m_since.start(); }

    [[nodiscard]] std::int64_t nowMs() const override;
    [[nodiscard]] int offsetMinutes() const override { return 0; }

private:
    std::int64_t m_startMs;
    QElapsedTimer m_since;
};

} // namespace lidlark::mobile

#pragma once

#include <cstdint>

namespace lidlark {

/// The device's clock as handed in by whoever runs the core. Only use cases hold one.
class Clock
{
public:
    Clock() = default;
    Clock(const Clock &) = delete;
    Clock &operator=(const Clock &) = delete;
    virtual ~Clock() = default;

    /// Milliseconds since 1970-01-01T00:00Z.
    [[nodiscard]] virtual std::int64_t nowMs() const = 0;
    /// Local time minus UTC in minutes, at that moment.
    [[nodiscard]] virtual int offsetMinutes() const = 0;
};

/// A clock that stands still: the command line's --clock, and tests.
class StillClock final : public Clock
{
public:
    explicit StillClock(std::int64_t ms, int offset = 0) : m_ms(ms), m_offset(offset) {}

    [[nodiscard]] std::int64_t nowMs() const override { return m_ms; }
    [[nodiscard]] int offsetMinutes() const override { return m_offset; }
    void moveTo(std::int64_t ms) { m_ms = ms; }

private:
    std::int64_t m_ms;
    int m_offset;
};

} // namespace lidlark

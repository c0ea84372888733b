#pragma once

#include <algorithm>
#include <chrono>
#include <ctime>
#include <vector>

namespace lidlark::bench {

/// What one run took.
struct Taken {
    double cpu = 0;  ///< Seconds.
    double wall = 0; ///< Seconds.
    double megabytes = 0;
};

class Stopwatch
{
public:
    [[nodiscard]] Taken taken() const
    {
        const std::chrono::duration<double> wall = std::chrono::steady_clock::now() - m_wall;
        return {static_cast<double>(std::clock() - m_cpu) / CLOCKS_PER_SEC, wall.count(), 0};
    }

private:
    std::clock_t m_cpu = std::clock();
    std::chrono::steady_clock::time_point m_wall = std::chrono::steady_clock::now();
};

inline double middleOf(const std::vector<Taken> &rounds, double Taken::*what)
{
    std::vector<double> values;
    for (const Taken &round : rounds)
        values.push_back(round.*what);
    std::ranges::sort(values);
    return values[values.size() / 2];
}

} // namespace lidlark::bench

#pragma once

#include <cstdint>
#include <limits>
#include <numeric>
#include <vector>

namespace lidlark::rotation {

/// The largest few of many numbers. Fewer offered: the sum is far below any sum of prices.
class LargestFew
{
public:
    explicit LargestFew(std::size_t count) : m_few(count, nothing) {}

    /// @pre room for at least one.
    void offer(std::int64_t number)
    {
        if (number <= m_few.back())
            return;
        std::size_t place = m_few.size() - 1;
        for (; place > 0 && m_few[place - 1] < number; --place)
            m_few[place] = m_few[place - 1];
        m_few[place] = number;
    }
    [[nodiscard]] std::int64_t sum() const
    {
        return std::accumulate(m_few.begin(), m_few.end(), std::int64_t{0});
    }

private:
    static constexpr std::int64_t nothing = std::numeric_limits<std::int64_t>::min() / 64;
    std::vector<std::int64_t> m_few; ///< The largest first.
};

} // namespace lidlark::rotation

#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace lidlark::rotation {

/// Something with a price that takes minutes and may be messy.
struct Priced {
    std::int64_t price = 0;
    int minutes = 0;
    bool isMessy = false;
};

/// How much of each may be taken.
struct Room {
    std::size_t count = 0; ///< Exactly so many.
    int minutes = 0;       ///< Together at most.
    int messy = 0;         ///< At most so many messy ones.
};

/// The table of sums grows with the minutes: beyond so many, callers leave them out of a bound.
inline constexpr int mostMinutesSummed = 240;

/// Largest sums of prices: exactly so many things within so many minutes and messy ones. Exact, by
/// dynamic programming over the few things that can be among the best.
class BestSums
{
public:
    /// @param priced minutes and their sum limit are not negative, the limit at most
    /// `mostMinutesSummed`.
    BestSums(std::span<const Priced> priced, const Room &room);

    /// The largest sum; nothing when no choice fits. @param room within that of the constructor.
    [[nodiscard]] std::optional<std::int64_t> best(const Room &room) const;

private:
    [[nodiscard]] std::size_t stateOf(const Room &room) const;
    void keepTheDearest(std::span<const Priced> priced);
    void add(const Priced &thing);

    Room m_room;
    std::vector<Priced> m_things;     ///< Those that can matter.
    std::vector<std::int64_t> m_sums; ///< By state.
};

} // namespace lidlark::rotation

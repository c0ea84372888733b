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
    /// The places in `priced` of a choice with the largest sum; empty when none fits.
    [[nodiscard]] std::vector<std::size_t> choice() const;

private:
    [[nodiscard]] std::size_t stateOf(const Room &room) const;
    void keepTheDearest(std::span<const Priced> priced);
    void add(std::size_t kept, const Priced &thing);

    Room m_room;
    std::vector<std::size_t> m_kept;   ///< Places of the things that can matter.
    std::vector<Priced> m_things;      ///< The same, in the same order.
    std::vector<std::int64_t> m_sums;  ///< By state.
    std::vector<std::uint8_t> m_taken; ///< By kept thing, then state: it came in there.
};

} // namespace lidlark::rotation

#pragma once

#include "core/journal/event.h"

#include <map>
#include <span>
#include <utility>
#include <vector>

namespace lidlark::journal {

/// Who had seen what when it was written, within one lane (events.md 2).
///
/// x is seen by y when x is earlier on the same device, or when y's device had, before y, written a
/// `met` that covers x; and through chains of these. Built from the lane's `met` events alone.
class Seen
{
public:
    /// @param events all of one lane; any order, others than `met` are ignored.
    explicit Seen(std::span<const Event> events);

    /// Whether @p later had seen @p earlier: a strict partial order, whatever was written.
    [[nodiscard]] bool saw(const Event &later, const Event &earlier) const;

    /// Neither had seen the other. Two different events with one counter (a copied phone) are
    /// concurrent.
    [[nodiscard]] bool concurrent(const Event &a, const Event &b) const
    {
        return !saw(a, b) && !saw(b, a);
    }

private:
    using Covered = std::map<std::string, std::uint64_t>; ///< device -> highest counter
    struct Met {
        std::uint64_t counter;
        Instant instant;
        Covered covered; ///< By its device up to here: what the mets before cover, too.
    };

    void closeUnderChains();
    /// @returns whether anything was raised.
    static bool raise(Covered &covered, const Covered &more);
    /// The last `met` of a device up to a counter; null: none.
    [[nodiscard]] const Met *lastUpTo(const std::string &device, std::uint64_t counter) const;
    [[nodiscard]] std::uint64_t knownUpTo(const std::string &device, std::uint64_t before,
                                          const std::string &of) const;

    std::map<std::string, std::vector<Met>> m_mets; ///< By device, in order, closed under chains.
};

/// What a `met` says: device -> highest counter held without a gap.
std::map<std::string, std::uint64_t> coveredBy(const Event &met);

/// The fields of a `met`. @param covered device -> highest counter held without a gap. @param ahead
/// device -> milliseconds its clock was seen ahead of this one's (core/journal/clock_gaps.h).
std::string metFields(const std::map<std::string, std::uint64_t> &covered,
                      const std::map<std::string, std::int64_t> &ahead = {});

} // namespace lidlark::journal

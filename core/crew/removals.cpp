#include "core/crew/removals.h"

#include <algorithm>
#include <limits>

namespace lidlark::crew {

namespace {

enum class Verdict { Open, Stands, Falls };

std::uint64_t acceptedBy(const Removal &removal, const journal::Lane &lane)
{
    const auto found = removal.accepted.find(lane);
    return found == removal.accepted.end() ? std::numeric_limits<std::uint64_t>::max()
                                           : found->second;
}

/// Whether @p other, if it stands, voids @p removal.
bool voids(const WrittenRemoval &other, const WrittenRemoval &removal, const journal::Seen &seen)
{
    const journal::Event &event = *removal.event;
    if (&other == &removal)
        return false;
    if (other.others.contains(event.device))
        return true;
    if (other.removal.device != event.device)
        return false;
    return seen.saw(event, *other.event) || event.counter > acceptedBy(other.removal, event.lane);
}

Verdict verdictOn(std::size_t index, const std::vector<WrittenRemoval> &removals,
                  const std::vector<Verdict> &verdicts, const journal::Seen &seen)
{
    bool settled = true;
    for (std::size_t i = 0; i < removals.size(); ++i) {
        if (!voids(removals[i], removals[index], seen))
            continue;
        if (verdicts[i] == Verdict::Stands)
            return Verdict::Falls;
        settled = settled && verdicts[i] == Verdict::Falls;
    }
    return settled ? Verdict::Stands : Verdict::Open;
}

} // namespace

std::vector<WrittenRemoval> standingRemovals(const std::vector<WrittenRemoval> &removals,
                                             const journal::Seen &seen)
{
    std::vector<Verdict> verdicts(removals.size(), Verdict::Open);
    for (bool grew = true; grew;) {
        grew = false;
        for (std::size_t i = 0; i < removals.size(); ++i) {
            if (verdicts[i] != Verdict::Open)
                continue;
            verdicts[i] = verdictOn(i, removals, verdicts, seen);
            grew = grew || verdicts[i] != Verdict::Open;
        }
    }
    std::vector<WrittenRemoval> standing;
    for (std::size_t i = 0; i < removals.size(); ++i) {
        if (verdicts[i] != Verdict::Falls)
            standing.push_back(removals[i]);
    }
    return standing;
}

} // namespace lidlark::crew

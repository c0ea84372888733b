#include "core/crew/removals.h"

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
    if (seen.saw(event, *other.event))
        return true;
    const bool isAnswer = removal.removal.device == other.event->device;
    return event.counter > acceptedBy(other.removal, event.lane) && !(isAnswer && removal.passedOn);
}

/// Of each removal the places of those that void it, if they stand.
using Voiding = std::vector<std::vector<std::size_t>>;

Voiding voidingAmong(const std::vector<WrittenRemoval> &removals, const journal::Seen &seen)
{
    Voiding voiding(removals.size());
    for (std::size_t i = 0; i < removals.size(); ++i) {
        for (std::size_t other = 0; other < removals.size(); ++other) {
            if (voids(removals[other], removals[i], seen))
                voiding[i].push_back(other);
        }
    }
    return voiding;
}

Verdict verdictOn(std::size_t index, const Voiding &voiding, const std::vector<Verdict> &verdicts)
{
    bool settled = true;
    for (const std::size_t other : voiding[index]) {
        if (verdicts[other] == Verdict::Stands)
            return Verdict::Falls;
        settled = settled && verdicts[other] == Verdict::Falls;
    }
    return settled ? Verdict::Stands : Verdict::Open;
}

void judge(const Voiding &voiding, std::vector<Verdict> &verdicts)
{
    for (bool grew = true; grew;) {
        grew = false;
        for (std::size_t i = 0; i < verdicts.size(); ++i) {
            if (verdicts[i] != Verdict::Open)
                continue;
            verdicts[i] = verdictOn(i, voiding, verdicts);
            grew = grew || verdicts[i] != Verdict::Open;
        }
    }
}

/// The open ones that void @p index, by themselves or through others.
std::set<std::size_t> openBefore(std::size_t index, const Voiding &voiding,
                                 const std::vector<Verdict> &verdicts)
{
    std::set<std::size_t> before;
    std::vector<std::size_t> ahead{index};
    while (!ahead.empty()) {
        const auto &others = voiding[ahead.back()];
        ahead.pop_back();
        for (const std::size_t other : others) {
            if (verdicts[other] == Verdict::Open && before.insert(other).second)
                ahead.push_back(other);
        }
    }
    return before;
}

/// A circle that nothing open outside it voids. @param some open one: each has one behind it.
std::set<std::size_t> circleBefore(std::size_t some, const Voiding &voiding,
                                   const std::vector<Verdict> &verdicts)
{
    auto circle = openBefore(some, voiding, verdicts);
    for (auto next = circle.begin(); next != circle.end();) {
        auto smaller = openBefore(*next, voiding, verdicts);
        if (smaller.size() < circle.size()) {
            circle = std::move(smaller);
            next = circle.begin();
        } else {
            ++next;
        }
    }
    return circle;
}

} // namespace

std::vector<WrittenRemoval> standingRemovals(const std::vector<WrittenRemoval> &removals,
                                             const journal::Seen &seen)
{
    const Voiding voiding = voidingAmong(removals, seen);
    std::vector<Verdict> verdicts(removals.size(), Verdict::Open);
    judge(voiding, verdicts);
    for (std::size_t i = 0; i < removals.size(); ++i) {
        while (verdicts[i] == Verdict::Open) {
            for (const std::size_t stands : circleBefore(i, voiding, verdicts))
                verdicts[stands] = Verdict::Stands;
            judge(voiding, verdicts);
        }
    }
    std::vector<WrittenRemoval> standing;
    for (std::size_t i = 0; i < removals.size(); ++i) {
        if (verdicts[i] == Verdict::Stands)
            standing.push_back(removals[i]);
    }
    return standing;
}

} // namespace lidlark::crew

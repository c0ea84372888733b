#include "core/sync/missing.h"

#include "core/journal/seen.h"
#include "core/store/coverage.h"
#include "core/store/event_repository.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

/// The highest counter of each device that anybody in the crew says to hold.
Result<std::map<std::string, std::uint64_t>> claimedIn(Post &post, const journal::Lane &lane)
{
    store::EventRepository repository(post.database);
    auto mets = repository.ofSubject({lane, "met"});
    if (mets)
        mets = repository.counting(*std::move(mets));
    if (!mets)
        return mets.error();
    std::map<std::string, std::uint64_t> claimed;
    for (const journal::Event &met : *mets) {
        for (const auto &[device, counter] : journal::coveredBy(met))
            claimed[device] = std::max(claimed[device], counter);
    }
    return claimed;
}

} // namespace

Outcome lookForMissing(Post &post, const CrewBook &book, Findings &findings)
{
    for (const journal::Lane &lane : book.lanes()) {
        if (!book.holdsAllOf(lane))
            continue;
        const auto claimed = claimedIn(post, lane);
        const auto covered = store::coverageOf(post.database, lane);
        if (!claimed || !covered)
            return claimed ? covered.error() : claimed.error();
        for (const auto &[device, counter] : *claimed) {
            const auto have = covered->find(device);
            const bool own = device == post.device.id.value;
            // What others had taken in before they heard that it counts no more may be theirs
            // alone.
            const std::uint64_t wanted =
                own ? counter : std::min(counter, book.crew().acceptedUpTo({device}, lane));
            const bool here = wanted == 0 || (have != covered->end() && have->second >= wanted);
            // What a phone outside the crew wrote comes in no order, if at all.
            if (here || book.crew().member({device}) == nullptr)
                continue;
            findings.push_back(
                {own ? FindingKind::OwnAhead : FindingKind::Missing, {device}, lane, 0});
        }
    }
    return Done{};
}

} // namespace lidlark::sync

#include "core/sync/own_ahead.h"

#include "core/journal/seen.h"
#include "core/store/coverage.h"
#include "core/store/event_repository.h"
#include "core/sync/fetch.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

constexpr std::size_t enough = 2;

/// Who says that it holds more of this phone in a lane than the phone itself.
Result<std::set<DeviceId>> claimantsIn(Post &post, const journal::Lane &lane)
{
    store::EventRepository events(post.database);
    auto mets = events.ofSubject({lane, "met"});
    if (mets)
        mets = events.counting(*std::move(mets));
    const auto last = events.lastCounter(lane, post.device.id);
    if (!mets || !last)
        return mets ? last.error() : mets.error();
    std::set<DeviceId> claimants;
    for (const journal::Event &met : *mets) {
        const auto covered = journal::coveredBy(met);
        const auto own = covered.find(post.device.id.value);
        if (own != covered.end() && own->second > *last)
            claimants.insert(met.device);
    }
    return claimants;
}

/// Whether something of this phone lies there that it does not know. Where nobody can tell, it may.
Result<bool> mayLieThere(Post &post, const CrewBook &book, Storage &storage)
{
    const auto caught = fetchNew(post, book, storage, Whose::Own);
    if (!caught)
        return caught.error();
    return caught->trouble || !caught->segments.empty() || !caught->findings.empty();
}

} // namespace

Outcome judgeOwnAhead(Post &post, const CrewBook &book, Storage &storage, Findings &findings)
{
    for (Finding &finding : findings) {
        if (finding.kind != FindingKind::OwnAhead)
            continue;
        const auto claimants = claimantsIn(post, finding.lane);
        if (!claimants)
            return claimants.error();
        if (claimants->size() >= enough)
            continue;
        const auto may = mayLieThere(post, book, storage);
        if (!may)
            return may.error();
        if (!*may)
            finding.kind = FindingKind::Missing;
    }
    return Done{};
}

} // namespace lidlark::sync

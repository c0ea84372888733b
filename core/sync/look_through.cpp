#include "core/sync/look_through.h"

#include "core/store/segment_repository.h"

#include <set>

namespace lidlark::sync {

namespace {

std::string lookedKey(const std::string &box)
{
    return "sync.looked." + box;
}

} // namespace

Result<bool> isDayToLookThrough(Post &post, const std::string &box)
{
    const auto then = store::DeviceRepository(post.database).localNumber(lookedKey(box));
    if (!then)
        return then.error();
    const std::int64_t since = post.clock.nowMs() - *then;
    return since < 0 || since >= msPerDay;
}

Outcome lookedThrough(Post &post, const std::string &box)
{
    return store::DeviceRepository(post.database)
        .setLocalState(lookedKey(box), std::to_string(post.clock.nowMs()));
}

Outcome lookThroughNext(Post &post, const std::string &box)
{
    return store::DeviceRepository(post.database).clearLocalState(lookedKey(box));
}

Result<std::optional<Trouble>> lookForOwn(Post &post, const CrewBook &book, Storage &storage,
                                          Findings &findings)
{
    std::optional<Trouble> trouble;
    store::SegmentRepository segments(post.database);
    for (const HeldEpoch &held : book.held()) {
        const auto rows = segments.onStorage(held.epoch.id, post.device.id);
        if (!rows)
            return rows.error();
        if (rows->empty())
            continue;
        const auto answer = storage.list(folderName(held.epoch, post.device.id));
        trouble = troubleIn(answer);
        if (trouble)
            return trouble;
        const auto &listed = std::get<std::vector<std::string>>(answer);
        const std::set<std::string> names(listed.begin(), listed.end());
        for (const store::SegmentRow &row : *rows) {
            if (names.contains(segmentName(held.epoch, post.device.id, row.sequence)))
                continue;
            if (const Outcome done = segments.markWaiting(row); !done)
                return done.error();
            findings.push_back(
                {FindingKind::WentBack, post.device.id, held.epoch.lane, row.sequence});
        }
    }
    return trouble;
}

} // namespace lidlark::sync

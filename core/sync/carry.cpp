#include "core/sync/carry.h"

#include "core/crew/rights.h"
#include "core/store/event_repository.h"
#include "core/store/segment_repository.h"
#include "core/sync/publish.h"
#include "core/sync/take_all_in.h"

#include <algorithm>
#include <iterator>
#include <map>

namespace lidlark::sync {

Outcome carryAlong(Post &post, const CrewBook &book, Storage &storage, const GoOn &goOn,
                   Exchanged &report)
{
    store::SegmentRepository segments(post.database);
    const auto rows = segments.carried(book.box(), post.device.id);
    if (!rows)
        return rows.error();
    for (const store::SegmentRow &row : *rows) {
        const HeldEpoch *held = book.held(row.epoch);
        if (held == nullptr)
            continue;
        if (!goesOn(goOn, report))
            break;
        const Place place{folderName(held->epoch, row.device),
                          segmentName(held->epoch, row.device, row.sequence)};
        const auto published = publish(storage, place, row.bytes, post.entropy);
        report.trouble = troubleIn(published);
        if (report.trouble)
            break;
        if (std::get<Published>(published) == Published::Taken)
            report.findings.push_back({FindingKind::Forked, row.device, row.lane, row.sequence});
        if (Outcome done = segments.markShared(row, post.clock.nowMs()); !done)
            return done;
    }
    return Done{};
}

Result<std::vector<journal::Event>> carriedIn(Post &post, const CrewBook &book,
                                              const journal::Lane &lane)
{
    std::vector<journal::Event> carried;
    if (book.me() == nullptr || !crew::vouches(*book.me()))
        return carried;
    store::SegmentRepository segments(post.database);
    const auto rows = segments.carried(book.box(), post.device.id);
    if (!rows)
        return rows.error();
    std::map<DeviceId, std::uint64_t> upTo;
    for (const store::SegmentRow &row : *rows) {
        if (row.lane == lane)
            upTo[row.device] = std::max(upTo[row.device], row.lastCounter);
    }
    for (const auto &[device, last] : upTo) {
        const auto seen = segments.lastSharedCounter(book.box(), lane, device);
        const auto run =
            seen ? store::EventRepository(post.database).ofDeviceAfter(lane, device, *seen)
                 : Result<store::OwnRun>(seen.error());
        if (!run)
            return run.error();
        std::ranges::copy_if(
            run->events, std::back_inserter(carried),
            [last = last](const journal::Event &event) { return event.counter <= last; });
    }
    return carried;
}

} // namespace lidlark::sync

#include "core/sync/take_all_in.h"

#include "core/store/recording.h"
#include "core/store/segment_repository.h"
#include "core/sync/another_look.h"
#include "core/sync/look_through.h"

namespace lidlark::sync {

namespace {

Outcome apply(Post &post, const Catch &caught, bool byHand, store::AheadByLane &grew,
              Exchanged &report)
{
    Result<store::Recording> recording =
        store::Recording::begin(post.database, post.device, post.clock);
    if (!recording)
        return recording.error();
    store::SegmentRepository rows(post.database);
    const std::int64_t now = post.clock.nowMs();
    const auto sharedMs = byHand ? std::nullopt : std::optional(now);
    for (const Fetched &fetched : caught.segments) {
        for (const journal::Event &event : fetched.segment.events) {
            const Result<bool> fresh = recording->receive(event);
            if (!fresh)
                return fresh.error();
            report.received += *fresh ? 1 : 0;
            if (*fresh && event.kind != journal::Kind::Met)
                store::lookAtClock(grew[event.lane], event, now);
        }
        for (const journal::Gone &gone : fetched.segment.gone) {
            const auto fresh = recording->receiveGone(fetched.epoch.lane, fetched.device, gone);
            if (!fresh)
                return fresh.error();
        }
        Outcome kept = rows.keep({fetched.epoch.id, fetched.device, fetched.segment.header.sequence,
                                  fetched.epoch.crew, fetched.epoch.lane, fetched.segment.hash,
                                  fetched.lastCounter, sharedMs, fetched.bytes});
        if (!kept)
            return kept;
    }
    for (const journal::Event &event : caught.lastWords) {
        const Result<bool> fresh = recording->keep(event);
        if (!fresh)
            return fresh.error();
        report.received += *fresh ? 1 : 0;
    }
    return recording->commit();
}

} // namespace

bool goesOn(const GoOn &goOn, Exchanged &report)
{
    report.stopped = report.stopped || (goOn && !goOn());
    return !report.stopped;
}

Result<CrewBook> takeAllIn(Post &post, CrewBook book, Storage &storage, const Look &look,
                           store::AheadByLane &grew, Exchanged &report)
{
    const auto isDay = isDayToLookThrough(post, book.box());
    if (!isDay)
        return isDay.error();
    while (goesOn(look.goOn, report)) {
        if (*isDay)
            book.lookThrough();
        auto caught = fetchNew(post, book, storage, look.whose);
        if (!caught)
            return caught.error();
        const bool again = needsAnotherLook(*caught);
        report.findings = std::move(caught->findings);
        report.trouble = caught->trouble;
        if (caught->segments.empty() && caught->lastWords.empty())
            break;
        const int before = report.received;
        if (const Outcome done = apply(post, *caught, look.byHand, grew, report); !done)
            return done.error();
        auto after = CrewBook::open(post, book.box());
        if (!after)
            return after.error();
        book = *std::move(after);
        // A word of which it was said before that it is gone is here, and not to be had.
        const bool anyFresh = !caught->segments.empty() || report.received > before;
        if (report.trouble || !again || !anyFresh)
            break;
    }
    return book;
}

} // namespace lidlark::sync

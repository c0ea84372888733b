#include "core/sync/exchange.h"

#include "core/crew/rights.h"
#include "core/store/coverage.h"
#include "core/store/segment_repository.h"
#include "core/sync/another_look.h"
#include "core/sync/clear_away.h"
#include "core/sync/close_lanes.h"
#include "core/sync/fetch.h"
#include "core/sync/hand_on.h"
#include "core/sync/leave.h"
#include "core/sync/look_through.h"
#include "core/sync/missing.h"
#include "core/sync/outbox.h"
#include "core/sync/own_ahead.h"
#include "core/sync/publish.h"
#include "core/sync/recovery_sheet.h"
#include "core/sync/tell_once.h"
#include "core/sync/turn_keys.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

/// What an exchange has brought, and how far this phone had written before.
struct Learned {
    store::AheadByLane grew;
    Before before;
};

bool goesOn(const GoOn &goOn, Exchanged &report)
{
    report.stopped = report.stopped || (goOn && !goOn());
    return !report.stopped;
}

Outcome apply(Post &post, const std::vector<Fetched> &segments, store::AheadByLane &grew,
              Exchanged &report)
{
    Result<store::Recording> recording =
        store::Recording::begin(post.database, post.device, post.clock);
    if (!recording)
        return recording.error();
    store::SegmentRepository rows(post.database);
    const std::int64_t now = post.clock.nowMs();
    for (const Fetched &fetched : segments) {
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
                                  fetched.lastCounter, now, fetched.bytes});
        if (!kept)
            return kept;
    }
    return recording->commit();
}

/// Round after round, since who is in and which keys there are come the same way.
Outcome takeAllIn(Post &post, const std::string &box, Storage &storage, const GoOn &goOn,
                  store::AheadByLane &grew, Exchanged &report, Whose whose = Whose::Others)
{
    const auto isDay = isDayToLookThrough(post, box);
    if (!isDay)
        return isDay.error();
    while (goesOn(goOn, report)) {
        auto book = CrewBook::open(post, box);
        if (!book)
            return book.error();
        if (*isDay)
            book->lookThrough();
        auto caught = fetchNew(post, *book, storage, whose);
        if (!caught)
            return caught.error();
        const bool again = needsAnotherLook(*caught);
        report.findings = std::move(caught->findings);
        report.trouble = caught->trouble;
        if (caught->segments.empty())
            break;
        if (Outcome done = apply(post, caught->segments, grew, report); !done)
            return done;
        if (report.trouble || !again)
            break;
    }
    return Done{};
}

/// What this phone now knows, and the keys that have to change.
Outcome sayWhatFollows(Post &post, const CrewBook &book, const store::AheadByLane &grew, Day today)
{
    Result<store::Recording> recording =
        store::Recording::begin(post.database, post.device, post.clock);
    if (!recording)
        return recording.error();
    std::set<journal::Lane> lanes;
    for (const journal::Lane &lane : book.lanes()) {
        if (book.me() != nullptr && crew::mayWrite(*book.me(), lane, journal::Kind::Met, true))
            lanes.insert(lane);
    }
    Outcome met = store::sayMets(*recording, post.database, post.device, lanes, grew);
    if (!met)
        return met;
    if (Outcome closed = closeLanes(post, book, *recording); !closed)
        return closed;
    if (const auto opened = turnKeys(post, book, *recording, today); !opened)
        return opened.error();
    if (const auto given = giveKeys(post, book, *recording, today); !given)
        return given.error();
    return recording->commit();
}

Outcome bring(Post &post, const CrewBook &book, Storage &storage, const GoOn &goOn,
              Exchanged &report)
{
    store::SegmentRepository segments(post.database);
    const auto waiting = segments.waiting(book.box(), post.device.id);
    if (!waiting)
        return waiting.error();
    report.waiting = static_cast<int>(waiting->size());
    for (const store::SegmentRow &row : *waiting) {
        const HeldEpoch *held = book.held(row.epoch);
        if (held == nullptr || !goesOn(goOn, report))
            break;
        const std::string folder = folderName(held->epoch, post.device.id);
        auto answer = storage.makeFolder(folder);
        report.trouble = troubleIn(answer);
        if (report.trouble)
            break;
        const Place place{folder, segmentName(held->epoch, post.device.id, row.sequence)};
        const auto published = publish(storage, place, row.bytes, post.entropy);
        report.trouble = troubleIn(published);
        if (report.trouble)
            break;
        report.copied = std::get<Published>(published) == Published::Taken;
        if (report.copied)
            break;
        if (Outcome done = segments.markShared(row, post.clock.nowMs()); !done)
            return done;
        ++report.shared;
        --report.waiting;
    }
    return Done{};
}

Outcome bringOwn(Post &post, const std::string &box, Storage &storage, const GoOn &goOn,
                 const Learned &learned, Exchanged &report)
{
    const auto today = store::todayOf(post.clock);
    auto book = CrewBook::open(post, box);
    if (!today || !book)
        return today ? book.error() : today.error();
    if (book->me() == nullptr) {
        report.out = true;
        const auto left = hasLeft(post, box);
        if (!left)
            return left.error();
        return *left ? bring(post, *book, storage, goOn, report) : Outcome(Done{});
    }
    if (Outcome done = sayWhatFollows(post, *book, learned.grew, today->day); !done)
        return done;
    book = CrewBook::open(post, box); // with the keys that were just turned
    if (!book)
        return book.error();
    if (Outcome done = handOnIfAsked(post, *book); !done)
        return done;
    // Before anything new: so it has the number that the others ask for next.
    if (Outcome done = tellErasedAgain(post, *book, today->day); !done)
        return done;
    if (const auto sealedCount = sealWaiting(post, *book, today->day, learned.before); !sealedCount)
        return sealedCount.error();
    const auto isDay = isDayToLookThrough(post, box);
    if (!isDay)
        return isDay.error();
    if (*isDay) {
        const auto looked = lookForOwn(post, *book, storage, report.findings);
        if (!looked)
            return looked.error();
        report.trouble = *looked;
        if (report.trouble)
            return Done{};
        if (Outcome done = lookedThrough(post, box); !done)
            return done;
    }
    if (Outcome done = bring(post, *book, storage, goOn, report); !done || report.trouble)
        return done;
    const auto cleared = clearAway(post, *book, storage);
    if (!cleared)
        return cleared.error();
    report.trouble = *cleared;
    if (report.trouble || !*isDay)
        return Done{};
    const auto left = leaveForSheets(post, box, storage);
    if (left)
        report.trouble = *left;
    return left ? Outcome(Done{}) : Outcome(left.error());
}

} // namespace

Result<Exchanged> exchange(Post &post, const std::string &box, Storage &storage, const GoOn &goOn)
{
    Exchanged report;
    Learned learned;
    const auto today = store::todayOf(post.clock);
    const auto book = CrewBook::open(post, box);
    if (!today || !book)
        return today ? book.error() : today.error();
    const auto before = writtenUpToNow(post, *book, today->day);
    if (!before)
        return before.error();
    learned.before = *before;
    Outcome done = takeAllIn(post, box, storage, goOn, learned.grew, report);
    if (done)
        done = lookForMissing(post, box, report.findings);
    if (done)
        done = judgeOwnAhead(post, box, storage, report.findings);
    if (done)
        done = tellOnce(post, box, report.findings);
    report.copied = std::ranges::any_of(report.findings, [](const Finding &finding) {
        return finding.kind == FindingKind::OwnAhead;
    });
    if (done && !report.copied && !report.trouble && !report.stopped)
        done = bringOwn(post, box, storage, goOn, learned, report);
    if (!done)
        return done.error();
    return report;
}

Result<Exchanged> takeIn(Post &post, const std::string &box, Storage &storage)
{
    Exchanged report;
    store::AheadByLane grew;
    Outcome done = takeAllIn(post, box, storage, {}, grew, report);
    if (done)
        done = lookForMissing(post, box, report.findings);
    if (done)
        done = tellOnce(post, box, report.findings);
    if (!done)
        return done.error();
    return report;
}

Result<Exchanged> takeOwnIn(Post &post, const std::string &box, Storage &storage)
{
    Exchanged report;
    store::AheadByLane grew;
    if (const Outcome done = takeAllIn(post, box, storage, {}, grew, report, Whose::Own); !done)
        return done.error();
    return report;
}

} // namespace lidlark::sync

#include "core/sync/exchange.h"

#include "core/crew/rights.h"
#include "core/store/coverage.h"
#include "core/store/segment_repository.h"
#include "core/store/shared_copies.h"
#include "core/sync/carry.h"
#include "core/sync/clear_away.h"
#include "core/sync/close_lanes.h"
#include "core/sync/dead_keys.h"
#include "core/sync/hand_on.h"
#include "core/sync/look_through.h"
#include "core/sync/missing.h"
#include "core/sync/outbox.h"
#include "core/sync/own_ahead.h"
#include "core/sync/parting.h"
#include "core/sync/pass_on.h"
#include "core/sync/publish.h"
#include "core/sync/recovery_sheet.h"
#include "core/sync/take_all_in.h"
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

/// What this phone now knows, and the keys that have to change. @returns whether anything was said.
Result<bool> sayWhatFollows(Post &post, const CrewBook &book, const store::AheadByLane &grew,
                            Day today)
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
    const Outcome met = store::sayMets(*recording, post.database, post.device, lanes, grew);
    if (!met)
        return met.error();
    if (const Outcome passed = passOn(post, book, *recording); !passed)
        return passed.error();
    if (const Outcome closed = closeLanes(post, book, *recording); !closed)
        return closed.error();
    if (const auto opened = turnKeys(post, book, *recording, today); !opened)
        return opened.error();
    if (const auto given = giveKeys(post, book, *recording, today); !given)
        return given.error();
    const bool said = !recording->isEmpty();
    const Outcome done = recording->commit();
    return done ? Result<bool>(said) : done.error();
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
        if (held == nullptr) { // it counts no more (dead_keys.h)
            --report.waiting;
            continue;
        }
        if (!goesOn(goOn, report))
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

/// Another phone of the home may have ended the sharing, or taken something back: before anything
/// goes out, what is copied for the therapist is what the home now says. Copies that were not
/// sealed yet go without ever having left.
Outcome settleCopies(Post &post, CrewBook &book)
{
    Result<store::Recording> recording =
        store::Recording::begin(post.database, post.device, post.clock);
    if (!recording)
        return recording.error();
    const auto said = store::keepCopies(*recording, post.database, post.device, post.clock);
    if (!said || !*said)
        return said ? Outcome(Done{}) : Outcome(said.error());
    if (Outcome done = recording->commit(); !done)
        return done;
    auto after = CrewBook::open(post, book.box());
    if (!after)
        return after.error();
    book = *std::move(after);
    return Done{};
}

/// What this phone has to say, sealed.
Outcome sealOwn(Post &post, CrewBook &book, const Learned &learned)
{
    const auto today = store::todayOf(post.clock);
    if (!today)
        return today.error();
    if (Outcome done = settleCopies(post, book); !done)
        return done;
    const auto said = sayWhatFollows(post, book, learned.grew, today->day);
    if (!said)
        return said.error();
    if (*said) { // keys were turned, perhaps
        auto after = CrewBook::open(post, book.box());
        if (!after)
            return after.error();
        book = *std::move(after);
    }
    if (Outcome done = handOnIfAsked(post, book); !done)
        return done;
    if (Outcome done = tellAgainFromDeadKeys(post, book, today->day); !done)
        return done;
    // Before anything new: so it has the number that the others ask for next.
    if (Outcome done = tellErasedAgain(post, book, today->day); !done)
        return done;
    const auto count = sealWaiting(post, book, today->day, learned.before);
    return count ? Outcome(Done{}) : Outcome(count.error());
}

Outcome bringOwn(Post &post, CrewBook &book, Storage &storage, const GoOn &goOn,
                 const Learned &learned, Exchanged &report)
{
    const std::string &box = book.box();
    if (book.me() == nullptr) {
        report.out = true;
        const auto parting = hasPartingWords(post, book);
        if (!parting)
            return parting.error();
        return *parting ? bring(post, book, storage, goOn, report) : Outcome(Done{});
    }
    if (Outcome done = sealOwn(post, book, learned); !done)
        return done;
    const auto isDay = isDayToLookThrough(post, box);
    if (!isDay)
        return isDay.error();
    if (*isDay) {
        const auto looked = lookForOwn(post, book, storage, report.findings);
        if (!looked)
            return looked.error();
        report.trouble = *looked;
        if (report.trouble)
            return Done{};
        if (Outcome done = lookedThrough(post, box); !done)
            return done;
    }
    if (Outcome done = bring(post, book, storage, goOn, report); !done || report.trouble)
        return done;
    if (Outcome done = carryAlong(post, book, storage, goOn, report); !done || report.trouble)
        return done;
    const auto cleared = clearAway(post, book, storage);
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

Result<Exchanged> takeInOnly(Post &post, const std::string &box, Storage &storage, const Look &look)
{
    Exchanged report;
    store::AheadByLane grew;
    auto opened = CrewBook::open(post, box);
    if (!opened)
        return opened.error();
    const auto book = takeAllIn(post, *std::move(opened), storage, look, grew, report);
    if (!book)
        return book.error();
    Outcome done = lookForMissing(post, *book, report.findings);
    if (done)
        done = tellOnce(post, *book, report.findings);
    if (!done)
        return done.error();
    return report;
}

} // namespace

Result<Exchanged> exchange(Post &post, const std::string &box, Storage &storage, const GoOn &goOn)
{
    Exchanged report;
    Learned learned;
    const auto today = store::todayOf(post.clock);
    auto opened = CrewBook::open(post, box);
    if (!today || !opened)
        return today ? opened.error() : today.error();
    const auto before = writtenUpToNow(post, *opened, today->day);
    if (!before)
        return before.error();
    learned.before = *before;
    auto book = takeAllIn(post, *std::move(opened), storage, {goOn}, learned.grew, report);
    if (!book)
        return book.error();
    Outcome done = lookForMissing(post, *book, report.findings);
    if (done)
        done = judgeOwnAhead(post, *book, storage, report.findings);
    if (done)
        done = tellOnce(post, *book, report.findings);
    report.copied = std::ranges::any_of(report.findings, [](const Finding &finding) {
        return finding.kind == FindingKind::OwnAhead;
    });
    if (done && !report.copied && !report.trouble && !report.stopped)
        done = bringOwn(post, *book, storage, goOn, learned, report);
    if (!done)
        return done.error();
    return report;
}

Result<Exchanged> takeIn(Post &post, const std::string &box, Storage &storage)
{
    return takeInOnly(post, box, storage, {});
}

Result<Exchanged> takeInByHand(Post &post, const std::string &box, Storage &file)
{
    return takeInOnly(post, box, file, {{}, Whose::Others, true});
}

Result<Exchanged> takeOwnIn(Post &post, const std::string &box, Storage &storage)
{
    Exchanged report;
    store::AheadByLane grew;
    auto opened = CrewBook::open(post, box);
    if (!opened)
        return opened.error();
    const auto book = takeAllIn(post, *std::move(opened), storage, {{}, Whose::Own}, grew, report);
    if (!book)
        return book.error();
    return report;
}

} // namespace lidlark::sync

#include "core/sync/guest_copy.h"

#include "core/box/box_events.h"
#include "core/box/piece_events.h"
#include "core/journal/latest.h"
#include "core/store/box_repository.h"
#include "core/store/coverage.h"
#include "core/store/event_repository.h"
#include "core/workbench/own_entry.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

using journal::Event;
using journal::Kind;
using journal::Lane;
using journal::LaneKind;

/// What a device that nobody is says, all at one moment.
class Copyist
{
public:
    Copyist(Post &post, Lane lane)
        : m_now(post.clock.nowMs()), m_offset(post.clock.offsetMinutes()),
          m_author(post.device.person), m_lane(std::move(lane)),
          m_device("copy-" + post.entropy.freshId())
    {
    }

    void say(Kind kind, std::string fields)
    {
        const std::uint64_t counter = ++m_counter;
        m_events.push_back({m_lane,
                            {m_device},
                            counter,
                            {m_now, 0},
                            dayPartAt(m_now, m_offset),
                            m_offset,
                            m_author,
                            kind,
                            std::move(fields)});
    }
    void handOn(const Event &event) { m_events.push_back(event); }
    std::vector<Event> takeAll() { return std::move(m_events); }

private:
    std::int64_t m_now;
    int m_offset;
    std::string m_author;
    Lane m_lane;
    std::string m_device;
    std::uint64_t m_counter = 0;
    std::vector<Event> m_events;
};

/// Pieces that an event takes out of the box.
int piecesOf(const Event &event)
{
    if (const auto outcome = box::readOutcome(event))
        return outcome->exceptions.total();
    if (const auto loose = box::readLooseException(event))
        return loose->count;
    return 0;
}

/// What may lie on a floor goes along as it was said, so that a guest's "found" or "floor checked"
/// is about the same loss. @returns the pieces it accounts for.
Result<int> handLossesOn(Post &post, const Lane &lane, const store::ItemRow &item,
                         const std::vector<store::LossRow> &losses, Copyist &copyist)
{
    const auto events =
        store::EventRepository(post.database).standingOfSubject({lane, "item:" + item.item.value});
    if (!events)
        return events.error();
    int pieces = 0;
    for (const store::LossRow &loss : losses) {
        if (loss.item != item.item)
            continue;
        const auto original = std::ranges::find_if(*events, [&loss](const Event &event) {
            return event.kind != Kind::Count && journal::identityOf(event) == loss.identity;
        });
        if (original != events->end()) {
            copyist.handOn(*original);
            pieces += piecesOf(*original);
        } else {
            copyist.say(Kind::Exception,
                        box::fieldsOf(box::LooseException{
                            item.item, box::ExceptionKind::Lost, loss.pieces, {}}));
            pieces += loss.pieces;
        }
    }
    return pieces;
}

void sayCare(const store::ItemRow &item, Copyist &copyist)
{
    for (const box::Piece &piece : item.care.pieces) {
        if (!piece.opened || !piece.id.value.starts_with("packed/"))
            continue;
        copyist.say(Kind::Opened, box::fieldsOf(box::Opened{item.item, piece.id, piece.opened}));
        for (int time = 0; time < piece.timesLeftOpen; ++time)
            copyist.say(Kind::LeftOpen,
                        box::fieldsOf(box::LeftOpen{item.item, piece.id, *piece.opened + time}));
    }
    if (item.care.keepsDays)
        copyist.say(Kind::Limit, box::fieldsOf(box::KeepingLimit{item.item, item.care.keepsDays}));
    if (item.care.mouthed)
        copyist.say(Kind::Hygiene,
                    box::fieldsOf(box::HygieneSaid{item.item, box::HygieneMark::Mouthed}));
}

/// What the therapist has written for the box, on every side: a corrected item guards a guest too.
Outcome handOwnEntryOn(store::EventRepository &repository, const store::LaneSubject &subject,
                       const journal::Seen &seen, Copyist &copyist)
{
    const auto events = repository.standingOfSubject(subject);
    if (!events)
        return events.error();
    for (const auto sort : {workbench::OwnSort::Item, workbench::OwnSort::Activity}) {
        for (const Event &event : workbench::standingOwnEvents(*events, sort, seen))
            copyist.handOn(event);
    }
    return Done{};
}

/// Whose box, and where it is: the last word of each.
Outcome handBoxOn(Post &post, const Lane &lane, Copyist &copyist)
{
    store::EventRepository repository(post.database);
    const auto mets = repository.ofSubject({lane, "met"});
    if (!mets)
        return mets.error();
    const journal::Seen seen(*mets);
    const auto subjects = repository.subjectsOf(lane);
    if (!subjects)
        return subjects.error();
    for (const store::LaneSubject &subject : *subjects) {
        if (subject.subject.starts_with(workbench::ownEntryPrefix)) {
            if (Outcome done = handOwnEntryOn(repository, subject, seen, copyist); !done)
                return done;
            continue;
        }
        const bool wanted = subject.subject == "child" || subject.subject == "place" ||
                            subject.subject.starts_with("grading-pin:");
        if (!wanted)
            continue;
        const auto events = repository.standingOfSubject(subject);
        if (!events)
            return events.error();
        for (const Kind kind : {Kind::Child, Kind::Place, Kind::GradingPin}) {
            if (const Event *latest = journal::latestOf(*events, kind, seen))
                copyist.handOn(*latest);
        }
    }
    return Done{};
}

} // namespace

Result<std::vector<Event>> boxAsItStands(Post &post, const std::string &box)
{
    const Lane lane{LaneKind::Box, box};
    store::BoxRepository boxes(post.database);
    const auto revision = boxes.revision({box});
    const auto items = boxes.items({box});
    const auto losses = boxes.openLosses({box});
    const auto covered = store::coverageOf(post.database, lane);
    if (!revision || !items || !losses)
        return !revision ? revision.error() : !items ? items.error() : losses.error();
    if (!covered)
        return covered.error();
    Copyist copyist(post, lane);
    if (const Outcome done = handBoxOn(post, lane, copyist); !done)
        return done.error();
    box::Revision packed{1, {}, {}};
    if (*revision)
        packed = {(*revision)->revision.number, {}, (*revision)->revision.removed};
    for (const store::ItemRow &item : *items) {
        const auto lost = handLossesOn(post, lane, item, *losses, copyist);
        if (!lost)
            return lost.error();
        const bool stays = !packed.removed.contains(item.item);
        packed.packed[item.item] = (stays ? item.low + item.out : 0) + *lost;
    }
    copyist.say(Kind::Revision, box::fieldsOf(packed));
    copyist.say(Kind::Met, journal::metFields(*covered));
    for (const store::ItemRow &item : *items) {
        sayCare(item, copyist);
        // What is to be taken out is none of a guest's things to play with, nor to put back.
        const bool stays = !packed.removed.contains(item.item);
        copyist.say(Kind::Count, box::fieldsOf(box::Counted{item.item, stays ? item.low : 0,
                                                            stays ? item.out : 0}));
    }
    return copyist.takeAll();
}

Result<std::vector<Event>> homeSheetAsItStands(Post &post, const HomeId &home)
{
    const Lane lane{LaneKind::Safety, home.value};
    store::EventRepository repository(post.database);
    const auto subjects = repository.subjectsOf(lane);
    if (!subjects)
        return subjects.error();
    std::vector<Event> sheet;
    for (const store::LaneSubject &subject : *subjects) {
        if (subject.subject == "met")
            continue;
        auto events = repository.standingOfSubject(subject);
        if (!events)
            return events.error();
        std::ranges::move(*events, std::back_inserter(sheet));
    }
    return sheet;
}

} // namespace lidlark::sync

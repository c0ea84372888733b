#include "core/sync/let_in.h"

#include "core/crew/clinic_crew.h"
#include "core/crew/rights.h"
#include "core/store/recording.h"
#include "core/store/segment_repository.h"
#include "core/sync/close_lanes.h"
#include "core/sync/guest_copy.h"
#include "core/sync/look_through.h"
#include "core/sync/may_settle.h"
#include "core/sync/outbox.h"
#include "core/sync/turn_keys.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

using crew::Member;
using crew::Role;
using journal::Event;
using journal::Lane;
using journal::LaneKind;

Outcome checkNewcomer(const CrewBook &book, const Member &newcomer, Day today)
{
    const Member *me = book.me();
    if (me == nullptr || !crew::letsIn(me->role))
        return Error{ErrorCode::NotAllowed, "member"};
    if (book.crew().member(newcomer.device) != nullptr)
        return Error{ErrorCode::Invalid, "device: is in the crew, or was"};
    if (!crew::fitsInto(book.box(), newcomer.role))
        return Error{ErrorCode::Invalid, "role: only who packs comes into the clinic"};
    const bool guest = newcomer.role == Role::Guest;
    if (guest && (!newcomer.until || *newcomer.until > today + (guestDays - 1)))
        return Error{ErrorCode::Invalid, "until: a guest stays for seven days at most"};
    return Done{};
}

/// Events of members and of openings: the newcomer needs them before it can verify anything.
Result<std::vector<Event>> eventsOfTrust(Post &post, const std::string &box)
{
    std::vector<Event> trust;
    store::EventRepository repository(post.database);
    for (const char *subject : {"members", "epochs"}) {
        auto events = repository.ofSubject({{LaneKind::Box, box}, subject});
        if (!events)
            return events.error();
        std::ranges::move(*events, std::back_inserter(trust));
    }
    return trust;
}

/// Opens an epoch in which this phone alone writes to a guest, and seals what stands in it.
Outcome handToGuest(Post &post, const std::string &box, const Member &guest, const Lane &lane,
                    store::Recording &recording)
{
    auto book = CrewBook::open(post, box);
    if (!book)
        return book.error();
    const auto opening =
        freshOpening(*book, {lane, post.device.id}, {post.device.id, guest.device}, post.entropy);
    if (!opening)
        return Error{ErrorCode::NotFound, "device: " + guest.device.value};
    Outcome said =
        recording.say({LaneKind::Box, box}, journal::Kind::Epoch, crew::fieldsOf(*opening));
    if (!said)
        return said;
    book = CrewBook::open(post, box);
    const auto copy = lane.kind == LaneKind::Box ? boxAsItStands(post, box)
                                                 : homeSheetAsItStands(post, guest.home);
    if (!book || !copy)
        return book ? copy.error() : book.error();
    const auto held = std::ranges::find_if(book->held(), [&](const HeldEpoch &epoch) {
        const auto holders =
            std::ranges::find(book->openings(), epoch.epoch.id, &crew::Opening::id);
        return epoch.epoch.lane == lane && epoch.writer == post.device.id &&
               holders != book->openings().end() && holders->letters.contains(guest.device);
    });
    if (held == book->held().end())
        return Error{ErrorCode::NotFound, "epoch"};
    return sealOnHand(post, *held, *copy);
}

/// What this phone holds and the newcomer may read. A guest: only what was opened for it.
std::vector<Welcome::Key> keysFor(const CrewBook &book, const Member &newcomer)
{
    std::vector<Welcome::Key> keys;
    for (const HeldEpoch &held : book.held()) {
        const auto opening = std::ranges::find(book.openings(), held.epoch.id, &crew::Opening::id);
        const bool named =
            opening != book.openings().end() && opening->letters.contains(newcomer.device);
        const bool past = newcomer.role != Role::Guest && !held.isCopy() &&
                          crew::mayRead(newcomer, held.epoch.lane);
        if (named || past)
            keys.push_back({held.epoch.id, held.epoch.lane, held.writer, held.epoch.key});
    }
    return keys;
}

} // namespace

Result<Welcome> letIn(Post &post, const std::string &box, const Member &newcomer)
{
    const auto today = store::todayOf(post.clock);
    auto book = CrewBook::open(post, box);
    if (!today || !book)
        return today ? book.error() : today.error();
    if (const Outcome fits = checkNewcomer(*book, newcomer, today->day); !fits)
        return fits.error();
    // What was written before is not for somebody who is asked in for a week.
    if (const auto waiting = sealWaiting(post, *book, today->day); !waiting)
        return waiting.error();
    Result<store::Recording> recording =
        store::Recording::begin(post.database, post.device, post.clock);
    if (!recording)
        return recording.error();
    Outcome done =
        recording->say({LaneKind::Box, box}, journal::Kind::Member, crew::fieldsOf(newcomer));
    if (done)
        done = recording->project(); // who is in decides who gets which key
    book = CrewBook::open(post, box);
    if (!done || !book)
        return done ? book.error() : done.error();
    if (const auto opened = turnKeys(post, *book, *recording, today->day); !opened)
        return opened.error();
    if (newcomer.role == Role::Guest) {
        done = handToGuest(post, box, newcomer, {LaneKind::Box, box}, *recording);
        if (done)
            done = handToGuest(post, box, newcomer, {LaneKind::Safety, newcomer.home.value},
                               *recording);
    }
    if (!done)
        return done.error();
    auto welcome = welcomeFor(post, box, newcomer);
    if (welcome)
        done = lookThroughNext(post, box);
    if (welcome && done)
        done = recording->commit();
    if (!done)
        return done.error();
    return welcome;
}

Result<Welcome> welcomeFor(Post &post, const std::string &box, const Member &member)
{
    const auto book = CrewBook::open(post, box);
    const auto trust = eventsOfTrust(post, box);
    if (!book || !trust)
        return book ? trust.error() : book.error();
    return Welcome{box, member, *trust, keysFor(*book, member)};
}

Outcome removeMember(Post &post, const std::string &box, const DeviceId &device)
{
    const auto today = store::todayOf(post.clock);
    const auto book = CrewBook::open(post, box);
    if (!today || !book)
        return today ? book.error() : today.error();
    if (!book->crew().has(device))
        return Error{ErrorCode::NotFound, "device: " + device.value};
    auto accepted = acceptedNow(post, *book, device);
    if (!accepted)
        return accepted.error();
    const crew::Removal removal{device, *std::move(accepted)};
    Result<store::Recording> recording =
        store::Recording::begin(post.database, post.device, post.clock);
    if (!recording)
        return recording.error();
    Outcome done =
        recording->say({LaneKind::Box, box}, journal::Kind::MemberRemoved, crew::fieldsOf(removal));
    if (done)
        done = recording->project();
    const auto after = CrewBook::open(post, box);
    if (!done || !after)
        return done ? Outcome(after.error()) : done;
    if (after->crew().has(device))
        return Error{ErrorCode::NotAllowed, "member"}; // it would have had no effect
    if (const auto opened = turnKeys(post, *after, *recording, today->day); !opened)
        return opened.error();
    if (done = lookThroughNext(post, box); !done)
        return done;
    return recording->commit();
}

Outcome settleIn(Post &post, const Welcome &welcome)
{
    if (const Outcome may = maySettle(post, welcome); !may)
        return may;
    store::Device device = post.device;
    device.person = welcome.member.person;
    device.role = welcome.member.role;
    device.home = welcome.member.home;
    device.until = welcome.member.until;
    Result<store::Recording> recording = store::Recording::begin(post.database, device, post.clock);
    if (!recording)
        return recording.error();
    if (Outcome done = store::DeviceRepository(post.database).setDevice(device); !done)
        return done;
    for (const Event &event : welcome.events) {
        if (const auto fresh = recording->receive(event); !fresh)
            return fresh.error();
    }
    store::SegmentRepository segments(post.database);
    const auto own = crypto::letterKeyOf(crypto::letterSeedOf(post.secret));
    for (const Welcome::Key &key : welcome.keys) {
        const std::string letter =
            crypto::letterTo(own, crypto::textOf(key.key.bytes()), freshSecret(post.entropy));
        Outcome kept = segments.keepKey({key.epoch, welcome.box, key.lane, key.writer, letter});
        if (!kept)
            return kept;
    }
    if (Outcome done = recording->commit(); !done)
        return done;
    post.device = device;
    return Done{};
}

} // namespace lidlark::sync

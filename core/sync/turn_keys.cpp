#include "core/sync/turn_keys.h"

#include "core/crew/rights.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

using crew::Member;
using journal::Lane;
using journal::LaneKind;

std::string keyText(const crypto::EpochKey &key)
{
    return crypto::textOf(key.bytes());
}

/// The strands that this phone may open: what it reads, and of its home what each guest seals in.
std::vector<crew::Strand> strandsOf(const CrewBook &book, const Member &me, Day today)
{
    std::vector<crew::Strand> strands;
    for (const Lane &lane : book.lanes()) {
        if (!crew::mayOpen(me, lane))
            continue;
        strands.push_back({lane, {}});
        if (lane.kind != LaneKind::Home)
            continue;
        for (const Member &member : book.crew().present()) {
            const bool over = member.until && today > *member.until;
            if (member.role == crew::Role::Guest && member.home.value == lane.scope && !over)
                strands.push_back({lane, member.device});
        }
    }
    return strands;
}

/// Where epochs were opened at the same time, whoever reads all of them opens the next: others
/// would leave behind what they cannot read. Who vouches first, since they hand on what was said in
/// each.
bool isMineToOpen(const CrewBook &book, const crew::Strand &strand)
{
    const auto heads = crew::headsOf(strand, book.openings());
    if (heads.size() < 2)
        return true;
    bool anybody = false;
    bool anyVouching = false;
    for (const Member &member : book.crew().present()) {
        const bool all = std::ranges::all_of(
            heads, [&](const crew::Opening *head) { return book.hasKey(member.device, head->id); });
        anybody = anybody || all;
        anyVouching = anyVouching || (all && crew::vouches(member));
    }
    const bool mine = std::ranges::all_of(
        heads, [&book](const crew::Opening *head) { return book.held(head->id) != nullptr; });
    return !anybody || (mine && (!anyVouching || crew::vouches(*book.me())));
}

} // namespace

std::optional<crew::Opening> freshOpening(const CrewBook &book, const crew::Strand &strand,
                                          const std::set<DeviceId> &holders, Entropy &entropy)
{
    crew::Opening opening{{}, strand.lane, {}, strand.writer, {}, {}};
    for (const crew::Opening *head : crew::headsOf(strand, book.openings()))
        opening.after.insert(head->id);
    const crypto::EpochKey key = freshSecret(entropy);
    for (const DeviceId &device : holders) {
        const Member *member = book.crew().member(device);
        if (member == nullptr)
            return std::nullopt;
        opening.letters[device] =
            crypto::letterTo(member->letters, keyText(key), freshSecret(entropy));
    }
    return opening;
}

Result<int> turnKeys(const Post &post, const CrewBook &book, store::Recording &recording, Day today)
{
    const Member *me = book.me();
    if (me == nullptr || me->role == crew::Role::Guest)
        return 0;
    int opened = 0;
    for (const crew::Strand &strand : strandsOf(book, *me, today)) {
        if (!book.inForce(strand.lane, strand.writer, today).renew || !isMineToOpen(book, strand))
            continue;
        const auto holders = book.entitledTo(strand.lane, strand.writer, today);
        const auto opening = freshOpening(book, strand, holders, post.entropy);
        if (!opening)
            continue;
        const Outcome done = recording.say({LaneKind::Box, book.box()}, journal::Kind::Epoch,
                                           crew::fieldsOf(*opening));
        if (!done)
            return done.error();
        ++opened;
    }
    return opened;
}

Result<int> giveKeys(const Post &post, const CrewBook &book, store::Recording &recording, Day today)
{
    const Member *me = book.me();
    if (me == nullptr || me->role == crew::Role::Guest)
        return 0;
    int count = 0;
    for (const HeldEpoch &held : book.held()) {
        if (held.isCopy())
            continue;
        crew::GivenKey given{held.epoch.id, {}, {}};
        for (const DeviceId &device : book.entitledTo(held.epoch.lane, {}, today)) {
            const Member *member = book.crew().member(device);
            if (member->role != crew::Role::Guest && !book.hasKey(device, held.epoch.id))
                given.letters[device] = crypto::letterTo(member->letters, keyText(held.epoch.key),
                                                         freshSecret(post.entropy));
        }
        if (given.letters.empty())
            continue;
        const Outcome done =
            recording.say({LaneKind::Box, book.box()}, journal::Kind::Epoch, crew::fieldsOf(given));
        if (!done)
            return done.error();
        ++count;
    }
    return count;
}

} // namespace lidlark::sync

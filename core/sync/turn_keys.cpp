#include "core/sync/turn_keys.h"

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
        if (!book.inForce(strand.lane, strand.writer, today).renew)
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

} // namespace lidlark::sync

#include "core/sync/found_crew.h"

#include "core/store/recording.h"
#include "core/sync/crew_book.h"
#include "core/sync/hand_on.h"

namespace lidlark::sync {

namespace {

Outcome letItselfIn(Post &post, const std::string &box, store::Recording &recording)
{
    const store::Device &device = post.device;
    const crew::Member me{device.id,
                          device.person,
                          device.role,
                          device.home,
                          crypto::publicKeyOf(crypto::signingSeedOf(post.secret)),
                          crypto::letterKeyOf(crypto::letterSeedOf(post.secret)),
                          std::nullopt,
                          false,
                          {},
                          {}};
    return recording.say({journal::LaneKind::Box, box}, journal::Kind::Member, crew::fieldsOf(me));
}

} // namespace

Outcome foundCrew(Post &post, const std::string &box)
{
    if (post.device.role != store::Role::Parent && post.device.role != store::Role::Therapist)
        return Error{ErrorCode::NotAllowed, "member"};
    const auto before = CrewBook::open(post, box);
    if (!before || !before->crew().empty())
        return before ? Outcome(Done{}) : Outcome(before.error());
    Result<store::Recording> letting =
        store::Recording::begin(post.database, post.device, post.clock);
    if (!letting)
        return letting.error();
    if (Outcome done = letItselfIn(post, box, *letting); !done)
        return done;
    if (Outcome done = askToHandOn(post, box); !done)
        return done;
    return letting->commit();
}

} // namespace lidlark::sync

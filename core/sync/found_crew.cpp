#include "core/sync/found_crew.h"

#include "core/crew/clinic_crew.h"
#include "core/store/recording.h"
#include "core/sync/crew_book.h"
#include "core/sync/hand_on.h"

namespace lidlark::sync {

Outcome foundCrew(Post &post, const std::string &box)
{
    if (!crew::fitsInto(box, post.device.role))
        return Error{ErrorCode::NotAllowed, "workbench"};
    if (!crew::letsIn(post.device.role))
        return Error{ErrorCode::NotAllowed, "member"};
    const auto before = CrewBook::open(post, box);
    if (!before || !before->crew().empty())
        return before ? Outcome(Done{}) : Outcome(before.error());
    Result<store::Recording> letting =
        store::Recording::begin(post.database, post.device, post.clock);
    if (!letting)
        return letting.error();
    Outcome said = letting->say({journal::LaneKind::Box, box}, journal::Kind::Member,
                                crew::fieldsOf(memberOf(post.device, post.secret)));
    if (!said)
        return said;
    if (Outcome done = askToHandOn(post, box); !done)
        return done;
    return letting->commit();
}

} // namespace lidlark::sync

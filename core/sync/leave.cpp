#include "core/sync/leave.h"

#include "core/store/event_repository.h"
#include "core/store/recording.h"
#include "core/sync/crew_book.h"
#include "core/sync/outbox.h"

namespace lidlark::sync {

namespace {

using journal::Lane;
using journal::LaneKind;

/// Set from the moment a phone leaves by itself.
std::string leftKey(const std::string &box)
{
    return "sync.left." + box;
}

/// The key under which the others look for what this phone says.
const HeldEpoch *keyOf(const Post &post, const CrewBook &book, const Lane &lane, Day today)
{
    for (const DeviceId &writer : {DeviceId{}, post.device.id}) {
        const crew::Opening *opening = book.inForce(lane, writer, today).opening;
        if (opening != nullptr && book.held(opening->id) != nullptr)
            return book.held(opening->id);
    }
    return nullptr;
}

/// All that this phone has written, with one more word in the lane of the box.
Result<crew::Accepted> allOfIt(Post &post, const CrewBook &book)
{
    crew::Accepted accepted;
    for (const Lane &lane : book.lanes()) {
        const auto last = store::EventRepository(post.database).lastCounter(lane, post.device.id);
        if (!last)
            return last.error();
        accepted[lane] = *last + (lane.kind == LaneKind::Box ? 1 : 0);
    }
    return accepted;
}

} // namespace

Outcome leave(Post &post, const std::string &box)
{
    const auto today = store::todayOf(post.clock);
    const auto book = CrewBook::open(post, box);
    if (!today || !book)
        return today ? book.error() : today.error();
    const Lane lane{LaneKind::Box, box};
    const HeldEpoch *held = keyOf(post, *book, lane, today->day);
    if (book->me() == nullptr || held == nullptr)
        return Error{ErrorCode::NotFound, "device: " + post.device.id.value};
    if (const auto sealedCount = sealWaiting(post, *book, today->day); !sealedCount)
        return sealedCount.error();
    Result<store::Recording> recording =
        store::Recording::begin(post.database, post.device, post.clock);
    if (!recording)
        return recording.error();
    const auto last = store::EventRepository(post.database).lastCounter(lane, post.device.id);
    const auto all = allOfIt(post, *book);
    if (!last || !all)
        return last ? all.error() : last.error();
    Outcome done = recording->say(lane, journal::Kind::MemberRemoved,
                                  crew::fieldsOf(crew::Removal{post.device.id, *all}));
    if (done)
        done = recording->project();
    const auto said =
        done ? store::EventRepository(post.database).ofDeviceAfter(lane, post.device.id, *last)
             : Result<store::OwnRun>(done.error());
    if (!said)
        return said.error();
    if (done = sealOnHand(post, *held, said->events); !done)
        return done;
    done = store::DeviceRepository(post.database).setLocalState(leftKey(box), "1");
    return done ? recording->commit() : done;
}

Result<bool> hasLeft(Post &post, const std::string &box)
{
    const auto left = store::DeviceRepository(post.database).localState(leftKey(box));
    if (!left)
        return left.error();
    return left->has_value();
}

} // namespace lidlark::sync

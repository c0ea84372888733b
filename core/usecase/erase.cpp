#include "core/usecase/erase.h"

#include "core/journal/erasure.h"
#include "core/store/recording.h"
#include "core/usecase/share_plays.h"

namespace lidlark::usecase {

namespace {

using journal::LaneKind;

LaneKind laneOf(Erasable what)
{
    return what == Erasable::CheckIns ? LaneKind::CheckIns : LaneKind::Home;
}

} // namespace

Result<int> erase(Workplace &workplace, Erasable what, Day upTo)
{
    if (workplace.device.role != store::Role::Parent || workplace.device.home.empty())
        return Error{ErrorCode::NotAllowed, "erase"};
    const auto today = store::todayOf(workplace.clock);
    if (!today)
        return today.error();
    if (upTo > today->day)
        return Error{ErrorCode::Invalid, "up to: a day to come"};
    const journal::Lane lane{laneOf(what), workplace.device.home.value};
    store::EventRepository events(workplace.database);
    const auto before = events.goneIn(lane);
    Result<store::Recording> recording =
        store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!before || !recording)
        return before ? recording.error() : before.error();
    const std::string fields = journal::fieldsOf(journal::Erasure{upTo, {}});
    Outcome done = lane.kind == LaneKind::CheckIns
                       ? recording->sayUntimed(lane, journal::Kind::Erased, fields)
                       : recording->say(lane, journal::Kind::Erased, fields);
    if (done)
        done = recording->project();
    const auto after = events.goneIn(lane);
    if (!done || !after)
        return done ? after.error() : done.error();
    if (*after == *before)
        return Error{ErrorCode::NotFound, "anything up to that day"};
    if (done = commitWithCopies(workplace, *recording); !done)
        return done.error();
    return static_cast<int>(*after - *before);
}

} // namespace lidlark::usecase

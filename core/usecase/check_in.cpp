#include "core/usecase/check_in.h"

#include "core/store/box_repository.h"
#include "core/store/home_repository.h"

namespace lidlark::usecase {

namespace {

journal::Lane laneOf(const Workplace &workplace)
{
    return {journal::LaneKind::CheckIns, workplace.device.home.value};
}

/// A guest's home lane cannot be read by the guest: the kite colours the menu at hand, and that is
/// all (events.md 4).
bool isKept(const Workplace &workplace)
{
    return workplace.device.role != store::Role::Guest;
}

Outcome sayOne(Workplace &workplace, std::string fields)
{
    if (!isKept(workplace))
        return Done{};
    Result<store::Recording> recording =
        store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    Outcome said =
        recording->sayUntimed(laneOf(workplace), journal::Kind::CheckIn, std::move(fields));
    if (!said)
        return said;
    return recording->commit();
}

Outcome removeOne(store::Recording &recording, const Workplace &workplace, const std::string &id,
                  const ChildId &child)
{
    Outcome erased = recording.eraseSubject({laneOf(workplace), checkin::subjectOf(id, child)});
    if (!erased)
        return erased;
    return recording.sayUntimed(laneOf(workplace), journal::Kind::CheckIn,
                                checkin::fieldsOfRemoval(id, child));
}

} // namespace

Result<std::string> checkIn(Workplace &workplace, const std::string &childAlias, checkin::Kite kite,
                            checkin::ShownBy by)
{
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    checkin::CheckIn entry;
    entry.id = workplace.entropy.freshId();
    entry.child = box->child;
    entry.before = kite;
    entry.shownBy = by;
    if (const Outcome done = sayOne(workplace, checkin::fieldsOf(entry)); !done)
        return done.error();
    return entry.id;
}

Outcome changeCheckIn(Workplace &workplace, const checkin::CheckIn &entry, checkin::Kite kite)
{
    checkin::CheckIn changed = entry;
    changed.before = kite;
    return sayOne(workplace, checkin::fieldsOf(changed));
}

Outcome checkInAfter(Workplace &workplace, const checkin::CheckIn &entry, checkin::Kite after,
                     const ActivityId &activity)
{
    checkin::CheckIn pair = entry;
    pair.after = after;
    pair.activity = activity;
    return sayOne(workplace, checkin::fieldsOf(pair));
}

Outcome removeCheckIn(Workplace &workplace, const std::string &id, const ChildId &child)
{
    if (!isKept(workplace))
        return Done{};
    auto recording = store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    if (Outcome done = removeOne(*recording, workplace, id, child); !done)
        return done;
    return recording->commit();
}

Outcome forgetCheckIns(Workplace &workplace, const std::string &childAlias)
{
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    const auto kept = store::HomeRepository(workplace.database)
                          .checkIns(workplace.device.home, box->child, Day{0});
    if (!kept)
        return kept.error();
    auto recording = store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    for (const checkin::CheckIn &entry : *kept) {
        if (Outcome done = removeOne(*recording, workplace, entry.id, box->child); !done)
            return done;
    }
    return recording->commit();
}

Outcome writeCheckIn(store::Recording &recording, Workplace &workplace, const ChildId &child,
                     checkin::Kite kite, checkin::ShownBy by)
{
    if (!isKept(workplace))
        return Done{};
    checkin::CheckIn entry;
    entry.id = workplace.entropy.freshId();
    entry.child = child;
    entry.before = kite;
    entry.shownBy = by;
    return recording.sayUntimed(laneOf(workplace), journal::Kind::CheckIn,
                                checkin::fieldsOf(entry));
}

} // namespace lidlark::usecase

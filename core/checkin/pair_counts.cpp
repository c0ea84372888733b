#include "core/checkin/pair_counts.h"

namespace lidlark::checkin {

namespace {

bool tellsState(Kite kite)
{
    return kite == Kite::Resting || kite == Kite::Steady || kite == Kite::Whirling;
}

} // namespace

std::optional<Change> changeOf(Kite before, Kite after)
{
    if (!tellsState(before) || !tellsState(after))
        return std::nullopt;
    if (before == after)
        return Change::NoChange;
    if (after == Kite::Steady)
        return Change::TowardsSteady;
    return before == Kite::Steady ? Change::AwayFromSteady : Change::PastSteady;
}

void PairCounts::add(Kite before, Kite after)
{
    const auto change = changeOf(before, after);
    if (!change)
        return;
    towards += *change == Change::TowardsSteady ? 1 : 0;
    same += *change == Change::NoChange ? 1 : 0;
    away += *change == Change::AwayFromSteady ? 1 : 0;
    past += *change == Change::PastSteady ? 1 : 0;
    busier += after == Kite::Whirling && before != Kite::Whirling ? 1 : 0;
}

std::map<ActivityId, PairCounts> pairsByActivity(std::span<const CheckIn> checkIns, ShownBy by)
{
    std::map<ActivityId, PairCounts> pairs;
    for (const CheckIn &checkIn : checkIns) {
        if (checkIn.after && checkIn.shownBy == by && changeOf(checkIn.before, *checkIn.after))
            pairs[checkIn.activity].add(checkIn.before, *checkIn.after);
    }
    return pairs;
}

} // namespace lidlark::checkin

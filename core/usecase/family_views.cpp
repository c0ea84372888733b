#include "core/usecase/family.h"

#include "core/usecase/search_floor.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

bool isPastDate(const store::ItemRow &row, const catalogue::Catalogue &catalogue, Day today)
{
    const catalogue::ItemKind *kind = catalogue.item(row.item);
    if (kind == nullptr || !row.opened || !kind->life.openedDays)
        return false;
    return today - *row.opened > *kind->life.openedDays;
}

int distanceFromSteady(checkin::Kite kite)
{
    switch (kite) {
    case checkin::Kite::Resting:
    case checkin::Kite::Whirling:
        return 1;
    case checkin::Kite::Steady:
    case checkin::Kite::Clouds:
    case checkin::Kite::Bag:
        break;
    }
    return 0;
}

bool tellsState(checkin::Kite kite)
{
    return kite != checkin::Kite::Clouds && kite != checkin::Kite::Bag;
}

void addPairs(std::map<ActivityId, rotation::Record> &records, const Family &family)
{
    for (const checkin::CheckIn &pair : family.checkIns) {
        if (!pair.after || pair.shownBy != checkin::ShownBy::Child || !tellsState(pair.before) ||
            !tellsState(*pair.after))
            continue;
        rotation::Record &record = records[pair.activity];
        const int change = distanceFromSteady(*pair.after) - distanceFromSteady(pair.before);
        ++record.pairs;
        record.towardsSteady += change < 0 ? 1 : 0;
        record.awayFromSteady += change > 0 ? 1 : 0;
    }
}

} // namespace

safety::BoxState boxStateOf(const Family &family, const catalogue::Catalogue &catalogue, Day today)
{
    safety::BoxState state;
    const bool said = family.place.has_value();
    state.here = !said || family.place->place == family.home.value;
    state.place = said ? family.place->words : std::string();
    for (const store::ItemRow &row : family.items)
        state.items[row.item] = {row.low, isPastDate(row, catalogue, today)};
    for (const store::LossRow &loss : family.losses) {
        const FloorDanger danger = floorDangerOf(catalogue.item(loss.item));
        state.floorNoteOpen = state.floorNoteOpen || danger == FloorDanger::SmallPart;
        state.balloonNoteOpen = state.balloonNoteOpen || danger == FloorDanger::BalloonPiece;
    }
    return state;
}

safety::Gated gatedFor(const Family &family, const catalogue::Catalogue &catalogue,
                       const safety::Room &room, Day today)
{
    const safety::BoxState box = boxStateOf(family, catalogue, today);
    const child::HomeSheet *home = family.sheet ? &*family.sheet : nullptr;
    return safety::admitAll({family.child, home, room, box, catalogue, today});
}

std::map<ActivityId, rotation::Record> recordsOf(const Family &family, Day today)
{
    std::map<ActivityId, rotation::Record> records;
    for (const play::Play &play : family.plays) {
        rotation::Record &record = records[play.activity];
        ++record.plays;
        const int ago = std::max(0, today - play.when.day);
        record.daysSincePlayed = std::min(record.daysSincePlayed.value_or(ago), ago);
        record.askedAgain += static_cast<int>(
            std::count(play.phrases.begin(), play.phrases.end(), play::Phrase::AskedAgain));
    }
    for (const auto &[activity, offered] : family.offered) {
        if (const auto last = offered.beforeToday(today))
            records[activity].daysSinceOffered = today - *last;
    }
    addPairs(records, family);
    return records;
}

std::array<int, catalogue::skillCount>
minutesThisWeek(const Family &family, const catalogue::Catalogue &catalogue, Day today)
{
    std::array<int, catalogue::skillCount> minutes{};
    for (const play::Play &play : family.plays) {
        const catalogue::Activity *activity = catalogue.activity(play.activity);
        const int ago = today - play.when.day;
        if (activity == nullptr || ago < 0 || ago > 6)
            continue;
        for (const catalogue::Skill skill : activity->skillsMain)
            minutes[static_cast<std::size_t>(skill)] += activity->minutes.play;
        for (const catalogue::Skill skill : activity->skillsAlso)
            minutes[static_cast<std::size_t>(skill)] += activity->minutes.play / 2;
    }
    return minutes;
}

} // namespace lidlark::usecase

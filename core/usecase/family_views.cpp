#include "core/usecase/family.h"

#include "core/catalogue/own_files.h"
#include "core/usecase/box_items.h"
#include "core/usecase/search_floor.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

/// What may be played with: neither past its date nor waiting to be washed.
safety::ItemStock stockOf(const store::ItemRow &row, const catalogue::ItemKind *kind, Day today)
{
    const box::Freshness freshness = freshnessOf(row, kind, today);
    if (row.care.mouthed && row.low > 0)
        return {.low = row.low, .toWash = true};
    if (freshness.usable == 0 && freshness.pastDate > 0)
        return {.low = row.low, .pastDate = true};
    return {.low = freshness.usable};
}

/// Whether somebody saw a liking in it.
bool showsLiking(const play::Play &play)
{
    return std::ranges::any_of(play.phrases, [](play::Phrase phrase) {
        return phrase == play::Phrase::AskedAgain || phrase == play::Phrase::FoundOwnWay;
    });
}

} // namespace

bool isToTakeOut(const Family &family, const ItemId &item)
{
    return family.revision && family.revision->revision.removed.contains(item);
}

safety::BoxState boxStateOf(const Family &family, const catalogue::Catalogue &catalogue, Day today)
{
    safety::BoxState state;
    const bool said = family.place.has_value();
    state.here = !said || family.place->mayBeAt(family.home.value);
    state.place = said ? family.place->words : std::string();
    for (const store::ItemRow &row : family.items)
        state.items[row.item] = isToTakeOut(family, row.item)
                                    ? safety::ItemStock{} // at once, whether or not it lies there
                                    : stockOf(row, catalogue.item(row.item), today);
    for (const store::LossRow &loss : family.losses) {
        const FloorDanger danger = floorDangerOf(catalogue.item(loss.item));
        state.floorNoteOpen = state.floorNoteOpen || danger == FloorDanger::SmallPart;
        state.balloonNoteOpen = state.balloonNoteOpen || danger == FloorDanger::BalloonPiece;
    }
    return state;
}

safety::Gated gatedFor(const Family &family, const catalogue::Catalogue &catalogue,
                       const safety::Room &room, Day today, bool boxNotHere)
{
    safety::BoxState box = boxStateOf(family, catalogue, today);
    box.here = box.here && !boxNotHere;
    const child::HomeSheet *home = family.sheet ? &*family.sheet : nullptr;
    safety::Gated gated = safety::admitAll({family.child, home, room, box, catalogue, today});
    // What a therapist wrote for another child, or took back, is not this family's to read about.
    std::erase_if(gated.heldBack, [](const safety::HeldBack &held) {
        return catalogue::isOwnId(held.activity->id.value) &&
               held.activity->status == catalogue::Status::Withdrawn;
    });
    return gated;
}

std::map<ActivityId, rotation::Record> recordsOf(const Family &family, Day today)
{
    std::map<ActivityId, rotation::Record> records;
    for (const play::Play &play : family.plays) {
        rotation::Record &record = records[play.activity];
        ++record.plays;
        const int ago = std::max(0, today - play.when.day);
        record.daysSincePlayed = std::min(record.daysSincePlayed.value_or(ago), ago);
        record.askedAgain +=
            static_cast<int>(std::ranges::count(play.phrases, play::Phrase::AskedAgain));
        record.noticed += play.phrases.empty() ? 0 : 1;
        record.liked += showsLiking(play) ? 1 : 0;
    }
    for (const auto &[activity, offered] : family.offered) {
        if (const auto last = offered.beforeToday(today))
            records[activity].daysSinceOffered = today - *last;
    }
    for (const auto &[activity, pairs] :
         checkin::pairsByActivity(family.checkIns, checkin::ShownBy::Child))
        records[activity].pairs = pairs;
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

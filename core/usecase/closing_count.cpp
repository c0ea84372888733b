#include "core/usecase/closing_count.h"

#include "core/safety/room.h"
#include "core/usecase/search_floor.h"

#include <algorithm>

namespace lidlark::usecase {

std::vector<HomeCount> homeCounts(const Progress &progress,
                                  const std::map<ItemId, box::Exceptions> &named)
{
    std::vector<HomeCount> counts;
    for (const catalogue::ItemUse &use : progress.items) {
        if (use.source != catalogue::Source::Box)
            continue;
        const auto gone = named.find(use.item);
        const auto home = progress.home.find(use.item);
        HomeCount count;
        count.item = use.item;
        count.out = std::max({1, use.countBack, use.quantity});
        count.due = std::max(0, count.out - (gone == named.end() ? 0 : gone->second.total()));
        count.home = std::min(count.due, home == progress.home.end() ? 0 : home->second);
        counts.push_back(count);
    }
    return counts;
}

std::map<ItemId, box::Exceptions> namedOf(const Family &family, const PlayId &play)
{
    std::map<ItemId, box::Exceptions> named;
    for (const store::OutcomeRow &outcome : family.outcomes) {
        if (outcome.play == play && !outcome.exceptions.allHome())
            named[outcome.item] = outcome.exceptions;
    }
    return named;
}

std::vector<HomeCount> stillToCount(const Family &family, const catalogue::Catalogue &catalogue,
                                    const Progress &progress,
                                    const std::map<ItemId, box::Exceptions> &named, Day today)
{
    const child::HomeSheet *home = family.sheet ? &*family.sheet : nullptr;
    const safety::Company company = safety::companyOfHome(home, family.child, today);
    if (!company.underThree && !company.mouther)
        return {};
    std::vector<HomeCount> counts = homeCounts(progress, named);
    std::erase_if(counts, [&catalogue](const HomeCount &count) {
        return floorDangerOf(catalogue.item(count.item)) != FloorDanger::SmallPart ||
               count.home == count.due;
    });
    return counts;
}

SmallOthers smallOthersOf(const Family &family, Day today)
{
    if (!family.sheet)
        return {true, {}};
    SmallOthers small;
    for (const child::Person &person : family.sheet->people) {
        const bool lives = person.id.value != family.child.id.value && !person.visits;
        if (lives && (safety::isUnderThree(person, today) || safety::isMouther(person, today)))
            small.names.push_back(person.alias);
    }
    small.any = !small.names.empty();
    return small;
}

} // namespace lidlark::usecase

#include "core/usecase/tally_page.h"

#include "core/usecase/search_floor.h"

namespace lidlark::usecase {

namespace {

constexpr int daysAWeek = 7;
constexpr int mondayAfterEpoch = 3; // 1 January 1970 was a Thursday

bool driesOut(const catalogue::ItemKind &kind)
{
    return kind.life.openAirDays || !kind.life.rescue.empty();
}

} // namespace

Day mondayOf(Day day)
{
    const int sinceMonday = (((day.number + mondayAfterEpoch) % daysAWeek) + daysAWeek) % daysAWeek;
    return day - sinceMonday;
}

Result<TallyPage> tallyPageOf(const Family &family, const catalogue::Catalogue &catalogue,
                              const std::set<child::Avoided> &avoided, Day today, int weeksOn)
{
    auto list = lidListPageOf(family, catalogue, avoided);
    if (!list)
        return list.error();
    TallyPage page{list->child,
                   list->code,
                   list->revision,
                   list->issued,
                   mondayOf(today) + weeksOn * daysAWeek,
                   {},
                   false,
                   {},
                   {}};
    for (const LidLine &line : list->lines) {
        for (const LidPart &part : line.parts) {
            const catalogue::ItemKind *kind = catalogue.item(part.item);
            page.lines.push_back({part, kind != nullptr && driesOut(*kind)});
            page.smallPieces =
                page.smallPieces || (kind != nullptr && floorDangerOf(kind) != FloorDanger::None);
        }
    }
    if (family.sheet) {
        page.emergencyNumber = family.sheet->emergencyNumber;
        page.poisonLine = family.sheet->poisonLine;
    }
    return page;
}

} // namespace lidlark::usecase

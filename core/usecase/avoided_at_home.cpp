#include "core/usecase/avoided_at_home.h"

#include "core/safety/avoided_tags.h"
#include "core/store/box_repository.h"
#include "core/store/home_repository.h"
#include "core/workbench/pack_mark.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

void addAvoided(const child::HomeSheet &sheet, std::set<child::Avoided> &avoided)
{
    const catalogue::TagSet tags = safety::avoidedTags(sheet.avoidances);
    for (const child::Avoided what : {child::Avoided::Latex, child::Avoided::Wheat}) {
        if (tags.has(child::tagOf(what)))
            avoided.insert(what);
    }
}

} // namespace

Result<std::vector<child::HomeSheet>> sheetsOfHomesOf(Workplace &workplace, const Family &family)
{
    store::HomeRepository homes(workplace.database);
    const auto theirs = homes.homesOf(family.box.child);
    if (!theirs)
        return theirs.error();
    std::vector<child::HomeSheet> sheets;
    for (const HomeId &home : *theirs) {
        auto sheet = homes.sheet(home);
        if (!sheet)
            return sheet.error();
        if (*sheet)
            sheets.push_back(**std::move(sheet));
    }
    return sheets;
}

Result<std::set<child::Avoided>> avoidedAtHomesOf(Workplace &workplace, const Family &family)
{
    std::set<child::Avoided> avoided;
    if (family.sheet)
        addAvoided(*family.sheet, avoided);
    const auto sheets = sheetsOfHomesOf(workplace, family);
    if (!sheets)
        return sheets.error();
    for (const child::HomeSheet &sheet : *sheets)
        addAvoided(sheet, avoided);
    return avoided;
}

Result<std::string> aliasOnThisPhone(Workplace &workplace, const std::string &typed)
{
    const auto boxes = store::BoxRepository(workplace.database).boxes();
    if (!boxes)
        return boxes.error();
    const auto same = std::ranges::find_if(*boxes, [&typed](const store::BoxRow &box) {
        return workbench::isSamePerson(box.alias, typed);
    });
    return same != boxes->end() ? same->alias : typed;
}

Result<std::set<child::Avoided>> avoidedForBoxOf(Workplace &workplace, const std::string &alias)
{
    const auto family = loadFamily(workplace, alias);
    if (family)
        return avoidedAtHomesOf(workplace, *family);
    return family.error().code == ErrorCode::NotFound
               ? Result<std::set<child::Avoided>>(std::set<child::Avoided>())
               : family.error();
}

} // namespace lidlark::usecase

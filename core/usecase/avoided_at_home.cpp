#include "core/usecase/avoided_at_home.h"

#include "core/safety/avoided_tags.h"
#include "core/store/home_repository.h"

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
    const auto all = homes.homes();
    if (!all)
        return all.error();
    std::vector<child::HomeSheet> sheets;
    for (const HomeId &home : *all) {
        const auto lives = homes.fact(home, family.box.child.value, "lives");
        if (!lives)
            return lives.error();
        if (!*lives)
            continue;
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

} // namespace lidlark::usecase

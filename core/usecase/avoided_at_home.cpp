#include "core/usecase/avoided_at_home.h"

#include "core/safety/avoided_tags.h"
#include "core/store/home_repository.h"

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

Outcome addHomes(Workplace &workplace, const Family &family, std::set<child::Avoided> &avoided)
{
    store::HomeRepository homes(workplace.database);
    const auto all = homes.homes();
    if (!all)
        return all.error();
    for (const HomeId &home : *all) {
        const auto lives = homes.fact(home, family.box.child.value, "lives");
        if (!lives)
            return lives.error();
        if (!*lives)
            continue;
        const auto sheet = homes.sheet(home);
        if (!sheet)
            return sheet.error();
        if (*sheet)
            addAvoided(**sheet, avoided);
    }
    return Done{};
}

} // namespace

Result<std::set<child::Avoided>> avoidedAtHomesOf(Workplace &workplace, const Family &family)
{
    std::set<child::Avoided> avoided;
    if (family.sheet)
        addAvoided(*family.sheet, avoided);
    if (const Outcome done = addHomes(workplace, family, avoided); !done)
        return done.error();
    return avoided;
}

bool isKeptOut(const catalogue::ItemKind &kind, const std::set<child::Avoided> &avoided)
{
    return std::ranges::any_of(
        avoided, [&](child::Avoided what) { return kind.tags.has(child::tagOf(what)); });
}

} // namespace lidlark::usecase

#include "core/usecase/label_page.h"

#include "core/box/box_code.h"
#include "core/safety/avoided_tags.h"
#include "core/store/home_repository.h"
#include "core/usecase/typed_line.h"

namespace lidlark::usecase {

namespace {

constexpr auto contactKey = "prints.contact"; ///< On this phone alone; it is about no child.
constexpr std::size_t longestContact = 60;    ///< Two lines of a label.

void addAvoided(const child::HomeSheet &sheet, std::set<child::Avoided> &avoided)
{
    const catalogue::TagSet tags = safety::avoidedTags(sheet.avoidances);
    for (const child::Avoided what : {child::Avoided::Latex, child::Avoided::Wheat}) {
        if (tags.has(child::tagOf(what)))
            avoided.insert(what);
    }
}

/// A box goes from home to home: what one of them must avoid is on its label.
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

Result<LabelPage> labelPageOf(Workplace &workplace, const Family &family)
{
    const std::string &alias = family.box.alias;
    LabelPage page{alias.substr(0, alias.find(' ')), box::boxCode(family.box.id), {}, {}};
    if (family.sheet)
        addAvoided(*family.sheet, page.avoided);
    if (const Outcome done = addHomes(workplace, family, page.avoided); !done)
        return done.error();
    const auto contact = serviceContact(workplace);
    if (!contact)
        return contact.error();
    page.contact = *contact;
    return page;
}

Result<std::string> serviceContact(Workplace &workplace)
{
    const auto kept = store::DeviceRepository(workplace.database).localState(contactKey);
    if (!kept)
        return kept.error();
    return kept->value_or("");
}

Outcome setServiceContact(Workplace &workplace, const std::string &words)
{
    if (workplace.device.role != store::Role::Therapist)
        return Error{ErrorCode::NotAllowed, "contact"};
    const auto line = typedLine("contact", words, longestContact);
    if (!line)
        return line.error();
    return store::DeviceRepository(workplace.database).setLocalState(contactKey, *line);
}

} // namespace lidlark::usecase

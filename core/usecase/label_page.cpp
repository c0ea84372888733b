#include "core/usecase/label_page.h"

#include "core/box/box_code.h"
#include "core/usecase/avoided_at_home.h"
#include "core/usecase/typed_line.h"

namespace lidlark::usecase {

namespace {

constexpr auto contactKey = "prints.contact"; ///< On this phone alone; it is about no child.
constexpr std::size_t longestContact = 60;    ///< Two lines of a label.

} // namespace

Result<LabelPage> labelPageOf(Workplace &workplace, const Family &family)
{
    const std::string &alias = family.box.alias;
    LabelPage page{alias.substr(0, alias.find(' ')), box::boxCode(family.box.id), {}, {}};
    auto avoided = avoidedAtHomesOf(workplace, family);
    if (!avoided)
        return avoided.error();
    page.avoided = *std::move(avoided);
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

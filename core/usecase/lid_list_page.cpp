#include "core/usecase/lid_list_page.h"

#include "core/box/box_code.h"
#include "core/box/well_order.h"
#include "core/child/holds_avoided.h"
#include "core/usecase/avoided_at_home.h"

namespace lidlark::usecase {

namespace {

/// Card and lace go out, come home and leave a box together (activities.md 1.3).
bool belongsTo(const ItemId &item, const ItemId &other)
{
    return item.value == "lace" && other.value == "card";
}

} // namespace

std::vector<std::vector<LidLine>> LidListPage::cards() const
{
    std::vector<std::vector<LidLine>> cards(1);
    for (const LidLine &line : lines) {
        if (std::ssize(cards.back()) == mostLidLines)
            cards.emplace_back();
        cards.back().push_back(line);
    }
    return cards;
}

Result<LidListPage> lidListPageOf(const Family &family, const catalogue::Catalogue &catalogue,
                                  const std::set<child::Avoided> &avoided)
{
    if (!family.revision)
        return Error{ErrorCode::NotFound, "a lid list"};
    const box::Revision &list = family.revision->revision;
    std::vector<LidPart> parts;
    for (const auto &[item, pieces] : list.packed) {
        if (pieces > 0 && !list.removed.contains(item))
            parts.push_back({item, pieces});
    }
    std::stable_sort(parts.begin(), parts.end(), [](const LidPart &a, const LidPart &b) {
        return box::wellOf(a.item) < box::wellOf(b.item);
    });
    LidListPage page{family.box.alias,
                     box::boxCode(family.box.id),
                     list.number,
                     family.revision->issued,
                     {},
                     {}};
    for (LidPart &part : parts) {
        const catalogue::ItemKind *kind = catalogue.item(part.item);
        if (kind != nullptr && child::holdsAny(kind->tags, avoided)) {
            page.keptOut.push_back(part.item);
            continue;
        }
        const bool joins =
            !page.lines.empty() && belongsTo(part.item, page.lines.back().parts.front().item);
        if (!joins)
            page.lines.emplace_back();
        page.lines.back().parts.push_back(std::move(part));
    }
    return page;
}

} // namespace lidlark::usecase

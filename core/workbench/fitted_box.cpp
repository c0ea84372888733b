#include "core/workbench/fitted_box.h"

#include "core/child/holds_avoided.h"

#include <algorithm>

namespace lidlark::workbench {

namespace {

using catalogue::Catalogue;
using catalogue::ItemKind;
using catalogue::Tag;

/// What stays out of the box of a home with somebody who mouths: what can be swallowed whole or
/// wound round, also between plays, when nobody asks who is in the room (job.md 2.8, mouthing-child
/// home). Dough and straws stay: they are asked about before each play.
constexpr catalogue::TagSet notWhereMouthed{Tag::Small, Tag::Coin, Tag::Balloon, Tag::Elastic,
                                            Tag::Cord};

std::optional<Why> whyKeptOut(const ItemKind &kind, const HomeAsks &home)
{
    if (child::holdsAny(kind.tags, home.avoids))
        return Why::Allergy;
    return home.mouther && !(kind.tags & notWhereMouthed).empty() ? std::optional(Why::Mouthing)
                                                                  : std::nullopt;
}

int mostAskedOf(const ItemId &item, const Catalogue &catalogue)
{
    int most = 1;
    for (const catalogue::Activity &activity : catalogue.activities()) {
        for (const catalogue::ItemUse &use : activity.items) {
            if (use.item == item)
                most = std::max(most, use.quantity);
        }
    }
    return most;
}

/// @returns nothing: no swap may go there.
std::optional<BoxPart> swapFor(const BoxPart &part, const ItemKind &kind, const HomeAsks &home,
                               const Catalogue &catalogue)
{
    const ItemKind *with = kind.swap ? catalogue.item(kind.swap->with) : nullptr;
    if (with == nullptr || with->source != catalogue::Source::Box || whyKeptOut(*with, home))
        return std::nullopt;
    return BoxPart{with->id, std::min(part.pieces, mostAskedOf(kind.id, catalogue)), part.item};
}

bool holds(const std::vector<BoxPart> &parts, const ItemId &item)
{
    return std::ranges::find(parts, item, &BoxPart::item) != parts.end();
}

} // namespace

KeptBox fittedBox(KeptBox kept, const Design &design, const HomeAsks &home,
                  const Catalogue &catalogue)
{
    kept.personal.avoids = home.avoids;
    kept.box.parts.clear();
    for (const BoxPart &part : design.parts) {
        const ItemKind *kind = catalogue.item(kindOf(part.item));
        const auto why = kind != nullptr ? whyKeptOut(*kind, home) : std::nullopt;
        if (!why) {
            kept.box.parts.push_back(part);
            continue;
        }
        kept.personal.departures.push_back({part.item, *why, {}});
        const auto swap = swapFor(part, *kind, home, catalogue);
        if (swap && !holds(design.parts, swap->item) && !holds(kept.box.parts, swap->item))
            kept.box.parts.push_back(*swap);
    }
    return kept;
}

void fitHand(KeptBox &kept, Hand hand, const KeptSupplies &supplies, const Catalogue &catalogue)
{
    kept.personal.hand = hand;
    for (BoxPart &part : kept.box.parts) {
        const ItemId kind = kindOf(part.item);
        if (!isHanded(part.item, catalogue.item(kind)))
            continue;
        const ItemId left{kind.value + std::string(leftSuffix)};
        if (hand == Hand::Left && supplies.contains(left) && part.item == kind)
            part = {left, part.pieces, kind};
        else if (hand != Hand::Left && part.item == left)
            part = {kind, part.pieces, {}};
    }
}

} // namespace lidlark::workbench

#include "core/catalogue/check_cautions.h"

#include "core/catalogue/item_tags.h"
#include "core/catalogue/list_path.h"
#include "core/catalogue/tag_floor.h"

#include <algorithm>

namespace lidlark::catalogue {

namespace {

using Items = std::map<ItemId, ItemKind>;

const ItemKind *kindOf(const Items &items, const ItemId &id)
{
    const auto found = items.find(id);
    return found == items.end() ? nullptr : &found->second;
}

void missing(Findings &findings, const std::string &field, TagSet tags, const std::string &because)
{
    for (const Tag tag : tags.list())
        findings.addAt(field, std::string(tagNames.of(tag)) + " is missing: " + because);
}

void checkFloor(Findings &findings, const std::string &field, int months, TagSet tags)
{
    for (const Tag tag : tags.list()) {
        if (months < floorMonthsOf(tag))
            findings.addAt(field, "must be at least " + std::to_string(floorMonthsOf(tag)) +
                                      " for " + std::string(tagNames.of(tag)));
    }
}

void checkOwn(const Activity &activity, const Items &items, Findings &findings)
{
    for (const ItemUse &use : activity.items) {
        if (const ItemKind *kind = kindOf(items, use.item))
            missing(findings, "cautions", tagsBroughtBy(*kind).without(activity.cautions),
                    use.item.value + " carries it");
    }
    missing(findings, "cautions", activity.madeTags.without(activity.cautions),
            "a piece it makes is a small part");
    checkFloor(findings, "age_floor_months", activity.ageFloorMonths, activity.cautions);
}

/// A swap is offered as its own item with its own tags, and says so where it is written.
void checkSwapCautions(const Activity &activity, const Items &items, Findings &findings)
{
    for (std::size_t i = 0; i < activity.swaps.size(); ++i) {
        const ActivitySwap &swap = activity.swaps[i];
        if (const ItemKind *kind = kindOf(items, swap.with))
            missing(findings, lineOf("swaps", i, "cautions"),
                    tagsBroughtBy(*kind).without(swap.cautions), swap.with.value + " carries it");
        checkFloor(findings, lineOf("swaps", i, "age_floor_months"),
                   std::max(activity.ageFloorMonths, swap.ageFloorMonths), swap.cautions);
    }
}

/// The items of an activity and what may stand in for them.
std::vector<ItemId> everyItem(const Activity &activity)
{
    std::vector<ItemId> ids;
    ids.reserve(activity.items.size() + activity.swaps.size());
    for (const ItemUse &use : activity.items)
        ids.push_back(use.item);
    for (const ActivitySwap &swap : activity.swaps)
        ids.push_back(swap.with);
    return ids;
}

void checkMakes(const Activity &activity, const Items &items, Findings &findings)
{
    const std::vector<ItemId> used = everyItem(activity);
    if (!activity.makes) {
        for (const ItemId &id : used) {
            const ItemKind *kind = kindOf(items, id);
            if (kind && kind->divides)
                findings.addAt("makes", "is missing: say what pieces are made of " + id.value +
                                            ", or [] for none");
        }
        return;
    }
    for (std::size_t i = 0; i < activity.makes->size(); ++i) {
        const ItemId &of = (*activity.makes)[i].of;
        if (std::find(used.begin(), used.end(), of) == used.end())
            findings.addAt(lineOf("makes", i, "of"), "the entry does not use \"" + of.value + "\"");
    }
}

void checkSeated(const Activity &activity, const Items &items, Findings &findings)
{
    const bool standing = std::find(activity.positions.begin(), activity.positions.end(),
                                    Position::Standing) != activity.positions.end();
    if (!standing)
        return;
    constexpr TagSet sitting{Tag::Sharp, Tag::Straw, Tag::Fork};
    for (const Tag tag : (activity.cautions & sitting).list())
        findings.addAt("position", "standing is not for " + std::string(tagNames.of(tag)));
    for (const ItemId &id : everyItem(activity)) {
        const ItemKind *kind = kindOf(items, id);
        if (kind && kind->seatedOnly && (kind->tags & sitting).empty())
            findings.addAt("position", "standing is not for " + id.value);
    }
}

void checkBalloonEnd(const Activity &activity, Findings &findings)
{
    if (!activity.cautions.has(Tag::Balloon))
        return;
    const bool named =
        std::any_of(activity.putBack.begin(), activity.putBack.end(), [](const std::string &line) {
            return line.find("alloon") != std::string::npos;
        });
    if (!named)
        findings.addAt("put_back", "must say what becomes of the balloon");
}

} // namespace

void checkCautions(const Activity &activity, const Items &items, Findings &findings)
{
    checkOwn(activity, items, findings);
    checkSwapCautions(activity, items, findings);
    checkMakes(activity, items, findings);
    checkSeated(activity, items, findings);
    checkBalloonEnd(activity, findings);
}

} // namespace lidlark::catalogue

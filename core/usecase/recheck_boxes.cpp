#include "core/usecase/recheck_boxes.h"

#include "core/catalogue/item_tags.h"
#include "core/catalogue/tag_floor.h"
#include "core/store/box_repository.h"
#include "core/store/recording.h"

#include <algorithm>
#include <map>

namespace lidlark::usecase {

namespace {

using safety::Admitted;
using safety::Gated;

/// A form without the addresses that differ from one catalogue to the other.
struct FormSeen {
    std::map<ItemId, ItemId> swaps;
    catalogue::TagSet cautions;
    catalogue::Supervision supervision;
    bool operator==(const FormSeen &) const = default;
};

std::map<ActivityId, FormSeen> formsIn(const Gated &gated)
{
    std::map<ActivityId, FormSeen> forms;
    for (const Admitted &admitted : gated.admitted)
        forms.emplace(admitted.activity().id,
                      FormSeen{admitted.swaps(), admitted.cautions(), admitted.supervision()});
    return forms;
}

std::vector<safety::Reason> reasonsAgainst(const ActivityId &activity, const Gated &gated)
{
    const auto held = std::find_if(
        gated.heldBack.begin(), gated.heldBack.end(),
        [&activity](const safety::HeldBack &entry) { return entry.activity->id == activity; });
    return held == gated.heldBack.end() ? std::vector<safety::Reason>{} : held->reasons;
}

template <class Entry, class Same> void addOnce(std::vector<Entry> &list, Entry entry, Same same)
{
    if (std::none_of(list.begin(), list.end(), same))
        list.push_back(std::move(entry));
}

void compare(const Gated &before, const Gated &after, BoxRecheck &recheck)
{
    const auto old = formsIn(before);
    const auto now = formsIn(after);
    for (const auto &[id, form] : old) {
        const auto same = [&id = id](const ActivityId &other) { return other == id; };
        const auto there = now.find(id);
        if (there == now.end())
            addOnce(recheck.hidden, BoxRecheck::Hidden{id, reasonsAgainst(id, after)},
                    [&id = id](const BoxRecheck::Hidden &other) { return other.activity == id; });
        else if (there->second != form)
            addOnce(recheck.changed, id, same);
    }
    for (const auto &[id, form] : now) {
        if (!old.contains(id))
            addOnce(recheck.opened, id,
                    [&id = id](const ActivityId &other) { return other == id; });
    }
}

/// The activity as it would have to be written with these things.
catalogue::Activity withEveryTag(catalogue::Activity activity, const catalogue::Catalogue &things)
{
    for (const catalogue::ItemUse &use : activity.items) {
        if (const catalogue::ItemKind *kind = things.item(use.item))
            activity.cautions = activity.cautions | catalogue::tagsBroughtBy(*kind);
    }
    for (catalogue::ActivitySwap &swap : activity.swaps) {
        if (const catalogue::ItemKind *kind = things.item(swap.with))
            swap.cautions = swap.cautions | catalogue::tagsBroughtBy(*kind);
    }
    for (const catalogue::Tag tag : activity.cautions.list())
        activity.ageFloorMonths = std::max(activity.ageFloorMonths, catalogue::floorMonthsOf(tag));
    return activity;
}

/// Why this home could not play what the changed catalogue left out.
void askForTheGone(const Family &family, const catalogue::Catalogue &before,
                   const catalogue::Catalogue &after, Day today, BoxRecheck &recheck)
{
    std::vector<catalogue::Activity> gone;
    for (const catalogue::Activity &activity : before.activities()) {
        if (after.activity(activity.id) == nullptr)
            gone.push_back(withEveryTag(activity, after));
    }
    if (gone.empty())
        return;
    const catalogue::Catalogue asIf(after.items(), std::move(gone), {});
    const Gated gated = gatedFor(family, asIf, safety::Room{}, today);
    const Gated known = gatedFor(family, before, safety::Room{}, today);
    for (BoxRecheck::Hidden &hidden : recheck.hidden) {
        if (!hidden.reasons.empty())
            continue;
        const auto old = reasonsAgainst(hidden.activity, known);
        hidden.withEveryTag = reasonsAgainst(hidden.activity, gated);
        std::erase_if(hidden.withEveryTag, [&old](const safety::Reason &reason) {
            return std::ranges::find(old, reason) != old.end();
        });
    }
}

} // namespace

BoxRecheck recheckBox(const Family &family, const catalogue::Catalogue &before,
                      const catalogue::Catalogue &after, Day today)
{
    BoxRecheck recheck;
    recheck.child = family.box.alias;
    safety::Room everyone;
    safety::Room alone;
    alone.present.emplace();
    alone.besideSaid = true;
    for (const safety::Room &room : {everyone, alone})
        compare(gatedFor(family, before, room, today), gatedFor(family, after, room, today),
                recheck);
    askForTheGone(family, before, after, today, recheck);
    return recheck;
}

Result<std::vector<BoxRecheck>> recheckBoxes(Workplace &workplace,
                                             const catalogue::Catalogue &edited)
{
    const Result<DayPart> now = store::todayOf(workplace.clock);
    if (!now)
        return now.error();
    const auto boxes = store::BoxRepository(workplace.database).boxes();
    if (!boxes)
        return boxes.error();
    std::vector<BoxRecheck> rechecks;
    for (const store::BoxRow &box : *boxes) {
        const Result<Family> family = loadFamily(workplace, box.alias);
        if (!family)
            return family.error();
        rechecks.push_back(recheckBox(*family, workplace.catalogue, edited, now->day));
    }
    return rechecks;
}

} // namespace lidlark::usecase

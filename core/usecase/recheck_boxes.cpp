#include "core/usecase/recheck_boxes.h"

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
            addOnce(recheck.hidden, {id, reasonsAgainst(id, after)},
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

#include "core/workbench/session_parts.h"

#include <algorithm>
#include <set>

namespace lidlark::workbench {

namespace {

using catalogue::ItemUse;

bool isNeeded(const ItemUse &use)
{
    return use.role == catalogue::Role::Must;
}

void need(std::vector<ThingNeeded> &things, const ItemUse &use, bool forSpare,
          const std::map<ItemId, AtHand> &said)
{
    const auto known = std::ranges::find(things, use.item, &ThingNeeded::item);
    if (known != things.end()) {
        known->pieces = std::max(known->pieces, use.quantity);
        return;
    }
    const auto word = said.find(use.item);
    things.push_back({use.item, use.source, use.quantity, forSpare,
                      word == said.end() ? std::nullopt : std::optional(word->second)});
}

std::vector<ItemId> missingFor(const ActivityId &activity, const UsesOf &uses,
                               const std::map<ItemId, AtHand> &said)
{
    std::vector<ItemId> missing;
    const auto used = uses.find(activity);
    if (used == uses.end())
        return missing;
    for (const ItemUse &use : used->second) {
        const auto word = said.find(use.item);
        if (isNeeded(use) && word != said.end() && !word->second.here)
            missing.push_back(use.item);
    }
    return missing;
}

} // namespace

UsesOf usesAsWritten(const VideoPlan &plan, const catalogue::Catalogue &catalogue)
{
    UsesOf uses;
    for (const auto *list : {&plan.activities, &plan.spares}) {
        for (const ActivityId &id : *list) {
            if (const catalogue::Activity *activity = catalogue.activity(id))
                uses[id] = activity->items;
        }
    }
    return uses;
}

std::vector<ThingNeeded> thingsNeeded(const VideoPlan &plan, const UsesOf &uses,
                                      const std::map<ItemId, AtHand> &said)
{
    std::vector<ThingNeeded> things;
    for (const bool forSpare : {false, true}) {
        for (const ActivityId &activity : forSpare ? plan.spares : plan.activities) {
            const auto used = uses.find(activity);
            if (used == uses.end())
                continue;
            for (const ItemUse &use : used->second) {
                if (isNeeded(use))
                    need(things, use, forSpare, said);
            }
        }
    }
    std::ranges::stable_partition(
        things, [](const ThingNeeded &thing) { return thing.source == catalogue::Source::Box; });
    return things;
}

std::vector<SessionPart> partsNow(const VideoPlan &plan, const UsesOf &uses,
                                  const std::map<ItemId, AtHand> &said)
{
    std::vector<SessionPart> parts;
    std::set<ActivityId> taken;
    for (const ActivityId &activity : plan.activities) {
        SessionPart part{activity, activity, missingFor(activity, uses, said)};
        if (!part.missing.empty()) {
            const auto spare = std::ranges::find_if(plan.spares, [&](const ActivityId &id) {
                return !taken.contains(id) && missingFor(id, uses, said).empty();
            });
            part.played = spare == plan.spares.end() ? std::nullopt : std::optional(*spare);
            if (part.played)
                taken.insert(*part.played);
        }
        parts.push_back(std::move(part));
    }
    return parts;
}

std::vector<int> beginningsOf(std::span<const int> minutes)
{
    std::vector<int> beginnings;
    int at = minutesToArrive;
    for (const int part : minutes) {
        beginnings.push_back(at);
        at += part;
    }
    return beginnings;
}

} // namespace lidlark::workbench

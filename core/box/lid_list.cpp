#include "core/box/lid_list.h"

#include "core/box/item_changes.h"

#include <algorithm>

namespace lidlark::box {

namespace {

using journal::Event;
using journal::Seen;

struct Written {
    const Event *event;
    Revision revision;
};

/// In one order for every device.
std::vector<Written> writtenIn(std::span<const Event> events)
{
    std::vector<Written> all;
    for (const Event &event : events) {
        if (auto revision = readRevision(event))
            all.push_back({&event, *std::move(revision)});
    }
    std::ranges::sort(
        all, [](const Written &a, const Written &b) { return writtenEarlier(*a.event, *b.event); });
    return all;
}

bool lists(const Revision &revision, const ItemId &item)
{
    const auto found = revision.packed.find(item);
    return found != revision.packed.end() && found->second > 0 && !revision.removed.contains(item);
}

/// What @p one takes out: all that any it has seen lists, and it does not.
std::set<ItemId> removedBy(const Written &one, const std::vector<Written> &all, const Seen &seen)
{
    std::set<ItemId> removed = one.revision.removed;
    for (const Written &other : all) {
        if (!seen.saw(*one.event, *other.event))
            continue;
        for (const auto &[item, count] : other.revision.packed) {
            if (count > 0 && !lists(one.revision, item))
                removed.insert(item);
        }
    }
    return removed;
}

bool isHead(const Written &one, const std::vector<Written> &all, const Seen &seen)
{
    return std::ranges::none_of(
        all, [&](const Written &other) { return seen.saw(*other.event, *one.event); });
}

bool isFirst(const Written &one, const std::vector<Written> &all, const Seen &seen)
{
    return std::ranges::none_of(
        all, [&](const Written &other) { return seen.saw(*one.event, *other.event); });
}

void takeHead(LidList &list, const Written &head, const std::set<ItemId> &removed)
{
    Revision &inForce = list.inForce;
    list.issued = head.event->when.day;
    inForce.number = std::max(inForce.number, head.revision.number);
    inForce.removed.insert(removed.begin(), removed.end());
    for (const auto &[item, count] : head.revision.packed) {
        const auto [known, fresh] = inForce.packed.try_emplace(item, count);
        if (!fresh)
            known->second = std::min(known->second, count);
    }
}

} // namespace

std::optional<LidList> foldLidList(std::span<const Event> events, const Seen &seen)
{
    const std::vector<Written> all = writtenIn(events);
    if (all.empty())
        return std::nullopt;
    LidList list;
    list.heads = 0;
    for (const Written &one : all) {
        if (isFirst(one, all, seen)) {
            list.began = one.revision.packed;
            list.begun = one.event->when.day;
        }
        if (isHead(one, all, seen)) {
            takeHead(list, one, removedBy(one, all, seen));
            ++list.heads;
        }
    }
    for (const ItemId &item : list.inForce.removed)
        list.inForce.packed.erase(item);
    return list;
}

const Event *confirmationOf(const ItemId &item, std::span<const Event> revisions,
                            std::span<const Event> ofItem, const Seen &seen)
{
    const std::vector<Written> all = writtenIn(revisions);
    const auto removes = [&](const Written &one) {
        const bool listedAgain = std::ranges::any_of(all, [&](const Written &later) {
            return lists(later.revision, item) && seen.saw(*later.event, *one.event);
        });
        return !listedAgain && removedBy(one, all, seen).contains(item);
    };
    const Event *first = nullptr;
    for (const Event &event : ofItem) {
        const bool knowing =
            readTakenOut(event) && std::ranges::any_of(all, [&](const Written &one) {
                return seen.saw(event, *one.event) && removes(one);
            });
        if (knowing && (first == nullptr || writtenEarlier(event, *first)))
            first = &event;
    }
    return first;
}

} // namespace lidlark::box

#include "scan_tree.h"

#include <QtCore/QMetaObject>

#include <algorithm>
#include <cstring>
#include <iterator>
#include <optional>

namespace lidlark::design {
namespace {

// Common practice, no source: a round of more than eight is long to wait through, and a group of
// six is seen at one glance.
constexpr std::size_t mostInARound = 8;
constexpr std::size_t mostInAGroup = 6;

using Entries = std::vector<ScanEntry>;

ScanEntry grouped(Entries parts)
{
    if (parts.size() == 1)
        return std::move(parts.front());
    ScanEntry group;
    for (const ScanEntry &part : parts)
        group.stops.insert(group.stops.end(), part.stops.begin(), part.stops.end());
    group.parts = std::move(parts);
    return group;
}

bool areAlike(const ScanEntry &one, const ScanEntry &other)
{
    return !one.isGroup() && !other.isGroup() &&
           std::strcmp(one.stops.front()->metaObject()->className(),
                       other.stops.front()->metaObject()->className()) == 0;
}

/// Cut into groups of about one size, until there are few enough of them.
Entries inFewGroups(Entries entries)
{
    while (entries.size() > mostInAGroup) {
        const std::size_t count = (entries.size() + mostInAGroup - 1) / mostInAGroup;
        Entries groups;
        groups.reserve(count);
        for (std::size_t i = 0; i < count; ++i) {
            const auto at = [&](std::size_t group) {
                return std::make_move_iterator(
                    entries.begin() + static_cast<std::ptrdiff_t>(group * entries.size() / count));
            };
            groups.push_back(grouped(Entries(at(i), at(i + 1))));
        }
        entries = std::move(groups);
    }
    return entries;
}

/// Controls of one kind that stand next to each other are one group: three offers, a list of rows.
Entries withAlikeTogether(Entries entries)
{
    Entries runs;
    runs.reserve(entries.size());
    for (auto from = entries.begin(); from != entries.end();) {
        auto to = std::next(from);
        while (to != entries.end() && areAlike(*from, *to))
            ++to;
        runs.push_back(grouped(
            inFewGroups(Entries(std::make_move_iterator(from), std::make_move_iterator(to)))));
        from = to;
    }
    return runs;
}

void gather(QQuickItem *item, Entries &found)
{
    if (!item->isVisible() || !item->isEnabled())
        return;
    if (isScanStop(item)) {
        found.push_back({{QPointer<QQuickItem>(item)}, {}});
        return;
    }
    Entries inside;
    const QList<QQuickItem *> children = item->childItems();
    for (QQuickItem *child : children)
        gather(child, inside);
    if (inside.empty())
        return;
    Entries together = withAlikeTogether(std::move(inside));
    found.push_back(grouped(inFewGroups(std::move(together))));
}

/// The largest group that can be opened without making the round too long.
std::optional<std::size_t> nextToOpen(const Entries &round)
{
    std::optional<std::size_t> largest;
    for (std::size_t i = 0; i < round.size(); ++i) {
        if (round[i].isGroup() && round.size() - 1 + round[i].parts.size() <= mostInARound &&
            (!largest || round[i].stops.size() > round[*largest].stops.size()))
            largest = i;
    }
    return largest;
}

Entries opened(Entries round)
{
    while (const auto next = nextToOpen(round)) {
        const auto place = round.begin() + static_cast<std::ptrdiff_t>(*next);
        Entries parts = std::move(place->parts);
        const auto after = round.erase(place);
        round.insert(after, std::make_move_iterator(parts.begin()),
                     std::make_move_iterator(parts.end()));
    }
    return round;
}

} // namespace

bool isScanStop(const QQuickItem *item)
{
    return item->activeFocusOnTab() && item->metaObject()->indexOfProperty("lit") >= 0;
}

bool ScanEntry::alive() const
{
    return std::ranges::any_of(stops, [](const QPointer<QQuickItem> &stop) {
        return stop && stop->isVisible() && stop->isEnabled();
    });
}

std::vector<ScanEntry> scanEntries(QQuickItem *root)
{
    Entries found;
    if (root != nullptr)
        gather(root, found);
    return opened(std::move(found));
}

std::vector<ScanEntry> openedGroup(const ScanEntry &group)
{
    return opened(group.parts);
}

} // namespace lidlark::design

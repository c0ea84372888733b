#include "core/box/item_losses.h"

#include <algorithm>

namespace lidlark::box {

namespace {

using journal::Event;
using journal::Seen;

/// A loss with every event that told of it.
struct Told {
    std::vector<const Event *> events;
    Loss loss;
};

int lostBy(const Value &value)
{
    return value.gone.of(ExceptionKind::Lost);
}

/// The value of a change that says most is lost. A loss stands whatever was chosen since: the note
/// is closed on the floor, not by a choice.
const Value &mostLostOf(const Change &change)
{
    const Value *most = &change.values.front();
    for (const std::vector<Value> *said : {&change.values, &change.setAside}) {
        for (const Value &value : *said) {
            if (lostBy(value) > lostBy(*most))
                most = &value;
        }
    }
    return *most;
}

Told toldBy(const Event &event, int pieces)
{
    return {{&event}, {journal::identityOf(event), pieces, false, event.author, event.when}};
}

/// The index of the group's loss that stands for all of it; @p i itself where it is in none.
std::size_t standsFor(std::size_t i, const std::vector<Change> &changes,
                      const std::vector<Group> &same)
{
    for (const Group &group : same) {
        if (std::find(group.begin(), group.end(), Entry{i, ExceptionKind::Lost}) == group.end())
            continue;
        std::size_t largest = group.front().change;
        for (const Entry &entry : group) {
            if (lostBy(mostLostOf(changes[entry.change])) > lostBy(mostLostOf(changes[largest])))
                largest = entry.change;
        }
        return largest;
    }
    return i;
}

std::vector<Told> toldOf(const std::vector<Change> &changes, const std::vector<Group> &same,
                         const CountGap &gap)
{
    std::vector<Told> losses;
    std::vector<std::size_t> at(changes.size(), changes.size());
    for (std::size_t i = 0; i < changes.size(); ++i) {
        const Value &value = mostLostOf(changes[i]);
        const int lost = lostBy(value);
        if (lost <= 0 || standsFor(i, changes, same) != i)
            continue;
        at[i] = losses.size();
        losses.push_back(toldBy(*value.event, lost));
    }
    for (std::size_t i = 0; i < changes.size(); ++i) {
        const std::size_t other = standsFor(i, changes, same);
        if (other != i)
            losses[at[other]].events.push_back(mostLostOf(changes[i]).event);
    }
    if (gap.count != nullptr && gap.missing > 0)
        losses.push_back(toldBy(*gap.count, gap.missing));
    return losses;
}

bool sawAll(const Event &event, const Told &told, const Seen &seen)
{
    return std::all_of(told.events.begin(), told.events.end(),
                       [&](const Event *tells) { return seen.saw(event, *tells); });
}

void closeByPieces(std::vector<Told> &losses, const Event &event, int pieces, const Seen &seen)
{
    for (Told &told : losses) {
        if (pieces == 0 || told.loss.pieces == 0 || !sawAll(event, told, seen))
            continue;
        const int closes = std::min(pieces, told.loss.pieces);
        told.loss.pieces -= closes;
        pieces -= closes;
    }
}

void closeByCheck(std::vector<Told> &losses, const Event &event, const FloorChecked &checked,
                  const Seen &seen)
{
    for (Told &told : losses) {
        for (const Event *tells : told.events) {
            if (journal::identityOf(*tells) == checked.loss && seen.saw(event, *tells))
                told.loss.closed = true;
        }
    }
}

} // namespace

std::vector<Loss> lossesOf(std::span<const Event> events, const std::vector<Change> &changes,
                           const std::vector<Group> &same, const CountGap &gap, const Seen &seen)
{
    std::vector<Told> told = toldOf(changes, same, gap);
    for (const Event &event : events) {
        if (const auto found = readFound(event))
            closeByPieces(told, event, found->count, seen);
        else if (const auto checked = readFloorChecked(event))
            closeByCheck(told, event, *checked, seen);
    }
    if (gap.count != nullptr)
        closeByPieces(told, *gap.count, gap.found, seen);
    std::vector<Loss> losses;
    losses.reserve(told.size());
    for (Told &entry : told) {
        entry.loss.closed = entry.loss.closed || entry.loss.pieces == 0;
        losses.push_back(entry.loss);
    }
    return losses;
}

} // namespace lidlark::box

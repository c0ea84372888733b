#include "core/box/item_care.h"

#include "core/box/item_changes.h"
#include "core/journal/latest.h"

#include <algorithm>
#include <map>
#include <set>

namespace lidlark::box {

namespace {

using journal::Event;
using journal::Kind;
using journal::Seen;

/// The earliest day among the statements that no later one has replaced; none where the only ones
/// standing say that it was not opened.
std::optional<Day> openedDay(const std::vector<const Event *> &said, const Seen &seen)
{
    std::optional<Day> earliest;
    for (const Event *event : standingOf(said, seen)) {
        const auto day = readOpened(*event)->day;
        if (day && (!earliest || *day < *earliest))
            earliest = day;
    }
    return earliest;
}

std::vector<Piece> piecesOf(std::span<const Event> events, const Seen &seen)
{
    std::map<PieceId, std::vector<const Event *>> opened;
    std::map<PieceId, std::set<Day>> leftOpen;
    for (const Event &event : events) {
        if (const auto said = readOpened(event))
            opened[said->piece].push_back(&event);
        else if (const auto left = readLeftOpen(event))
            leftOpen[left->piece].insert(left->day);
    }
    std::map<PieceId, Piece> pieces;
    for (const auto &[id, said] : opened)
        pieces[id].opened = openedDay(said, seen);
    for (const auto &[id, days] : leftOpen)
        pieces[id].timesLeftOpen = static_cast<int>(days.size());
    std::vector<Piece> list;
    for (auto &[id, piece] : pieces) {
        piece.id = id;
        list.push_back(piece);
    }
    return list;
}

/// In a mouth, and no washing or replacing has seen it.
const Event *standingMouthed(std::span<const Event> events, const Seen &seen)
{
    const Event *last = nullptr;
    for (const Event &event : events) {
        const auto said = readHygiene(event);
        if (!said || said->mark != HygieneMark::Mouthed)
            continue;
        const bool cleaned = std::any_of(events.begin(), events.end(), [&](const Event &other) {
            const auto later = readHygiene(other);
            return later && later->mark != HygieneMark::Mouthed && seen.saw(other, event);
        });
        if (!cleaned && (last == nullptr || writtenEarlier(*last, event)))
            last = &event;
    }
    return last;
}

} // namespace

ItemCare foldCare(std::span<const Event> events, const Seen &seen)
{
    ItemCare care;
    care.pieces = piecesOf(events, seen);
    for (const Event &event : events) {
        if (const auto checked = readChecked(event))
            care.checked = std::max(care.checked.value_or(checked->day), checked->day);
    }
    if (const Event *limit = journal::latestOf(events, Kind::Limit, seen)) {
        if (const auto said = readKeepingLimit(*limit))
            care.keepsDays = said->days;
    }
    if (const Event *mouthed = standingMouthed(events, seen)) {
        care.mouthed = true;
        care.mouthedBy = mouthed->author;
        care.mouthedWhen = mouthed->when;
    }
    return care;
}

} // namespace lidlark::box

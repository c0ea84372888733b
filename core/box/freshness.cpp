#include "core/box/freshness.h"

#include <algorithm>
#include <tuple>

namespace lidlark::box {

namespace {

/// A piece with the day it came.
struct Came {
    PieceFreshness piece;
    Day day;
};

const Piece *saidOf(const ItemCare &care, const PieceId &id)
{
    const auto found = std::find_if(care.pieces.begin(), care.pieces.end(),
                                    [&id](const Piece &piece) { return piece.id == id; });
    return found == care.pieces.end() ? nullptr : &*found;
}

std::optional<Day> lastDayOf(const Came &came, const ItemCare &care, const KeepingRules &rules)
{
    std::optional<Day> last;
    const auto keeps = care.keepsDays ? care.keepsDays : rules.openedDays;
    if (came.piece.opened && keeps) {
        const int lostDays = came.piece.timesLeftOpen * rules.openAirDays.value_or(0);
        last = *came.piece.opened + std::max(0, *keeps - lostDays);
    }
    if (rules.replaceDays) {
        const Day worn = came.day + *rules.replaceDays;
        last = last ? std::min(*last, worn) : worn;
    }
    return last;
}

PieceState stateOf(const Came &came, Day today)
{
    const auto &[last, left] = std::tie(came.piece.lastDay, came.piece.timesLeftOpen);
    if (last && today > *last)
        return PieceState::PastDate;
    if (last && today >= *last - soonDays)
        return PieceState::UseSoon;
    if (!last && left > 0)
        return PieceState::UseSoon; // nothing dries faster than what nobody has put a date to
    return came.piece.opened ? PieceState::Good : PieceState::Unopened;
}

/// Every piece that ever came, in the order in which they are used up.
std::vector<Came> everyPiece(const Stock &stock, const ItemCare &care)
{
    std::vector<Came> pieces;
    for (const Arrival &arrival : stock.arrivals) {
        for (int i = 0; i < arrival.pieces; ++i) {
            Came came;
            came.piece.id = pieceId(arrival.round, i);
            came.day = arrival.day;
            if (const Piece *said = saidOf(care, came.piece.id)) {
                came.piece.opened = said->opened;
                came.piece.timesLeftOpen = said->timesLeftOpen;
            }
            pieces.push_back(came);
        }
    }
    std::stable_sort(pieces.begin(), pieces.end(), [](const Came &a, const Came &b) {
        const bool aShut = !a.piece.opened;
        const bool bShut = !b.piece.opened;
        return std::tie(aShut, a.piece.opened) < std::tie(bShut, b.piece.opened);
    });
    return pieces;
}

/// What wears without being opened goes by the day it came; only what is opened has a state of its
/// own to keep.
bool hasDates(const KeepingRules &rules)
{
    return rules.perishable || rules.replaceDays;
}

/// A look dated after today is none: a clock was wrong.
std::optional<Day> lastLookOf(const ItemCare &care, Day today)
{
    return care.checked && *care.checked <= today ? care.checked : std::nullopt;
}

Day firstDayOf(const Stock &stock, Day today)
{
    Day came = today;
    for (const Arrival &arrival : stock.arrivals)
        came = std::min(came, arrival.day);
    return came;
}

} // namespace

const PieceFreshness *Freshness::inUse() const
{
    const auto open = std::find_if(pieces.begin(), pieces.end(),
                                   [](const PieceFreshness &piece) { return piece.opened; });
    return open == pieces.end() ? nullptr : &*open;
}

std::optional<PieceId> Freshness::toOpen() const
{
    for (const PieceFreshness &piece : pieces) {
        if (piece.state == PieceState::PastDate)
            continue;
        return piece.opened ? std::nullopt : std::optional(piece.id);
    }
    return std::nullopt;
}

Freshness freshnessOf(const Stock &stock, const ItemCare &care, const KeepingRules &rules,
                      Day today)
{
    Freshness freshness;
    freshness.lastLook = lastLookOf(care, today);
    const Day since = freshness.lastLook.value_or(firstDayOf(stock, today));
    freshness.lookDue = rules.checkDays && stock.high > 0 && today - since >= *rules.checkDays;
    bool soon = false;
    if (hasDates(rules)) {
        std::vector<Came> came = everyPiece(stock, care);
        const int here = std::max(0, stock.high + stock.out);
        const int gone = std::max(0, static_cast<int>(came.size()) - here);
        for (std::size_t i = static_cast<std::size_t>(gone); i < came.size(); ++i) {
            came[i].piece.lastDay = lastDayOf(came[i], care, rules);
            came[i].piece.state = stateOf(came[i], today);
            freshness.pastDate += came[i].piece.state == PieceState::PastDate ? 1 : 0;
            soon = soon || came[i].piece.state == PieceState::UseSoon;
            freshness.pieces.push_back(came[i].piece);
        }
    }
    freshness.usable = care.mouthed ? 0 : std::max(0, stock.low - freshness.pastDate);
    freshness.useSoon = soon && freshness.usable > 0;
    return freshness;
}

} // namespace lidlark::box

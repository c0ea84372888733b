#include "core/box/item_ledger.h"

#include "core/box/double_entries.h"
#include "core/box/item_losses.h"
#include "core/box/item_readings.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace lidlark::box {

namespace {

using journal::Event;
using journal::Meetings;

/// What was used up, lost, broken and dried out, by day. What somebody said twice counts once; a
/// lost piece that turned up was not used.
std::vector<DatedUse> usesOf(const OpenMatters &matters, const std::vector<Loss> &losses)
{
    std::map<std::pair<Day, ExceptionKind>, int> pieces;
    const Reading reading = carefulReading(matters, matters.basis.counts.front());
    for (std::size_t i = 0; i < matters.changes.size(); ++i) {
        for (const ExceptionKind kind :
             {ExceptionKind::UsedUp, ExceptionKind::Broken, ExceptionKind::DriedOut})
            pieces[{matters.changes[i].day, kind}] += reading.values[i].gone.of(kind);
    }
    for (const Loss &loss : losses) {
        const auto change =
            std::find_if(matters.changes.begin(), matters.changes.end(), [&loss](const Change &c) {
                return std::any_of(c.values.begin(), c.values.end(), [&loss](const Value &value) {
                    return journal::identityOf(*value.event) == loss.identity;
                });
            });
        const Day day = change == matters.changes.end() ? loss.when.day : change->day;
        pieces[{day, ExceptionKind::Lost}] += loss.pieces;
    }
    std::vector<DatedUse> uses;
    for (const auto &[key, count] : pieces) {
        if (count > 0)
            uses.push_back({key.first, key.second, count});
    }
    return uses;
}

std::vector<Arrival> arrivalsOf(const Packed &packed, const std::vector<Change> &changes)
{
    std::vector<Arrival> arrivals;
    if (packed.pieces > 0)
        arrivals.push_back({std::nullopt, packed.day, packed.pieces});
    for (const Change &change : changes) {
        if (!change.round)
            continue;
        int pieces = 0;
        for (const Value &value : change.values)
            pieces = std::max(pieces, value.countedIn);
        arrivals.push_back({change.round, change.day, pieces});
    }
    std::sort(arrivals.begin(), arrivals.end(), [](const Arrival &a, const Arrival &b) {
        return std::tie(a.day, a.round) < std::tie(b.day, b.round);
    });
    return arrivals;
}

/// A count puts nothing back that was taken out unless whoever counted knew of it.
void letRemovalsStand(OpenMatters &matters, const journal::Seen &seen)
{
    for (std::size_t i = 0; i < matters.basis.counts.size(); ++i) {
        const Event *count = matters.basis.counts[i];
        for (std::size_t j = 0; j < matters.removals.size(); ++j) {
            const bool known = count != nullptr && seen.saw(*count, *matters.removals[j]);
            matters.removalRelations[i][j] = known ? Relation::Covered : Relation::After;
        }
    }
}

} // namespace

ItemLedger foldItem(const Packed &packed, std::span<const Event> arrived, const Meetings &meetings)
{
    // One order for every device, whatever the order of arrival.
    std::vector<Event> events(arrived.begin(), arrived.end());
    std::sort(events.begin(), events.end(), writtenEarlier);
    OpenMatters matters = openMattersOf(events, meetings);
    if (packed.removed)
        letRemovalsStand(matters, meetings.seen);
    ItemLedger ledger;
    const Ends ends = endsOf(packed.pieces, matters, meetings.seen);
    ledger.careful = ends.careful;
    ledger.hopeful = ends.hopeful;
    for (const Change &change : matters.changes) {
        if (!change.play.empty())
            ledger.outcomes.push_back(
                {change.play, change.mostGone(), change.values.front().event->author});
    }
    ledger.questions = matters.questions;
    ledger.driedOut = ledger.careful.driedOut > 0 && ledger.low() == 0;
    const CountGap gap{ends.carefulBasis, ends.careful.missingAtCount, ends.careful.foundAtCount};
    ledger.losses = lossesOf(events, matters.changes, matters.doubles.answered, gap, meetings.seen);
    ledger.uses = usesOf(matters, ledger.losses);
    ledger.arrivals = arrivalsOf(packed, matters.changes);
    for (const Event *count : matters.basis.counts) {
        const auto said = count != nullptr ? readCounted(*count) : std::nullopt;
        if (!said)
            continue;
        ledger.counted = std::max(ledger.counted.value_or(count->when.day), count->when.day);
        ledger.piecesAtCount = std::max(ledger.piecesAtCount, said->inBox + said->out);
    }
    return ledger;
}

} // namespace lidlark::box

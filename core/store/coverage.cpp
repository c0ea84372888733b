#include "core/store/coverage.h"

#include "core/journal/lane_home.h"
#include "core/journal/seen.h"

#include <algorithm>

namespace lidlark::store {

namespace {

using Covered = std::map<std::string, std::uint64_t>;

Outcome takeEvents(store::Database &database, const journal::Lane &lane, Covered &covered)
{
    auto query = database.prepare(
        "SELECT DISTINCT device, counter FROM event WHERE lane = ?1 ORDER BY device, counter");
    if (!query)
        return query.error();
    query->bind(1, toText(lane));
    Result<bool> row = query->step();
    for (; row && *row; row = query->step()) {
        std::uint64_t &upTo = covered[query->text(0)];
        if (static_cast<std::uint64_t>(query->number(1)) == upTo + 1)
            ++upTo;
    }
    return row ? Outcome(Done{}) : Outcome(row.error());
}

Outcome takeSegments(store::Database &database, const journal::Lane &lane, Covered &covered)
{
    auto query = database.prepare(
        "SELECT device, max(last_counter) FROM segment WHERE lane = ?1 GROUP BY device");
    if (!query)
        return query.error();
    query->bind(1, toText(lane));
    Result<bool> row = query->step();
    for (; row && *row; row = query->step()) {
        std::uint64_t &upTo = covered[query->text(0)];
        upTo = std::max(upTo, static_cast<std::uint64_t>(query->number(1)));
    }
    return row ? Outcome(Done{}) : Outcome(row.error());
}

/// What this device said last that it holds.
Result<Covered> saidLast(Database &database, const journal::Lane &lane, const DeviceId &device)
{
    const auto mets = EventRepository(database).ofSubject({lane, "met"});
    if (!mets)
        return mets.error();
    const journal::Event *last = nullptr;
    for (const journal::Event &met : *mets) {
        const bool own = met.device == device && met.kind == journal::Kind::Met;
        if (own && (last == nullptr || met.counter > last->counter))
            last = &met;
    }
    return last != nullptr ? journal::coveredBy(*last) : Covered();
}

/// Whether it now holds more, and more than others' `met`s.
Result<bool> bringsNews(Database &database, const journal::Lane &lane, const DeviceId &device,
                        const Covered &covered)
{
    auto said = saidLast(database, lane, device);
    auto query = database.prepare("SELECT 1 FROM event WHERE lane = ?1 AND device = ?2 AND "
                                  "counter > ?3 AND counter <= ?4 AND kind <> 'met' LIMIT 1");
    if (!said || !query)
        return said ? query.error() : said.error();
    for (const auto &[other, upTo] : covered) {
        query->bind(1, toText(lane))
            .bind(2, other)
            .bind(3, static_cast<std::int64_t>((*said)[other]))
            .bind(4, static_cast<std::int64_t>(upTo));
        const Result<bool> row = query->step();
        if (!row || *row)
            return row;
        query->reset();
    }
    return false;
}

} // namespace

Result<Covered> coverageOf(store::Database &database, const journal::Lane &lane)
{
    Covered covered;
    Outcome done = takeEvents(database, lane, covered);
    if (done)
        done = takeSegments(database, lane, covered);
    if (!done)
        return done.error();
    std::erase_if(covered, [](const auto &entry) { return entry.second == 0; });
    return covered;
}

Outcome sayMets(Recording &recording, Database &database, const Device &device,
                const std::set<journal::Lane> &lanes, const AheadByLane &ahead)
{
    for (const journal::Lane &lane : lanes) {
        if (journal::tellsNoTime(lane.kind))
            continue;
        auto covered = coverageOf(database, lane);
        if (!covered)
            return covered.error();
        covered->erase(device.id.value);
        const auto news = bringsNews(database, lane, device.id, *covered);
        if (!news)
            return news.error();
        if (!*news)
            continue;
        const auto seen = ahead.find(lane);
        Outcome done = recording.say(
            lane, journal::Kind::Met,
            journal::metFields(*covered, seen == ahead.end() ? journal::Ahead() : seen->second));
        if (!done)
            return done;
    }
    return Done{};
}

void lookAtClock(journal::Ahead &ahead, const journal::Event &event, std::int64_t nowMs)
{
    const std::int64_t gap = event.instant.ms - nowMs;
    if (gap > journal::leastGapMs)
        ahead[event.device.value] = std::max(ahead[event.device.value], gap);
}

} // namespace lidlark::store

#include "core/store/coverage.h"

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
                const std::map<journal::Lane, journal::Ahead> &grew)
{
    for (const auto &[lane, ahead] : grew) {
        if (lane.kind == journal::LaneKind::CheckIns)
            continue;
        auto covered = coverageOf(database, lane);
        if (!covered)
            return covered.error();
        covered->erase(device.id.value);
        Outcome done =
            recording.say(lane, journal::Kind::Met, journal::metFields(*covered, ahead));
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

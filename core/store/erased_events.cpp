#include "core/store/event_repository.h"
#include "core/store/rows.h"

#include <algorithm>

namespace lidlark::store {

Result<OwnRun> EventRepository::ofDeviceAfter(const journal::Lane &lane, const DeviceId &device,
                                              std::uint64_t counter)
{
    OwnRun run;
    Result<Statement> gone =
        m_database.prepare("SELECT counter, identity FROM event WHERE lane = ?1 AND device = ?2 "
                           "AND counter > ?3 AND erased = 1 ORDER BY counter");
    Result<Statement> said = m_database.prepare(std::string(eventColumns) +
                                                "WHERE lane = ?1 AND device = ?2 AND counter > ?3 "
                                                "AND erased = 0 ORDER BY counter, identity");
    if (!gone || !said)
        return gone ? said.error() : gone.error();
    for (Statement *query : {&*gone, &*said})
        query->bind(1, journal::toText(lane))
            .bind(2, device.value)
            .bind(3, static_cast<std::int64_t>(counter));
    auto places = collectRows<journal::Gone>(*gone, [](const Statement &row) {
        return journal::Gone{static_cast<std::uint64_t>(row.number(0)), row.text(1)};
    });
    auto events = collect(*said);
    if (!places || !events)
        return places ? events.error() : places.error();
    run.gone = *std::move(places);
    run.events = *std::move(events);
    return run;
}

Result<bool> EventRepository::insertGone(const journal::Lane &lane, const DeviceId &device,
                                         const journal::Gone &gone)
{
    Result<Statement> query = m_database.prepare(
        "INSERT OR IGNORE INTO event (lane, device, counter, identity, instant_ms, logical, day, "
        "part, offset_minutes, author, kind, subject, fields, erased) "
        "VALUES (?1, ?2, ?3, ?4, 0, 0, 0, 0, 0, '', 'erased', '', '{}', 1) RETURNING 1");
    if (!query)
        return query.error();
    query->bind(1, journal::toText(lane))
        .bind(2, device.value)
        .bind(3, static_cast<std::int64_t>(gone.counter))
        .bind(4, gone.identity);
    return query->step();
}

Result<std::int64_t> EventRepository::goneIn(const journal::Lane &lane)
{
    Result<Statement> query =
        m_database.prepare("SELECT count(*) FROM event WHERE lane = ?1 AND erased = 1");
    if (!query)
        return query.error();
    query->bind(1, journal::toText(lane));
    if (const Result<bool> row = query->step(); !row)
        return row.error();
    return query->number(0);
}

Result<std::int64_t> EventRepository::goneUpTo(const journal::Lane &lane, const DeviceId &device,
                                               std::uint64_t counter)
{
    Result<Statement> query = m_database.prepare(
        "SELECT count(*) FROM event WHERE lane = ?1 AND device = ?2 AND counter <= ?3 "
        "AND erased = 1");
    if (!query)
        return query.error();
    query->bind(1, journal::toText(lane))
        .bind(2, device.value)
        .bind(3, static_cast<std::int64_t>(counter));
    if (const Result<bool> row = query->step(); !row)
        return row.error();
    return query->number(0);
}

Result<std::vector<LaneSubject>> EventRepository::eraseCovered(const journal::Lane &lane,
                                                               const journal::Erasure &erasure)
{
    std::vector<LaneSubject> changed;
    Result<Statement> query =
        m_database.prepare(std::string(eventColumns) + "WHERE lane = ?1 AND erased = 0");
    if (!query)
        return query.error();
    query->bind(1, journal::toText(lane));
    const auto events = collect(*query);
    if (!events)
        return events.error();
    Result<Statement> emptied =
        m_database.prepare(std::string(emptyEvents) +
                           "WHERE lane = ?1 AND device = ?2 AND counter = ?3 AND identity = ?4");
    if (!emptied)
        return emptied.error();
    for (const journal::Event &event : *events) {
        if (!journal::covers(erasure, event))
            continue;
        emptied->bind(1, journal::toText(lane))
            .bind(2, event.device.value)
            .bind(3, static_cast<std::int64_t>(event.counter))
            .bind(4, journal::identityOf(event));
        if (const Outcome done = emptied->run(); !done)
            return done.error();
        changed.push_back({lane, journal::subjectOf(event)});
    }
    return changed;
}

} // namespace lidlark::store

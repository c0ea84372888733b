#include "core/store/event_repository.h"

#include "core/journal/take_backs.h"
#include "core/store/rows.h"

#include <nlohmann/json.hpp>

namespace lidlark::store {

namespace {

constexpr std::string_view insertEvent = R"sql(
    INSERT OR IGNORE INTO event (lane, device, counter, identity, instant_ms, logical, day, part,
                                 offset_minutes, author, kind, subject, fields)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13) RETURNING 1)sql";

/// Lanes are written "kind:scope", so those of one kind stand together: ';' follows ':'.
constexpr std::string_view oldInLanes =
    "WHERE lane >= ?1 || ':' AND lane < ?1 || ';' AND day < ?2 AND erased = 0 "
    "AND kind IN (SELECT value FROM json_each(?3))";

void bindOutdated(Statement &query, const Outdated &old)
{
    nlohmann::json kinds = nlohmann::json::array();
    for (const journal::Kind kind : old.kinds)
        kinds.push_back(journal::kindNames.of(kind));
    query.bind(1, journal::laneKindNames.of(old.lanes))
        .bind(2, std::int64_t{old.before.number})
        .bind(3, kinds.dump());
}

Result<journal::Event> readEvent(const Statement &row)
{
    const auto lane = journal::laneFromText(row.text(0));
    const auto kind = journal::kindNames.parse(row.text(9));
    if (!lane || !kind)
        return Error{ErrorCode::Unreadable, "event"};
    return journal::Event{
        *lane,
        {row.text(1)},
        static_cast<std::uint64_t>(row.number(2)),
        {row.number(3), static_cast<std::uint32_t>(row.number(4))},
        {Day{static_cast<std::int32_t>(row.number(5))}, static_cast<PartOfDay>(row.number(6))},
        static_cast<int>(row.number(7)),
        row.text(8),
        *kind,
        row.text(10)};
}

Result<std::vector<LaneSubject>> readSubjects(Statement &query)
{
    std::vector<LaneSubject> subjects;
    Result<bool> row = query.step();
    for (; row && *row; row = query.step()) {
        if (const auto lane = journal::laneFromText(query.text(0)))
            subjects.push_back({*lane, query.text(1)});
    }
    if (!row)
        return row.error();
    return subjects;
}

} // namespace

Result<bool> EventRepository::insert(const journal::Event &event)
{
    Result<Statement> query = m_database.prepare(insertEvent);
    if (!query)
        return query.error();
    query->bind(1, journal::toText(event.lane))
        .bind(2, event.device.value)
        .bind(3, static_cast<std::int64_t>(event.counter))
        .bind(4, journal::identityOf(event))
        .bind(5, event.instant.ms)
        .bind(6, std::int64_t{event.instant.logical})
        .bind(7, std::int64_t{event.when.day.number})
        .bind(8, static_cast<std::int64_t>(event.when.part))
        .bind(9, std::int64_t{event.offsetMinutes})
        .bind(10, event.author)
        .bind(11, journal::kindNames.of(event.kind))
        .bind(12, journal::subjectOf(event))
        .bind(13, event.fields);
    return query->step();
}

Result<std::vector<journal::Event>> EventRepository::collect(Statement &query)
{
    std::vector<journal::Event> events;
    Result<bool> row = query.step();
    for (; row && *row; row = query.step()) {
        const Result<journal::Event> event = readEvent(query);
        if (!event)
            return event.error();
        events.push_back(*event);
    }
    if (!row)
        return row.error();
    return events;
}

Result<std::vector<journal::Event>> EventRepository::ofSubject(const LaneSubject &subject)
{
    // Told which index: left to itself SQLite walks through the whole lane, for each subject anew.
    Result<Statement> query =
        m_database.prepare(std::string(eventColumns) + "INDEXED BY event_by_subject "
                                                       "WHERE lane = ?1 AND subject = ?2 AND "
                                                       "erased = 0");
    if (!query)
        return query.error();
    query->bind(1, journal::toText(subject.lane)).bind(2, subject.subject);
    return collect(*query);
}

Result<std::vector<journal::Event>> EventRepository::standingOfSubject(const LaneSubject &subject)
{
    Result<std::vector<journal::Event>> events = ofSubject(subject);
    if (events)
        events = counting(*std::move(events));
    if (!events)
        return events;
    return journal::withoutTakenBack(*std::move(events));
}

Result<std::vector<journal::Event>> EventRepository::counting(std::vector<journal::Event> events)
{
    if (!m_crews) {
        auto crews = CrewRepository(m_database).all();
        if (!crews)
            return crews.error();
        m_crews = *std::move(crews);
    }
    if (!m_crews->empty())
        std::erase_if(
            events, [this](const journal::Event &event) { return !countsInAny(*m_crews, event); });
    return events;
}

Result<std::vector<journal::Event>> EventRepository::ofDay(const journal::Lane &lane, Day day)
{
    Result<Statement> query =
        m_database.prepare(std::string(eventColumns) + "INDEXED BY event_by_day "
                                                       "WHERE lane = ?1 AND day = ?2 AND "
                                                       "erased = 0");
    if (!query)
        return query.error();
    query->bind(1, journal::toText(lane)).bind(2, std::int64_t{day.number});
    return collect(*query);
}

Result<std::vector<journal::Event>> EventRepository::all()
{
    Result<Statement> query = m_database.prepare(std::string(eventColumns) + "WHERE erased = 0");
    if (!query)
        return query.error();
    return collect(*query);
}

Result<std::vector<LaneSubject>> EventRepository::subjects()
{
    Result<Statement> query = m_database.prepare(
        "SELECT DISTINCT lane, subject FROM event WHERE erased = 0 ORDER BY lane, subject");
    if (!query)
        return query.error();
    return readSubjects(*query);
}

Result<std::vector<LaneSubject>> EventRepository::subjectsOf(const journal::Lane &lane)
{
    Result<Statement> query = m_database.prepare(
        "SELECT DISTINCT lane, subject FROM event WHERE lane = ?1 AND erased = 0 ORDER BY subject");
    if (!query)
        return query.error();
    query->bind(1, journal::toText(lane));
    return readSubjects(*query);
}

Result<std::uint64_t> EventRepository::lastCounter(const journal::Lane &lane,
                                                   const DeviceId &device)
{
    Result<Statement> query = m_database.prepare(
        "SELECT coalesce(max(counter), 0) FROM event WHERE lane = ?1 AND device = ?2");
    if (!query)
        return query.error();
    query->bind(1, journal::toText(lane)).bind(2, device.value);
    if (const Result<bool> row = query->step(); !row)
        return row.error();
    return static_cast<std::uint64_t>(query->number(0));
}

Result<std::int64_t> EventRepository::count()
{
    Result<Statement> query = m_database.prepare("SELECT count(*) FROM event");
    if (!query)
        return query.error();
    if (const Result<bool> row = query->step(); !row)
        return row.error();
    return query->number(0);
}

Result<std::vector<Day>> EventRepository::latestDays()
{
    Result<Statement> query =
        m_database.prepare("SELECT max(day) FROM event WHERE kind <> ?1 GROUP BY device");
    if (!query)
        return query.error();
    query->bind(1, journal::kindNames.of(journal::Kind::CheckIn));
    return collectRows<Day>(
        *query, [](const Statement &row) { return Day{static_cast<std::int32_t>(row.number(0))}; });
}

Result<bool> EventRepository::any(const Outdated &outdated)
{
    Result<Statement> query =
        m_database.prepare("SELECT 1 FROM event " + std::string(oldInLanes) + " LIMIT 1");
    if (!query)
        return query.error();
    bindOutdated(*query, outdated);
    return query->step();
}

Result<std::vector<LaneSubject>> EventRepository::erase(const Outdated &outdated)
{
    Result<Statement> old =
        m_database.prepare("SELECT DISTINCT lane, subject FROM event " + std::string(oldInLanes));
    Result<Statement> emptied =
        m_database.prepare(std::string(emptyEvents) + std::string(oldInLanes));
    if (!old || !emptied)
        return old ? emptied.error() : old.error();
    bindOutdated(*old, outdated);
    Result<std::vector<LaneSubject>> subjects = readSubjects(*old);
    bindOutdated(*emptied, outdated);
    if (const Outcome done = emptied->run(); !done)
        return done.error();
    return subjects;
}

Outcome EventRepository::eraseSubject(const LaneSubject &subject)
{
    Result<Statement> query = m_database.prepare(
        std::string(emptyEvents) + "WHERE lane = ?1 AND subject = ?2 AND erased = 0 AND "
                                   "json_extract(fields, '$.removed') IS NULL");
    if (!query)
        return query.error();
    return query->bind(1, journal::toText(subject.lane)).bind(2, subject.subject).run();
}

} // namespace lidlark::store

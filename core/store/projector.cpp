#include "core/store/projector.h"

#include "core/journal/latest.h"
#include "core/store/box_rows.h"
#include "core/store/home_rows.h"
#include "core/store/item_rows.h"
#include "core/store/note_rows.h"
#include "core/store/plan_rows.h"

namespace lidlark::store {

namespace {

using journal::Event;
using journal::Kind;
using journal::LaneKind;
using journal::Meetings;
using journal::Seen;

constexpr std::string_view itemPrefix = "item:";
constexpr const char *projectionTables[] = {
    "box",     "box_revision", "box_place", "box_place_too", "box_item", "loss",
    "outcome", "item_arrival", "item_use",  "piece",         "request",  "question",
    "fact",    "permission",   "play",      "offered",       "check_in", "goal",
    "grading", "grading_pin",  "planned",   "reads",         "our_way",  "own_note"};

/// The pieces of an item by the lid list in force, and since when; nothing where it is not on it.
Result<std::optional<box::Packed>> packedOf(Database &database, const std::string &box,
                                            const ItemId &item)
{
    Result<Statement> query = database.prepare(
        "SELECT json_extract(packed, '$.packed.\"' || ?2 || '\"'), "
        "json_extract(since, '$.\"' || ?2 || '\"') FROM box_revision WHERE box = ?1");
    if (!query)
        return query.error();
    query->bind(1, box).bind(2, item.value);
    const Result<bool> row = query->step();
    if (!row)
        return row.error();
    if (!*row || query->isNull(0))
        return std::optional<box::Packed>();
    return std::optional(box::Packed{static_cast<int>(query->number(0)),
                                     Day{static_cast<std::int32_t>(query->number(1))}});
}

/// The day on which each item was first on a lid list.
std::map<ItemId, Day> firstDays(std::span<const Event> events)
{
    std::map<ItemId, Day> since;
    for (const Event &event : events) {
        const auto revision = box::readRevision(event);
        if (!revision)
            continue;
        for (const auto &[item, count] : revision->packed) {
            const auto known = since.find(item);
            if (count > 0 && (known == since.end() || event.when.day < known->second))
                since[item] = event.when.day;
        }
    }
    return since;
}

Outcome projectBoxWide(Database &database, const LaneSubject &subject,
                       std::span<const Event> events, const Meetings &meetings)
{
    const Seen &seen = meetings.seen;
    const std::string &box = subject.lane.scope;
    if (subject.subject == "child") {
        if (const Event *child = journal::latestOf(events, Kind::Child, seen))
            return writeBox(database, box, *child);
    } else if (subject.subject == "revision") {
        const Event *latest = journal::latestOf(events, Kind::Revision, seen);
        const auto revision = latest != nullptr ? box::readRevision(*latest) : std::nullopt;
        if (revision)
            return writeRevision(database, box, *revision, latest->when.day, firstDays(events));
    } else if (subject.subject == "place") {
        return writePlace(database, box, box::foldPlace(events, meetings));
    } else if (subject.subject.starts_with("grading-pin:")) {
        return writeGradingPin(database, subject,
                               play::foldGrading(events, seen, Kind::GradingPin));
    }
    return Done{};
}

Outcome projectHome(Database &database, const LaneSubject &subject, std::span<const Event> events,
                    const Seen &seen)
{
    const std::string_view text = subject.subject;
    if (text.starts_with("fact:"))
        return writeFact(database, subject, child::foldFact(events, seen));
    if (text.starts_with("permission:"))
        return writePermission(database, subject, child::foldPermission(events, seen));
    if (text.starts_with("play:"))
        return writePlay(database, subject, play::foldPlay(events, seen));
    if (text.starts_with("offered:"))
        return writeOffered(database, subject, play::foldOffered(events));
    if (text.starts_with("check-in:"))
        return writeCheckIn(database, subject, checkin::foldCheckIn(events, seen));
    if (text.starts_with("goal:"))
        return writeGoal(database, subject, child::foldGoal(events, seen));
    if (text.starts_with("grading:"))
        return writeGrading(database, subject, play::foldGrading(events, seen, Kind::Grading));
    if (text.starts_with("planned:"))
        return writeDayWish(database, subject, play::foldDayWish(events, seen));
    if (text.starts_with("reads:"))
        return writeReadingLanguage(database, subject, child::foldReadingLanguage(events, seen));
    if (text.starts_with("our-way:"))
        return writeOurWay(database, subject, play::foldOurWay(events, seen));
    if (text.starts_with("note:"))
        return writeOwnNote(database, subject, play::foldOwnNote(events));
    return Done{};
}

} // namespace

Result<Meetings> Projector::meetingsOf(const journal::Lane &lane)
{
    const Result<std::vector<Event>> mets = m_events.ofSubject({lane, "met"});
    if (!mets)
        return mets.error();
    return Meetings(*mets);
}

Outcome Projector::projectItem(const LaneSubject &subject, std::span<const Event> events,
                               const Meetings &meetings)
{
    const ItemId item{subject.subject.substr(itemPrefix.size())};
    const auto listed = packedOf(m_database, subject.lane.scope, item);
    if (!listed)
        return listed.error();
    if (!*listed && events.empty())
        return clearItem(m_database, subject.lane.scope, item);
    const box::Packed packed = listed->value_or(box::Packed{});
    return writeItem(m_database, subject.lane.scope, item,
                     {packed.pieces, box::foldItem(packed, events, meetings),
                      box::foldCare(events, meetings.seen), box::foldRequests(events)});
}

Outcome Projector::projectOne(const LaneSubject &subject, const Meetings &meetings)
{
    const Result<std::vector<Event>> events = m_events.standingOfSubject(subject);
    if (!events)
        return events.error();
    if (subject.subject.starts_with(itemPrefix))
        return projectItem(subject, *events, meetings);
    if (subject.lane.kind == LaneKind::Box)
        return projectBoxWide(m_database, subject, *events, meetings);
    return projectHome(m_database, subject, *events, meetings.seen);
}

/// The lid list first: the items' counts start from it.
Outcome Projector::projectLane(const journal::Lane &lane)
{
    const Result<Meetings> meetings = meetingsOf(lane);
    const Result<std::vector<LaneSubject>> subjects = m_events.subjectsOf(lane);
    if (!meetings || !subjects)
        return meetings ? subjects.error() : meetings.error();
    if (lane.kind == LaneKind::Box) {
        // An item that nobody spoke of follows the lid list too, or leaves with it.
        if (Outcome cleared = clearItems(m_database, lane.scope); !cleared)
            return cleared;
    }
    std::vector<LaneSubject> ordered{{lane, "revision"}};
    for (const LaneSubject &subject : *subjects) {
        if (subject.subject != "revision")
            ordered.push_back(subject);
    }
    for (const LaneSubject &subject : ordered) {
        if (Outcome done = projectOne(subject, *meetings); !done)
            return done;
    }
    return lane.kind == LaneKind::Box ? projectUntouchedItems(lane, *meetings) : Outcome(Done{});
}

/// Items of the lid list about which nothing was ever said still have a row.
Outcome Projector::projectUntouchedItems(const journal::Lane &lane, const Meetings &meetings)
{
    Result<Statement> query = m_database.prepare(R"sql(
        SELECT key FROM box_revision, json_each(box_revision.packed, '$.packed')
        WHERE box = ?1 AND NOT EXISTS
            (SELECT 1 FROM box_item WHERE box_item.box = ?1 AND box_item.item = key))sql");
    if (!query)
        return query.error();
    query->bind(1, lane.scope);
    std::vector<std::string> items;
    Result<bool> row = query->step();
    for (; row && *row; row = query->step())
        items.push_back(query->text(0));
    if (!row)
        return row.error();
    for (const std::string &item : items) {
        const LaneSubject subject{lane, std::string(itemPrefix) + item};
        if (Outcome done = projectItem(subject, {}, meetings); !done)
            return done;
    }
    return Done{};
}

Outcome Projector::projectSome(const journal::Lane &lane, const std::set<LaneSubject> &changed)
{
    const Result<Meetings> meetings = meetingsOf(lane);
    if (!meetings)
        return meetings.error();
    for (const LaneSubject &subject : changed) {
        if (subject.lane != lane)
            continue;
        if (Outcome done = projectOne(subject, *meetings); !done)
            return done;
    }
    return Done{};
}

Outcome Projector::project(const std::set<LaneSubject> &changed)
{
    std::set<journal::Lane> lanes;
    for (const LaneSubject &subject : changed)
        lanes.insert(subject.lane);
    for (const journal::Lane &lane : lanes) {
        const bool whole = changed.contains({lane, "revision"}) || changed.contains({lane, "met"});
        Outcome done = whole ? projectLane(lane) : projectSome(lane, changed);
        if (!done)
            return done;
    }
    return Done{};
}

Result<std::string> Projector::dump()
{
    std::string text;
    for (const char *table : projectionTables) {
        // Primary keys come first in every table and the tables have no rowid: SELECT * is in
        // key order, so equal rows give equal text.
        Result<Statement> query = m_database.prepare(std::string("SELECT * FROM ") + table);
        if (!query)
            return query.error();
        Result<bool> row = query->step();
        for (; row && *row; row = query->step()) {
            text += table;
            for (int column = 0; column < query->columns(); ++column)
                text += '\x1f' + query->text(column);
            text += '\n';
        }
        if (!row)
            return row.error();
    }
    return text;
}

Outcome Projector::refold()
{
    for (const char *table : projectionTables) {
        if (Outcome done = m_database.run(std::string("DELETE FROM ") + table); !done)
            return done;
    }
    const Result<std::vector<LaneSubject>> subjects = m_events.subjects();
    if (!subjects)
        return subjects.error();
    const journal::Lane *last = nullptr;
    for (const LaneSubject &subject : *subjects) {
        if (last != nullptr && *last == subject.lane)
            continue;
        last = &subject.lane;
        if (Outcome done = projectLane(subject.lane); !done)
            return done;
    }
    return Done{};
}

Result<bool> Projector::matchesRefold()
{
    Result<Transaction> transaction = Transaction::begin(m_database); // never committed
    if (!transaction)
        return transaction.error();
    const Result<std::string> before = dump();
    if (!before)
        return before.error();
    if (const Outcome done = refold(); !done)
        return done.error();
    const Result<std::string> after = dump();
    if (!after)
        return after.error();
    return *before == *after;
}

} // namespace lidlark::store

#include "core/store/projector.h"

#include "core/journal/latest.h"
#include "core/store/box_rows.h"
#include "core/store/home_rows.h"
#include "core/store/plan_rows.h"

namespace lidlark::store {

namespace {

using journal::Event;
using journal::Kind;
using journal::LaneKind;
using journal::Seen;

constexpr std::string_view itemPrefix = "item:";
constexpr const char *projectionTables[] = {"box",     "box_revision", "box_place", "box_item",
                                            "loss",    "outcome",      "fact",      "permission",
                                            "play",    "offered",      "check_in",  "goal",
                                            "grading", "grading_pin",  "planned"};

Result<int> packedOf(Database &database, const std::string &box, const ItemId &item)
{
    Result<Statement> query = database.prepare("SELECT json_extract(packed, '$.packed.\"' || ?2 || "
                                               "'\"') FROM box_revision WHERE box = ?1");
    if (!query)
        return query.error();
    query->bind(1, box).bind(2, item.value);
    const Result<bool> row = query->step();
    if (!row)
        return row.error();
    return *row && !query->isNull(0) ? static_cast<int>(query->number(0)) : 0;
}

Outcome projectBoxWide(Database &database, const LaneSubject &subject,
                       std::span<const Event> events, const Seen &seen)
{
    const std::string &box = subject.lane.scope;
    if (subject.subject == "child") {
        if (const Event *child = journal::latestOf(events, Kind::Child, seen))
            return writeBox(database, box, *child);
    } else if (subject.subject == "revision") {
        const Event *latest = journal::latestOf(events, Kind::Revision, seen);
        const auto revision = latest != nullptr ? box::readRevision(*latest) : std::nullopt;
        if (revision)
            return writeRevision(database, box, *revision, latest->when.day);
    } else if (subject.subject == "place") {
        if (const auto place = box::foldPlace(events, seen))
            return writePlace(database, box, *place);
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
    return Done{};
}

} // namespace

Result<Seen> Projector::seenOf(const journal::Lane &lane)
{
    const Result<std::vector<Event>> mets = m_events.ofSubject({lane, "met"});
    if (!mets)
        return mets.error();
    return Seen(*mets);
}

Outcome Projector::projectItem(const LaneSubject &subject, std::span<const Event> events,
                               const Seen &seen)
{
    const ItemId item{subject.subject.substr(itemPrefix.size())};
    const Result<int> packed = packedOf(m_database, subject.lane.scope, item);
    if (!packed)
        return packed.error();
    return writeItem(m_database, subject.lane.scope, item, *packed,
                     box::foldItem(*packed, events, seen));
}

Outcome Projector::projectOne(const LaneSubject &subject, const Seen &seen)
{
    const Result<std::vector<Event>> events = m_events.ofSubject(subject);
    if (!events)
        return events.error();
    if (subject.subject.starts_with(itemPrefix))
        return projectItem(subject, *events, seen);
    if (subject.lane.kind == LaneKind::Box)
        return projectBoxWide(m_database, subject, *events, seen);
    return projectHome(m_database, subject, *events, seen);
}

/// The lid list first: the items' counts start from it.
Outcome Projector::projectLane(const journal::Lane &lane)
{
    const Result<Seen> seen = seenOf(lane);
    const Result<std::vector<LaneSubject>> subjects = m_events.subjectsOf(lane);
    if (!seen || !subjects)
        return seen ? subjects.error() : seen.error();
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
        if (Outcome done = projectOne(subject, *seen); !done)
            return done;
    }
    return lane.kind == LaneKind::Box ? projectUntouchedItems(lane, *seen) : Outcome(Done{});
}

/// Items of the lid list about which nothing was ever said still have a row.
Outcome Projector::projectUntouchedItems(const journal::Lane &lane, const Seen &seen)
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
        if (Outcome done = projectItem(subject, {}, seen); !done)
            return done;
    }
    return Done{};
}

Outcome Projector::projectSome(const journal::Lane &lane, const std::set<LaneSubject> &changed)
{
    const Result<Seen> seen = seenOf(lane);
    if (!seen)
        return seen.error();
    for (const LaneSubject &subject : changed) {
        if (subject.lane != lane)
            continue;
        if (Outcome done = projectOne(subject, *seen); !done)
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

Result<bool> Projector::matchesRefold()
{
    Result<Transaction> transaction = Transaction::begin(m_database); // never committed
    if (!transaction)
        return transaction.error();
    const Result<std::string> before = dump();
    if (!before)
        return before.error();
    for (const char *table : projectionTables) {
        if (const Outcome done = m_database.run(std::string("DELETE FROM ") + table); !done)
            return done.error();
    }
    const Result<std::vector<LaneSubject>> subjects = m_events.subjects();
    if (!subjects)
        return subjects.error();
    const journal::Lane *last = nullptr;
    for (const LaneSubject &subject : *subjects) {
        if (last != nullptr && *last == subject.lane)
            continue;
        last = &subject.lane;
        if (const Outcome done = projectLane(subject.lane); !done)
            return done.error();
    }
    const Result<std::string> after = dump();
    if (!after)
        return after.error();
    return *before == *after;
}

} // namespace lidlark::store

#include "core/store/projector.h"

#include "core/store/crew_rows.h"
#include "core/store/item_rows.h"
#include "core/store/subject_rows.h"

#include <algorithm>
#include <iterator>

namespace lidlark::store {

namespace {

using journal::Event;
using journal::LaneKind;
using journal::Meetings;
using journal::Seen;

constexpr std::string_view itemPrefix = "item:";
constexpr const char *projectionTables[] = {
    "box",         "box_revision", "box_place", "box_place_too", "box_item",  "loss",
    "outcome",     "item_arrival", "item_use",  "piece",         "request",   "question",
    "fact",        "permission",   "play",      "offered",       "check_in",  "goal",
    "grading",     "grading_pin",  "planned",   "reads",         "our_way",   "own_note",
    "crew_member", "supply",       "design",    "build",         "box_state", "box_build",
    "lot_in_box"};

/// What the lid lists say of an item.
struct Listed {
    int expected = 0;
    box::Packed packed;
};

/// @returns nothing where the box neither began with it nor should hold it.
Result<std::optional<Listed>> listedOf(Database &database, const std::string &box,
                                       const ItemId &item)
{
    Result<Statement> query = database.prepare(R"sql(
        SELECT json_extract(packed, '$.packed."' || ?2 || '"'),
               json_extract(began, '$."' || ?2 || '"'), begun_day,
               EXISTS (SELECT 1 FROM json_each(packed, '$.removed') WHERE value = ?2)
        FROM box_revision WHERE box = ?1)sql");
    if (!query)
        return query.error();
    query->bind(1, box).bind(2, item.value);
    const Result<bool> row = query->step();
    if (!row)
        return row.error();
    if (!*row || (query->isNull(0) && query->isNull(1)))
        return std::optional<Listed>();
    return std::optional(
        Listed{static_cast<int>(query->number(0)),
               {static_cast<int>(query->number(1)),
                Day{static_cast<std::int32_t>(query->number(2))}, query->number(3) != 0}});
}

} // namespace

Result<Meetings> Projector::meetingsOf(const journal::Lane &lane)
{
    auto mets = m_events.ofSubject({lane, "met"});
    if (mets)
        mets = m_events.counting(*std::move(mets));
    if (!mets)
        return mets.error();
    return Meetings(*mets);
}

Outcome Projector::projectItem(const LaneSubject &subject, std::span<const Event> events,
                               const Meetings &meetings)
{
    const ItemId item{subject.subject.substr(itemPrefix.size())};
    const auto listed = listedOf(m_database, subject.lane.scope, item);
    if (!listed)
        return listed.error();
    if (!*listed && events.empty())
        return clearItem(m_database, subject.lane.scope, item);
    const Listed list = listed->value_or(Listed{});
    return writeItem(m_database, subject.lane.scope, item,
                     {list.expected, box::foldItem(list.packed, events, meetings),
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
        return writeBoxSubject(m_database, subject, *events, meetings);
    return writeHomeSubject(m_database, subject, *events, meetings.seen);
}

/// The lid list first: the items' counts start from it.
Outcome Projector::projectLane(const journal::Lane &lane, const std::set<LaneSubject> &changed)
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
    std::set<LaneSubject> others(subjects->begin(), subjects->end());
    // What was erased to the last word is no subject any more, and leaves a row.
    std::ranges::copy_if(changed, std::inserter(others, others.end()),
                         [&lane](const LaneSubject &subject) { return subject.lane == lane; });
    others.erase({lane, "revision"});
    std::vector<LaneSubject> ordered{{lane, "revision"}};
    ordered.insert(ordered.end(), others.begin(), others.end());
    for (const LaneSubject &subject : ordered) {
        if (Outcome done = projectOne(subject, *meetings); !done)
            return done;
    }
    return lane.kind == LaneKind::Box ? projectUntouchedItems(lane, *meetings) : Outcome(Done{});
}

/// Items that the box began with or should hold, and about which nothing was ever said, still have
/// a row.
Outcome Projector::projectUntouchedItems(const journal::Lane &lane, const Meetings &meetings)
{
    Result<Statement> query = m_database.prepare(R"sql(
        SELECT key FROM (SELECT key FROM box_revision, json_each(box_revision.packed, '$.packed')
                         WHERE box = ?1
                         UNION
                         SELECT key FROM box_revision, json_each(box_revision.began)
                         WHERE box = ?1)
        WHERE NOT EXISTS
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
    std::set<journal::Lane> whole;
    if (Outcome done = projectCrews(changed, whole); !done)
        return done;
    lanes.insert(whole.begin(), whole.end());
    for (const journal::Lane &lane : lanes) {
        const bool all = whole.contains(lane) || changed.contains({lane, "revision"}) ||
                         changed.contains({lane, "met"});
        Outcome done = all ? projectLane(lane, changed) : projectSome(lane, changed);
        if (!done)
            return done;
    }
    return Done{};
}

Outcome Projector::projectCrews(const std::set<LaneSubject> &changed,
                                std::set<journal::Lane> &whole)
{
    for (const LaneSubject &subject : changed) {
        if (subject.subject != membersSubject || subject.lane.kind != LaneKind::Box)
            continue;
        if (Outcome done = writeMembers(m_database, subject.lane); !done)
            return done;
        const auto lanes = lanesAbout(m_database, subject.lane.scope);
        if (!lanes)
            return lanes.error();
        whole.insert(lanes->begin(), lanes->end());
    }
    m_events.forgetCrews();
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
    for (const LaneSubject &subject : *subjects) {
        if (subject.subject != membersSubject || subject.lane.kind != LaneKind::Box)
            continue;
        if (Outcome done = writeMembers(m_database, subject.lane); !done)
            return done;
    }
    m_events.forgetCrews();
    const journal::Lane *last = nullptr;
    for (const LaneSubject &subject : *subjects) {
        if (last != nullptr && *last == subject.lane)
            continue;
        last = &subject.lane;
        if (Outcome done = projectLane(subject.lane, {}); !done)
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

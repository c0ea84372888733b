#include "core/store/home_rows.h"

#include "core/store/subject_parts.h"

namespace lidlark::store {

namespace {

Outcome runWith(Database &database, std::string_view sql,
                std::initializer_list<std::string_view> texts)
{
    Result<Statement> query = database.prepare(sql);
    if (!query)
        return query.error();
    int parameter = 0;
    for (const std::string_view text : texts)
        query->bind(++parameter, text);
    return query->run();
}

std::string phraseList(const std::vector<play::Phrase> &phrases)
{
    std::string list;
    for (const play::Phrase phrase : phrases) {
        list += list.empty() ? "" : " ";
        list += play::phraseNames.of(phrase);
    }
    return list;
}

} // namespace

Outcome writeFact(Database &database, const LaneSubject &subject,
                  const std::optional<child::Fact> &fact)
{
    const SubjectParts parts = partsOf(subject);
    if (!fact)
        return runWith(database, "DELETE FROM fact WHERE home = ?1 AND person = ?2 AND fact = ?3",
                       {subject.lane.scope, parts.first, parts.second});
    return runWith(
        database, "INSERT OR REPLACE INTO fact (home, person, fact, value) VALUES (?1, ?2, ?3, ?4)",
        {subject.lane.scope, fact->person, fact->fact, fact->value});
}

Outcome writePermission(Database &database, const LaneSubject &subject,
                        const std::optional<child::Permission> &permission)
{
    if (!permission)
        return runWith(database, "DELETE FROM permission WHERE home = ?1 AND name = ?2",
                       {subject.lane.scope, partsOf(subject).first});
    Result<Statement> query =
        database.prepare("INSERT OR REPLACE INTO permission (home, name, words, months, version) "
                         "VALUES (?1, ?2, ?3, ?4, ?5)");
    if (!query)
        return query.error();
    return query->bind(1, subject.lane.scope)
        .bind(2, permission->name)
        .bind(3, permission->words)
        .bind(4, std::int64_t{permission->months})
        .bind(5, std::int64_t{permission->version})
        .run();
}

Outcome writePlay(Database &database, const LaneSubject &subject,
                  const std::optional<play::Play> &play)
{
    if (!play)
        return runWith(database, "DELETE FROM play WHERE id = ?1", {partsOf(subject).first});
    Result<Statement> query = database.prepare(R"sql(
        INSERT OR REPLACE INTO play (id, home, child, activity, version, author, day, part,
                                     started_ms, ending, ended_by, phrases)
        VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12))sql");
    if (!query)
        return query.error();
    const auto ending = play->ending
                            ? std::optional<std::string>(play::endingNames.of(*play->ending))
                            : std::nullopt;
    return query->bind(1, play->id.value)
        .bind(2, subject.lane.scope)
        .bind(3, play->child.value)
        .bind(4, play->activity.value)
        .bind(5, std::int64_t{play->version})
        .bind(6, play->author)
        .bind(7, std::int64_t{play->when.day.number})
        .bind(8, static_cast<std::int64_t>(play->when.part))
        .bind(9, play->startedAt.ms)
        .bindText(10, ending)
        .bind(11, play->endedBy)
        .bind(12, phraseList(play->phrases))
        .run();
}

Outcome writeOffered(Database &database, const LaneSubject &subject,
                     const std::optional<play::Offered> &offered)
{
    const SubjectParts parts = partsOf(subject);
    Result<Statement> query = database.prepare(
        offered ? "INSERT OR REPLACE INTO offered (home, child, activity, day, day_before) "
                  "VALUES (?1, ?2, ?3, ?4, ?5)"
                : "DELETE FROM offered WHERE home = ?1 AND child = ?2 AND activity = ?3");
    if (!query)
        return query.error();
    query->bind(1, subject.lane.scope).bind(2, parts.first).bind(3, parts.second);
    if (offered)
        query->bind(4, std::int64_t{offered->last.number})
            .bind(5, offered->before ? std::optional<std::int64_t>(offered->before->number)
                                     : std::nullopt);
    return query->run();
}

Outcome writeCheckIn(Database &database, const LaneSubject &subject,
                     const std::optional<checkin::CheckIn> &checkIn)
{
    const SubjectParts parts = partsOf(subject);
    if (!checkIn)
        return runWith(database, "DELETE FROM check_in WHERE home = ?1 AND child = ?2 AND id = ?3",
                       {subject.lane.scope, parts.first, parts.second});
    Result<Statement> query = database.prepare(R"sql(
        INSERT OR REPLACE INTO check_in (home, child, id, day, part, before, shown_by, after,
                                         activity)
        VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9))sql");
    if (!query)
        return query.error();
    const auto after = checkIn->after
                           ? std::optional<std::string>(checkin::kiteNames.of(*checkIn->after))
                           : std::nullopt;
    return query->bind(1, subject.lane.scope)
        .bind(2, checkIn->child.value)
        .bind(3, checkIn->id)
        .bind(4, std::int64_t{checkIn->when.day.number})
        .bind(5, static_cast<std::int64_t>(checkIn->when.part))
        .bind(6, checkin::kiteNames.of(checkIn->before))
        .bind(7, checkin::shownByNames.of(checkIn->shownBy))
        .bindText(8, after)
        .bind(9, checkIn->activity.value)
        .run();
}

Outcome writeGoal(Database &database, const LaneSubject &subject,
                  const std::optional<child::ChildGoal> &goal)
{
    if (!goal)
        return runWith(database, "DELETE FROM goal WHERE id = ?1", {partsOf(subject).first});
    return runWith(database, "INSERT OR REPLACE INTO goal (id, child, fields) VALUES (?1, ?2, ?3)",
                   {goal->goal.id, goal->child.value, child::fieldsOf(*goal)});
}

Outcome writeReadingLanguage(Database &database, const LaneSubject &subject,
                             const std::optional<child::ReadingLanguage> &reading)
{
    // Not its parts: an alias may hold a slash.
    const std::string person = subject.subject.substr(subject.subject.find(':') + 1);
    if (!reading)
        return runWith(database, "DELETE FROM reads WHERE home = ?1 AND person = ?2",
                       {subject.lane.scope, person});
    return runWith(database,
                   "INSERT OR REPLACE INTO reads (home, person, language) VALUES (?1, ?2, ?3)",
                   {subject.lane.scope, reading->person, reading->language});
}

} // namespace lidlark::store

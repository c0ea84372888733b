#include "core/store/plan_rows.h"

#include "core/store/subject_parts.h"

namespace lidlark::store {

Outcome writeGrading(Database &database, const LaneSubject &subject,
                     const std::optional<play::GradingUsed> &used)
{
    const SubjectParts parts = partsOf(subject);
    Result<Statement> query = database.prepare(
        used ? "INSERT OR REPLACE INTO grading (home, child, activity, way, lever) "
               "VALUES (?1, ?2, ?3, ?4, ?5)"
             : "DELETE FROM grading WHERE home = ?1 AND child = ?2 AND activity = ?3");
    if (!query)
        return query.error();
    query->bind(1, subject.lane.scope).bind(2, parts.first).bind(3, parts.second);
    if (used)
        query->bind(4, play::wayNames.of(used->way)).bind(5, catalogue::leverNames.of(used->lever));
    return query->run();
}

Outcome writeGradingPin(Database &database, const LaneSubject &subject,
                        const std::optional<play::GradingUsed> &pinned)
{
    Result<Statement> query =
        database.prepare(pinned ? "INSERT OR REPLACE INTO grading_pin (box, activity, way, lever) "
                                  "VALUES (?1, ?2, ?3, ?4)"
                                : "DELETE FROM grading_pin WHERE box = ?1 AND activity = ?2");
    if (!query)
        return query.error();
    query->bind(1, subject.lane.scope).bind(2, partsOf(subject).first);
    if (pinned)
        query->bind(3, play::wayNames.of(pinned->way))
            .bind(4, catalogue::leverNames.of(pinned->lever));
    return query->run();
}

Outcome writeDayWish(Database &database, const LaneSubject &subject,
                     const std::optional<play::DayWish> &wish)
{
    const SubjectParts parts = partsOf(subject);
    const auto day = dayFromText(parts.second);
    if (!day)
        return Done{}; // a day that does not exist has no place in a week
    Result<Statement> query =
        database.prepare(wish ? "INSERT OR REPLACE INTO planned (home, child, day, wish, activity) "
                                "VALUES (?1, ?2, ?3, ?4, ?5)"
                              : "DELETE FROM planned WHERE home = ?1 AND child = ?2 AND day = ?3");
    if (!query)
        return query.error();
    query->bind(1, subject.lane.scope).bind(2, parts.first).bind(3, std::int64_t{day->number});
    if (wish)
        query->bind(4, play::wishNames.of(wish->wish)).bind(5, wish->activity.value);
    return query->run();
}

} // namespace lidlark::store

#include "core/store/plan_repository.h"

namespace lidlark::store {

namespace {

/// @param query activity, way, lever.
Result<std::map<ActivityId, play::GradingUsed>> readGradings(Statement &query)
{
    std::map<ActivityId, play::GradingUsed> gradings;
    Result<bool> row = query.step();
    for (; row && *row; row = query.step()) {
        const auto way = play::wayNames.parse(query.text(1));
        const auto lever = catalogue::leverNames.parse(query.text(2));
        if (way && lever)
            gradings[{query.text(0)}] = {*way, *lever};
    }
    if (!row)
        return row.error();
    return gradings;
}

} // namespace

Result<std::map<ActivityId, play::GradingUsed>> PlanRepository::gradings(const HomeId &home,
                                                                         const ChildId &child)
{
    Result<Statement> query = m_database.prepare(
        "SELECT activity, way, lever FROM grading WHERE home = ?1 AND child = ?2");
    if (!query)
        return query.error();
    query->bind(1, home.value).bind(2, child.value);
    return readGradings(*query);
}

Result<std::map<ActivityId, play::GradingUsed>> PlanRepository::gradingPins(const BoxId &box)
{
    Result<Statement> query =
        m_database.prepare("SELECT activity, way, lever FROM grading_pin WHERE box = ?1");
    if (!query)
        return query.error();
    query->bind(1, box.value);
    return readGradings(*query);
}

Result<std::map<Day, play::DayWish>> PlanRepository::dayWishes(const HomeId &home,
                                                               const ChildId &child, Day since)
{
    Result<Statement> query = m_database.prepare(
        "SELECT day, wish, activity FROM planned WHERE home = ?1 AND child = ?2 AND day >= ?3");
    if (!query)
        return query.error();
    query->bind(1, home.value).bind(2, child.value).bind(3, std::int64_t{since.number});
    std::map<Day, play::DayWish> wishes;
    Result<bool> row = query->step();
    for (; row && *row; row = query->step()) {
        if (const auto wish = play::wishNames.parse(query->text(1)))
            wishes[Day{static_cast<std::int32_t>(query->number(0))}] = {*wish, {query->text(2)}};
    }
    if (!row)
        return row.error();
    return wishes;
}

} // namespace lidlark::store

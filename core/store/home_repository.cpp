#include "core/store/home_repository.h"

#include "core/child/home_facts.h"
#include "core/journal/lane_home.h"
#include "core/store/rows.h"

#include <sstream>

namespace lidlark::store {

namespace {

constexpr std::string_view playColumns =
    "SELECT id, child, activity, version, author, day, part, started_ms, ending, ended_by, "
    "phrases FROM play ";

Day dayAt(const Statement &row, int column)
{
    return Day{static_cast<std::int32_t>(row.number(column))};
}

play::Play readPlay(const Statement &row)
{
    play::Play play{{row.text(0)},      {row.text(1)},
                    {row.text(2)},      static_cast<int>(row.number(3)),
                    row.text(4),        {dayAt(row, 5), static_cast<PartOfDay>(row.number(6))},
                    {row.number(7), 0}, std::nullopt,
                    row.text(9),        {}};
    if (!row.isNull(8))
        play.ending = play::endingNames.parse(row.text(8));
    std::istringstream words(row.text(10));
    for (std::string word; words >> word;) {
        if (const auto phrase = play::phraseNames.parse(word))
            play.phrases.push_back(*phrase);
    }
    return play;
}

checkin::CheckIn readCheckIn(const Statement &row)
{
    checkin::CheckIn checkIn{
        row.text(0),
        {row.text(1)},
        {dayAt(row, 2), static_cast<PartOfDay>(row.number(3))},
        checkin::kiteNames.parse(row.text(4)).value_or(checkin::Kite::Bag),
        checkin::shownByNames.parse(row.text(5)).value_or(checkin::ShownBy::Child),
        std::nullopt,
        {row.text(7)}};
    if (!row.isNull(6))
        checkIn.after = checkin::kiteNames.parse(row.text(6));
    return checkIn;
}

} // namespace

Result<std::vector<HomeId>> HomeRepository::homes()
{
    Result<Statement> query = m_database.prepare("SELECT DISTINCT home FROM fact ORDER BY home");
    if (!query)
        return query.error();
    return collectRows<HomeId>(*query, [](const Statement &row) { return HomeId{row.text(0)}; });
}

Result<std::vector<HomeId>> HomeRepository::homesOf(const ChildId &child)
{
    Result<Statement> query = m_database.prepare(
        "SELECT home FROM fact WHERE person = ?1 AND fact = 'lives' ORDER BY home");
    if (!query)
        return query.error();
    query->bind(1, child.value);
    return collectRows<HomeId>(*query, [](const Statement &row) { return HomeId{row.text(0)}; });
}

Result<std::optional<child::HomeSheet>> HomeRepository::sheet(const HomeId &home)
{
    Result<Statement> query = m_database.prepare(
        "SELECT person, fact, value FROM fact WHERE home = ?1 ORDER BY person, fact");
    Result<Statement> allowed = m_database.prepare(
        "SELECT name, words, months, version FROM permission WHERE home = ?1 ORDER BY name");
    if (!query || !allowed)
        return query ? allowed.error() : query.error();
    query->bind(1, home.value);
    allowed->bind(1, home.value);
    const auto facts = collectRows<child::Fact>(*query, [](const Statement &row) {
        return child::Fact{row.text(0), row.text(1), row.text(2)};
    });
    const auto permissions = collectRows<child::Permission>(*allowed, [](const Statement &row) {
        return child::Permission{row.text(0), row.text(1), static_cast<int>(row.number(2)),
                                 static_cast<int>(row.number(3))};
    });
    if (!facts || !permissions)
        return facts ? permissions.error() : facts.error();
    if (facts->empty())
        return std::optional<child::HomeSheet>();
    return std::optional(child::homeSheetFrom(home, *facts, *permissions));
}

Result<std::optional<std::string>>
HomeRepository::fact(const HomeId &home, const std::string &person, const std::string &name)
{
    Result<Statement> query =
        m_database.prepare("SELECT value FROM fact WHERE home = ?1 AND person = ?2 AND fact = ?3");
    if (!query)
        return query.error();
    query->bind(1, home.value).bind(2, person).bind(3, name);
    const Result<bool> row = query->step();
    if (!row)
        return row.error();
    return *row ? std::optional(query->text(0)) : std::optional<std::string>();
}

Result<std::vector<play::Play>> HomeRepository::plays(const HomeId &home, const ChildId &child,
                                                      Day since)
{
    Result<Statement> query = m_database.prepare(std::string(playColumns) +
                                                 "WHERE home = ?1 AND child = ?2 AND day >= ?3 "
                                                 "ORDER BY day DESC, started_ms DESC, id");
    if (!query)
        return query.error();
    query->bind(1, home.value).bind(2, child.value).bind(3, std::int64_t{since.number});
    return collectRows<play::Play>(*query, readPlay);
}

Result<std::optional<play::Play>> HomeRepository::play(const PlayId &id)
{
    Result<Statement> query = m_database.prepare(std::string(playColumns) + "WHERE id = ?1");
    if (!query)
        return query.error();
    query->bind(1, id.value);
    const Result<bool> row = query->step();
    if (!row)
        return row.error();
    return *row ? std::optional(readPlay(*query)) : std::optional<play::Play>();
}

Result<bool> HomeRepository::playedOn(Day day)
{
    Result<Statement> query = m_database.prepare(
        "SELECT 1 FROM play WHERE day = ?1 AND substr(home, -length(?2)) <> ?2 LIMIT 1");
    if (!query)
        return query.error();
    query->bind(1, std::int64_t{day.number}).bind(2, journal::sharedPlaysOf({}).scope);
    return query->step();
}

Result<std::map<ActivityId, play::Offered>> HomeRepository::offered(const HomeId &home,
                                                                    const ChildId &child)
{
    Result<Statement> query = m_database.prepare(
        "SELECT activity, day, day_before FROM offered WHERE home = ?1 AND child = ?2");
    if (!query)
        return query.error();
    query->bind(1, home.value).bind(2, child.value);
    std::map<ActivityId, play::Offered> offered;
    Result<bool> row = query->step();
    for (; row && *row; row = query->step())
        offered[{query->text(0)}] = {
            dayAt(*query, 1), query->isNull(2) ? std::nullopt : std::optional(dayAt(*query, 2))};
    if (!row)
        return row.error();
    return offered;
}

Result<std::vector<checkin::CheckIn>> HomeRepository::checkIns(const HomeId &home,
                                                               const ChildId &child, Day since)
{
    Result<Statement> query = m_database.prepare(
        "SELECT id, child, day, part, before, shown_by, after, activity FROM check_in "
        "WHERE home = ?1 AND child = ?2 AND day >= ?3 ORDER BY day, part, id");
    if (!query)
        return query.error();
    query->bind(1, home.value).bind(2, child.value).bind(3, std::int64_t{since.number});
    return collectRows<checkin::CheckIn>(*query, readCheckIn);
}

Result<std::vector<child::Goal>> HomeRepository::goals(const ChildId &child)
{
    Result<Statement> query =
        m_database.prepare("SELECT fields FROM goal WHERE child = ?1 ORDER BY id");
    if (!query)
        return query.error();
    query->bind(1, child.value);
    std::vector<child::Goal> goals;
    Result<bool> row = query->step();
    for (; row && *row; row = query->step()) {
        if (const auto goal = child::goalFromFields(query->text(0)))
            goals.push_back(goal->goal);
    }
    if (!row)
        return row.error();
    return goals;
}

Result<std::optional<std::string>> HomeRepository::readingLanguage(const HomeId &home,
                                                                   const std::string &person)
{
    Result<Statement> query =
        m_database.prepare("SELECT language FROM reads WHERE home = ?1 AND person = ?2");
    if (!query)
        return query.error();
    query->bind(1, home.value).bind(2, person);
    const Result<bool> row = query->step();
    if (!row)
        return row.error();
    return *row ? std::optional(query->text(0)) : std::optional<std::string>();
}

} // namespace lidlark::store

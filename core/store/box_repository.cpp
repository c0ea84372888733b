#include "core/store/box_repository.h"

#include "core/journal/event.h"
#include "core/store/item_reading.h"
#include "core/store/rows.h"

namespace lidlark::store {

namespace {

BoxRow readBox(const Statement &row)
{
    return {{row.text(0)}, {row.text(1)}, row.text(2)};
}

DayPart readDayPart(const Statement &row, int column)
{
    return {Day{static_cast<std::int32_t>(row.number(column))},
            static_cast<PartOfDay>(row.number(column + 1))};
}

OutcomeRow readOutcome(const Statement &row)
{
    OutcomeRow outcome{{row.text(0)}, {row.text(1)}, {}, row.text(7)};
    for (std::size_t i = 0; i < box::exceptionKindCount; ++i)
        outcome.exceptions.counts[i] = static_cast<int>(row.number(static_cast<int>(2 + i)));
    return outcome;
}

} // namespace

Result<std::vector<BoxRow>> BoxRepository::boxes()
{
    Result<Statement> query =
        m_database.prepare("SELECT id, child, alias FROM box ORDER BY alias, id");
    if (!query)
        return query.error();
    return collectRows<BoxRow>(*query, readBox);
}

Result<BoxRow> BoxRepository::boxWhere(std::string_view condition, const std::string &value)
{
    Result<Statement> query = m_database.prepare("SELECT id, child, alias FROM box WHERE " +
                                                 std::string(condition) + " ORDER BY id LIMIT 1");
    if (!query)
        return query.error();
    query->bind(1, value);
    const Result<bool> row = query->step();
    if (!row)
        return row.error();
    if (!*row)
        return Error{ErrorCode::NotFound, "a box for " + value};
    return readBox(*query);
}

Result<BoxRow> BoxRepository::boxOf(const std::string &childAlias)
{
    return boxWhere("alias = ?1 COLLATE NOCASE", childAlias);
}

Result<BoxRow> BoxRepository::boxOfChild(const ChildId &child)
{
    return boxWhere("child = ?1", child.value);
}

Result<std::optional<RevisionRow>> BoxRepository::revision(const BoxId &box)
{
    Result<Statement> query =
        m_database.prepare("SELECT packed, issued_day, heads, begun_day FROM box_revision "
                           "WHERE box = ?1");
    if (!query)
        return query.error();
    query->bind(1, box.value);
    const Result<bool> row = query->step();
    if (!row)
        return row.error();
    if (!*row)
        return std::optional<RevisionRow>();
    journal::Event event;
    event.kind = journal::Kind::Revision;
    event.fields = query->text(0);
    const auto revision = box::readRevision(event);
    if (!revision)
        return Error{ErrorCode::Unreadable, "lid list"};
    return std::optional(RevisionRow{*revision, Day{static_cast<std::int32_t>(query->number(1))},
                                     static_cast<int>(query->number(2)),
                                     Day{static_cast<std::int32_t>(query->number(3))}});
}

Result<std::optional<box::PlaceSaid>> BoxRepository::placeIn(const std::string &table,
                                                             const BoxId &box)
{
    Result<Statement> query = m_database.prepare("SELECT place, words, author, day, part FROM " +
                                                 table + " WHERE box = ?1");
    if (!query)
        return query.error();
    query->bind(1, box.value);
    const Result<bool> row = query->step();
    if (!row)
        return row.error();
    if (!*row)
        return std::optional<box::PlaceSaid>();
    return std::optional(
        box::PlaceSaid{query->text(0), query->text(1), query->text(2), readDayPart(*query, 3)});
}

Result<std::optional<box::Place>> BoxRepository::place(const BoxId &box)
{
    const auto said = placeIn("box_place", box);
    const auto too = placeIn("box_place_too", box);
    if (!said || !too)
        return said ? too.error() : said.error();
    if (!*said)
        return std::optional<box::Place>();
    return std::optional(box::Place{**said, *too});
}

Result<std::vector<ItemRow>> BoxRepository::items(const BoxId &box)
{
    return readItems(m_database, box);
}

Result<std::vector<LossRow>> BoxRepository::openLosses(const BoxId &box)
{
    Result<Statement> query =
        m_database.prepare("SELECT item, identity, pieces, author, day, part FROM loss "
                           "WHERE box = ?1 AND closed = 0 ORDER BY day, part, item, identity");
    if (!query)
        return query.error();
    query->bind(1, box.value);
    return collectRows<LossRow>(*query, [](const Statement &row) {
        return LossRow{{row.text(0)},
                       row.text(1),
                       static_cast<int>(row.number(2)),
                       row.text(3),
                       readDayPart(row, 4)};
    });
}

Result<std::vector<OutcomeRow>> BoxRepository::outcomes(const BoxId &box)
{
    Result<Statement> query = m_database.prepare(
        "SELECT item, play, used_up, lost, broken, dried_out, still_in_use, author "
        "FROM outcome WHERE box = ?1 ORDER BY play, item");
    if (!query)
        return query.error();
    query->bind(1, box.value);
    return collectRows<OutcomeRow>(*query, readOutcome);
}

} // namespace lidlark::store

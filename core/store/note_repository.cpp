#include "core/store/note_repository.h"

#include "core/store/rows.h"

namespace lidlark::store {

namespace {

DayPart momentAt(const Statement &row, int column)
{
    return {Day{static_cast<std::int32_t>(row.number(column))},
            static_cast<PartOfDay>(row.number(column + 1))};
}

play::OwnNote noteFrom(const Statement &row)
{
    play::OwnNote note;
    note.id = row.text(0);
    note.child = {row.text(1)};
    note.words = row.text(2);
    note.phrase = play::notePhraseNames.parse(row.text(3));
    note.author = row.text(4);
    note.when = momentAt(row, 5);
    note.at = {row.number(7), static_cast<std::uint32_t>(row.number(8))};
    note.sent = row.number(9) == 1;
    return note;
}

} // namespace

Result<std::optional<play::OurWay>> NoteRepository::ourWay(const HomeId &home, const ChildId &child,
                                                           const ActivityId &activity)
{
    Result<Statement> query =
        m_database.prepare("SELECT words, author, day, part FROM our_way "
                           "WHERE home = ?1 AND child = ?2 AND activity = ?3");
    if (!query)
        return query.error();
    query->bind(1, home.value).bind(2, child.value).bind(3, activity.value);
    const Result<bool> row = query->step();
    if (!row)
        return row.error();
    if (!*row)
        return std::optional<play::OurWay>();
    return std::optional(play::OurWay{query->text(0), query->text(1), momentAt(*query, 2)});
}

Result<std::vector<play::OwnNote>> NoteRepository::notes(const std::string &owner,
                                                         const ChildId &child)
{
    Result<Statement> query = m_database.prepare(
        "SELECT id, child, words, phrase, author, day, part, at_ms, at_logical, sent "
        "FROM own_note WHERE owner = ?1 AND child = ?2 AND removed_day IS NULL "
        "ORDER BY at_ms DESC, at_logical DESC, id");
    if (!query)
        return query.error();
    query->bind(1, owner).bind(2, child.value);
    return collectRows<play::OwnNote>(*query, noteFrom);
}

Result<std::vector<std::string>> NoteRepository::removedBefore(const std::string &owner, Day day)
{
    Result<Statement> query = m_database.prepare(
        "SELECT id FROM own_note WHERE owner = ?1 AND removed_day < ?2 ORDER BY id");
    if (!query)
        return query.error();
    query->bind(1, owner).bind(2, std::int64_t{day.number});
    return collectRows<std::string>(*query, [](const Statement &row) { return row.text(0); });
}

} // namespace lidlark::store

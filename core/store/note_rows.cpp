#include "core/store/note_rows.h"

#include "core/store/subject_parts.h"

namespace lidlark::store {

Outcome writeOurWay(Database &database, const LaneSubject &subject,
                    const std::optional<play::OurWay> &way)
{
    const SubjectParts parts = partsOf(subject);
    Result<Statement> query = database.prepare(
        way ? "INSERT OR REPLACE INTO our_way (home, child, activity, words, author, day, part) "
              "VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)"
            : "DELETE FROM our_way WHERE home = ?1 AND child = ?2 AND activity = ?3");
    if (!query)
        return query.error();
    query->bind(1, subject.lane.scope).bind(2, parts.first).bind(3, parts.second);
    if (way)
        query->bind(4, way->words)
            .bind(5, way->author)
            .bind(6, std::int64_t{way->when.day.number})
            .bind(7, static_cast<std::int64_t>(way->when.part));
    return query->run();
}

Outcome writeOwnNote(Database &database, const LaneSubject &subject,
                     const std::optional<play::OwnNote> &note)
{
    Result<Statement> query = database.prepare(
        note ? "INSERT OR REPLACE INTO own_note (owner, id, child, words, phrase, author, day, "
               "part, at_ms, at_logical, sent, removed_day) "
               "VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12)"
             : "DELETE FROM own_note WHERE owner = ?1 AND id = ?2");
    if (!query)
        return query.error();
    query->bind(1, subject.lane.scope).bind(2, partsOf(subject).first);
    if (note)
        query->bind(3, note->child.value)
            .bind(4, note->words)
            .bind(5, note->phrase ? play::notePhraseNames.of(*note->phrase) : std::string_view(""))
            .bind(6, note->author)
            .bind(7, std::int64_t{note->when.day.number})
            .bind(8, static_cast<std::int64_t>(note->when.part))
            .bind(9, note->at.ms)
            .bind(10, std::int64_t{note->at.logical})
            .bind(11, std::int64_t{note->sent ? 1 : 0})
            .bind(12, note->removed ? std::optional<std::int64_t>(note->removed->number)
                                    : std::nullopt);
    return query->run();
}

} // namespace lidlark::store

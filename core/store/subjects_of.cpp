#include "core/store/subjects_of.h"

#include "core/store/rows.h"

namespace lidlark::store {

Result<std::vector<LaneSubject>> subjectsOf(Database &database, const journal::Lane &lane,
                                            std::string_view sort)
{
    // The character after the colon ends the range.
    Result<Statement> query =
        database.prepare("SELECT DISTINCT subject FROM event WHERE lane = ?1 AND subject >= ?2 "
                         "AND subject < ?3 AND erased = 0 ORDER BY subject");
    if (!query)
        return query.error();
    const std::string from(sort);
    query->bind(1, journal::toText(lane))
        .bind(2, from)
        .bind(3, from.substr(0, from.size() - 1) + ';');
    return collectRows<LaneSubject>(*query, [&lane](const Statement &row) {
        return LaneSubject{lane, row.text(0)};
    });
}

} // namespace lidlark::store

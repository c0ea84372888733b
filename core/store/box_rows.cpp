#include "core/store/box_rows.h"

#include "core/journal/fields.h"

namespace lidlark::store {

namespace {

constexpr std::string_view replaceBox =
    "INSERT OR REPLACE INTO box (id, child, alias) VALUES (?1, ?2, ?3)";
constexpr std::string_view replaceRevision = "INSERT OR REPLACE INTO box_revision "
                                             "(box, number, issued_day, packed, heads, began, "
                                             "begun_day) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)";
constexpr std::string_view placeColumns =
    " (box, place, words, author, day, part) VALUES (?1, ?2, ?3, ?4, ?5, ?6)";

Outcome writePlaceInto(Database &database, const std::string &table, const std::string &box,
                       const std::optional<box::PlaceSaid> &place)
{
    Result<Statement> query =
        database.prepare(place ? "INSERT OR REPLACE INTO " + table + std::string(placeColumns)
                               : "DELETE FROM " + table + " WHERE box = ?1");
    if (!query)
        return query.error();
    query->bind(1, box);
    if (place)
        query->bind(2, place->place)
            .bind(3, place->words)
            .bind(4, place->author)
            .bind(5, std::int64_t{place->when.day.number})
            .bind(6, static_cast<std::int64_t>(place->when.part));
    return query->run();
}

} // namespace

Outcome writeBox(Database &database, const std::string &box, const journal::Event &child)
{
    const journal::Fields fields(child.fields);
    Result<Statement> query = database.prepare(replaceBox);
    if (!query)
        return query.error();
    return query->bind(1, box)
        .bind(2, fields.text("child").value_or(""))
        .bind(3, fields.text("alias").value_or(""))
        .run();
}

Outcome writeLidList(Database &database, const std::string &box, const box::LidList &list)
{
    nlohmann::json began = nlohmann::json::object();
    for (const auto &[item, pieces] : list.began)
        began[item.value] = pieces;
    Result<Statement> query = database.prepare(replaceRevision);
    if (!query)
        return query.error();
    return query->bind(1, box)
        .bind(2, std::int64_t{list.inForce.number})
        .bind(3, std::int64_t{list.issued.number})
        .bind(4, box::fieldsOf(list.inForce))
        .bind(5, std::int64_t{list.heads})
        .bind(6, began.dump())
        .bind(7, std::int64_t{list.begun.number})
        .run();
}

Outcome writePlace(Database &database, const std::string &box,
                   const std::optional<box::Place> &place)
{
    const std::optional<box::PlaceSaid> first = place;
    if (Outcome done = writePlaceInto(database, "box_place", box, first); !done)
        return done;
    return writePlaceInto(database, "box_place_too", box, place ? place->orElse : std::nullopt);
}

} // namespace lidlark::store

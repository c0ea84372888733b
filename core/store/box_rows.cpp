#include "core/store/box_rows.h"

#include "core/journal/fields.h"

namespace lidlark::store {

namespace {

constexpr std::string_view replaceBox =
    "INSERT OR REPLACE INTO box (id, child, alias) VALUES (?1, ?2, ?3)";
constexpr std::string_view replaceRevision =
    "INSERT OR REPLACE INTO box_revision (box, number, issued_day, packed) VALUES (?1, ?2, ?3, ?4)";
constexpr std::string_view replacePlace =
    "INSERT OR REPLACE INTO box_place (box, place, words, author, day, part) "
    "VALUES (?1, ?2, ?3, ?4, ?5, ?6)";
constexpr std::string_view replaceItem = R"sql(
    INSERT OR REPLACE INTO box_item
        (box, item, expected, low, high, still_out, opened_day, dried_out, please_count)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9))sql";
constexpr std::string_view insertLoss = R"sql(
    INSERT INTO loss (box, item, identity, pieces, closed, author, day, part)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8))sql";
constexpr std::string_view insertOutcome = R"sql(
    INSERT INTO outcome (box, item, play, used_up, lost, broken, dried_out, still_in_use, author)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9))sql";

Outcome clearItem(Database &database, const std::string &box, const ItemId &item)
{
    for (const char *table : {"box_item", "loss", "outcome"}) {
        Result<Statement> query =
            database.prepare(std::string("DELETE FROM ") + table + " WHERE box = ?1 AND item = ?2");
        if (!query)
            return query.error();
        if (Outcome done = query->bind(1, box).bind(2, item.value).run(); !done)
            return done;
    }
    return Done{};
}

Outcome writeLosses(Database &database, const std::string &box, const ItemId &item,
                    const box::ItemLedger &ledger)
{
    Result<Statement> query = database.prepare(insertLoss);
    if (!query)
        return query.error();
    for (const box::Loss &loss : ledger.losses) {
        query->bind(1, box)
            .bind(2, item.value)
            .bind(3, loss.identity)
            .bind(4, std::int64_t{loss.pieces})
            .bind(5, std::int64_t{loss.closed ? 1 : 0})
            .bind(6, loss.author)
            .bind(7, std::int64_t{loss.when.day.number})
            .bind(8, static_cast<std::int64_t>(loss.when.part));
        if (Outcome done = query->run(); !done)
            return done;
    }
    return Done{};
}

Outcome writeOutcomes(Database &database, const std::string &box, const ItemId &item,
                      const box::ItemLedger &ledger)
{
    Result<Statement> query = database.prepare(insertOutcome);
    if (!query)
        return query.error();
    for (const box::PlayOutcome &outcome : ledger.outcomes) {
        query->bind(1, box).bind(2, item.value).bind(3, outcome.play.value);
        for (std::size_t i = 0; i < box::exceptionKindCount; ++i)
            query->bind(static_cast<int>(4 + i), std::int64_t{outcome.exceptions.counts[i]});
        if (Outcome done = query->bind(9, outcome.author).run(); !done)
            return done;
    }
    return Done{};
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

Outcome writeRevision(Database &database, const std::string &box, const box::Revision &revision,
                      Day issued)
{
    Result<Statement> query = database.prepare(replaceRevision);
    if (!query)
        return query.error();
    return query->bind(1, box)
        .bind(2, std::int64_t{revision.number})
        .bind(3, std::int64_t{issued.number})
        .bind(4, box::fieldsOf(revision))
        .run();
}

Outcome writePlace(Database &database, const std::string &box, const box::Place &place)
{
    Result<Statement> query = database.prepare(replacePlace);
    if (!query)
        return query.error();
    return query->bind(1, box)
        .bind(2, place.place)
        .bind(3, place.words)
        .bind(4, place.author)
        .bind(5, std::int64_t{place.when.day.number})
        .bind(6, static_cast<std::int64_t>(place.when.part))
        .run();
}

Outcome clearItems(Database &database, const std::string &box)
{
    Result<Statement> query = database.prepare("DELETE FROM box_item WHERE box = ?1");
    if (!query)
        return query.error();
    return query->bind(1, box).run();
}

Outcome writeItem(Database &database, const std::string &box, const ItemId &item, int expected,
                  const box::ItemLedger &ledger)
{
    if (Outcome done = clearItem(database, box, item); !done)
        return done;
    Result<Statement> query = database.prepare(replaceItem);
    if (!query)
        return query.error();
    const auto opened =
        ledger.opened ? std::optional<std::int64_t>(ledger.opened->number) : std::nullopt;
    query->bind(1, box)
        .bind(2, item.value)
        .bind(3, std::int64_t{expected})
        .bind(4, std::int64_t{ledger.low()})
        .bind(5, std::int64_t{ledger.high()})
        .bind(6, std::int64_t{ledger.careful.out})
        .bind(7, opened)
        .bind(8, std::int64_t{ledger.driedOut ? 1 : 0})
        .bind(9, std::int64_t{ledger.pleaseCount() ? 1 : 0});
    if (Outcome done = query->run(); !done)
        return done;
    if (Outcome done = writeLosses(database, box, item, ledger); !done)
        return done;
    return writeOutcomes(database, box, item, ledger);
}

} // namespace lidlark::store

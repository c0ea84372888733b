#include "core/store/item_rows.h"

#include "core/store/question_text.h"

#include <functional>

namespace lidlark::store {

namespace {

constexpr const char *itemTables[] = {"box_item", "loss",  "outcome", "item_arrival",
                                      "item_use", "piece", "request", "question"};

constexpr std::string_view insertItem = R"sql(
    INSERT INTO box_item
        (box, item, expected, low, high, still_out, dried_out, please_count, counted_day,
         checked_day, keeps_days, mouthed, mouthed_by, mouthed_day, mouthed_part)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15))sql";
constexpr std::string_view insertLoss = R"sql(
    INSERT INTO loss (box, item, identity, pieces, closed, author, day, part)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8))sql";
constexpr std::string_view insertOutcome = R"sql(
    INSERT INTO outcome (box, item, play, used_up, lost, broken, dried_out, still_in_use, author)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9))sql";
constexpr std::string_view insertArrival =
    "INSERT INTO item_arrival (box, item, place, round, day, pieces) "
    "VALUES (?1, ?2, ?3, ?4, ?5, ?6)";
constexpr std::string_view insertUse =
    "INSERT INTO item_use (box, item, day, kind, pieces) VALUES (?1, ?2, ?3, ?4, ?5)";
constexpr std::string_view insertPiece =
    "INSERT INTO piece (box, item, piece, opened_day, times_left_open) VALUES (?1, ?2, ?3, ?4, ?5)";
constexpr std::string_view insertRequest = R"sql(
    INSERT INTO request (box, item, round, step, instead_of, asked_by, asked_day, asked_part,
                         step_by, step_day, step_part)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11))sql";
constexpr std::string_view insertQuestion =
    "INSERT INTO question (box, item, id, fields) VALUES (?1, ?2, ?3, ?4)";

std::int64_t flag(bool value)
{
    return value ? 1 : 0;
}

std::optional<std::int64_t> number(const std::optional<Day> &day)
{
    return day ? std::optional<std::int64_t>(day->number) : std::nullopt;
}

std::optional<std::int64_t> number(const std::optional<int> &value)
{
    return value ? std::optional<std::int64_t>(*value) : std::nullopt;
}

std::int64_t dayOf(const DayPart &when)
{
    return when.day.number;
}

std::int64_t partOf(const DayPart &when)
{
    return static_cast<std::int64_t>(when.part);
}

/// Which item of which box the rows are of.
struct Where {
    Database &database;
    const std::string &box;
    const ItemId &item;

    /// One row for each value; parameters 1 and 2 are the box and the item.
    template <class Value>
    Outcome insertAll(std::string_view sql, const std::vector<Value> &values,
                      const std::function<void(Statement &, const Value &)> &bind) const
    {
        if (values.empty())
            return Done{};
        Result<Statement> query = database.prepare(sql);
        if (!query)
            return query.error();
        for (const Value &value : values) {
            query->bind(1, box).bind(2, item.value);
            bind(*query, value);
            if (Outcome done = query->run(); !done)
                return done;
        }
        return Done{};
    }
};

Outcome clearRows(const Where &where)
{
    for (const char *table : itemTables) {
        Result<Statement> query = where.database.prepare(std::string("DELETE FROM ") + table +
                                                         " WHERE box = ?1 AND item = ?2");
        if (!query)
            return query.error();
        if (Outcome done = query->bind(1, where.box).bind(2, where.item.value).run(); !done)
            return done;
    }
    return Done{};
}

void bindItem(Statement &row, const ItemState &state)
{
    const box::ItemLedger &ledger = state.ledger;
    const box::ItemCare &care = state.care;
    row.bind(3, std::int64_t{state.expected})
        .bind(4, std::int64_t{ledger.low()})
        .bind(5, std::int64_t{ledger.high()})
        .bind(6, std::int64_t{std::max(0, ledger.careful.out)})
        .bind(7, flag(ledger.driedOut))
        .bind(8, flag(ledger.pleaseCount()))
        .bind(9, number(ledger.counted))
        .bind(10, number(care.checked))
        .bind(11, number(care.keepsDays))
        .bind(12, flag(care.mouthed))
        .bind(13, care.mouthedBy)
        .bind(14, dayOf(care.mouthedWhen))
        .bind(15, partOf(care.mouthedWhen));
}

void bindLoss(Statement &row, const box::Loss &loss)
{
    row.bind(3, loss.identity)
        .bind(4, std::int64_t{loss.pieces})
        .bind(5, flag(loss.closed))
        .bind(6, loss.author)
        .bind(7, dayOf(loss.when))
        .bind(8, partOf(loss.when));
}

void bindOutcome(Statement &row, const box::PlayOutcome &outcome)
{
    row.bind(3, outcome.play.value);
    for (std::size_t i = 0; i < box::exceptionKindCount; ++i)
        row.bind(static_cast<int>(4 + i), std::int64_t{outcome.exceptions.counts[i]});
    row.bind(9, outcome.author);
}

void bindUse(Statement &row, const box::DatedUse &use)
{
    row.bind(3, std::int64_t{use.day.number})
        .bind(4, box::exceptionKindNames.of(use.kind))
        .bind(5, std::int64_t{use.pieces});
}

void bindPiece(Statement &row, const box::Piece &piece)
{
    row.bind(3, piece.id.value)
        .bind(4, number(piece.opened))
        .bind(5, std::int64_t{piece.timesLeftOpen});
}

void bindRequest(Statement &row, const box::Request &request)
{
    row.bind(3, std::int64_t{request.round})
        .bind(4, box::requestStepNames.of(request.step))
        .bind(5, request.insteadOf.value)
        .bind(6, request.askedBy)
        .bind(7, dayOf(request.asked))
        .bind(8, partOf(request.asked))
        .bind(9, request.stepBy)
        .bind(10, dayOf(request.stepWhen))
        .bind(11, partOf(request.stepWhen));
}

Outcome writeArrivals(const Where &where, const std::vector<box::Arrival> &arrivals)
{
    std::int64_t place = 0;
    return where.insertAll<box::Arrival>(insertArrival, arrivals,
                                         [&place](Statement &row, const box::Arrival &arrival) {
                                             row.bind(3, place++)
                                                 .bind(4, number(arrival.round))
                                                 .bind(5, std::int64_t{arrival.day.number})
                                                 .bind(6, std::int64_t{arrival.pieces});
                                         });
}

Outcome writeQuestions(const Where &where, const std::vector<box::Question> &questions)
{
    return where.insertAll<box::Question>(insertQuestion, questions,
                                          [](Statement &row, const box::Question &question) {
                                              row.bind(3, question.id).bind(4, textOf(question));
                                          });
}

} // namespace

Outcome clearItems(Database &database, const std::string &box)
{
    for (const char *table : itemTables) {
        Result<Statement> query =
            database.prepare(std::string("DELETE FROM ") + table + " WHERE box = ?1");
        if (!query)
            return query.error();
        if (Outcome done = query->bind(1, box).run(); !done)
            return done;
    }
    return Done{};
}

Outcome clearItem(Database &database, const std::string &box, const ItemId &item)
{
    return clearRows({database, box, item});
}

Outcome writeItem(Database &database, const std::string &box, const ItemId &item,
                  const ItemState &state)
{
    const Where where{database, box, item};
    const std::vector<ItemState> only{state};
    const auto steps = {
        std::function([&] { return clearRows(where); }),
        std::function([&] { return where.insertAll<ItemState>(insertItem, only, bindItem); }),
        std::function(
            [&] { return where.insertAll<box::Loss>(insertLoss, state.ledger.losses, bindLoss); }),
        std::function([&] {
            return where.insertAll<box::PlayOutcome>(insertOutcome, state.ledger.outcomes,
                                                     bindOutcome);
        }),
        std::function([&] { return writeArrivals(where, state.ledger.arrivals); }),
        std::function(
            [&] { return where.insertAll<box::DatedUse>(insertUse, state.ledger.uses, bindUse); }),
        std::function(
            [&] { return where.insertAll<box::Piece>(insertPiece, state.care.pieces, bindPiece); }),
        std::function([&] {
            return where.insertAll<box::Request>(insertRequest, state.requests, bindRequest);
        }),
        std::function([&] { return writeQuestions(where, state.ledger.questions); }),
    };
    for (const auto &step : steps) {
        if (Outcome done = step(); !done)
            return done;
    }
    return Done{};
}

} // namespace lidlark::store

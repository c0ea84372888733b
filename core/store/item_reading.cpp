#include "core/store/item_reading.h"

#include "core/store/question_text.h"

#include <functional>
#include <map>

namespace lidlark::store {

namespace {

/// Column 0 of every query is the item.
constexpr std::string_view selectItems = R"sql(
    SELECT item, expected, low, high, still_out, dried_out, please_count, counted_day,
           checked_day, keeps_days, mouthed, mouthed_by, mouthed_day, mouthed_part
    FROM box_item WHERE box = ?1 ORDER BY item)sql";
constexpr std::string_view selectArrivals =
    "SELECT item, round, day, pieces FROM item_arrival WHERE box = ?1 ORDER BY item, place";
constexpr std::string_view selectUses =
    "SELECT item, day, kind, pieces FROM item_use WHERE box = ?1 ORDER BY item, day, kind";
constexpr std::string_view selectPieces =
    "SELECT item, piece, opened_day, times_left_open FROM piece WHERE box = ?1 "
    "ORDER BY item, piece";
constexpr std::string_view selectRequests = R"sql(
    SELECT item, round, step, instead_of, asked_by, asked_day, asked_part, step_by, step_day,
           step_part
    FROM request WHERE box = ?1 ORDER BY item, round)sql";
constexpr std::string_view selectQuestions =
    "SELECT item, fields FROM question WHERE box = ?1 ORDER BY item, id";

int wholeAt(const Statement &row, int column)
{
    return static_cast<int>(row.number(column));
}

Day dayAt(const Statement &row, int column)
{
    return {static_cast<std::int32_t>(row.number(column))};
}

DayPart dayPartAt(const Statement &row, int column)
{
    return {dayAt(row, column), static_cast<PartOfDay>(row.number(column + 1))};
}

std::optional<Day> maybeDayAt(const Statement &row, int column)
{
    return row.isNull(column) ? std::nullopt : std::optional(dayAt(row, column));
}

std::optional<int> maybeWholeAt(const Statement &row, int column)
{
    return row.isNull(column) ? std::nullopt : std::optional(wholeAt(row, column));
}

ItemRow itemAt(const Statement &row)
{
    ItemRow item;
    item.item = {row.text(0)};
    item.expected = wholeAt(row, 1);
    item.low = wholeAt(row, 2);
    item.high = wholeAt(row, 3);
    item.out = wholeAt(row, 4);
    item.driedOut = row.number(5) != 0;
    item.pleaseCount = row.number(6) != 0;
    item.counted = maybeDayAt(row, 7);
    item.care.checked = maybeDayAt(row, 8);
    item.care.keepsDays = maybeWholeAt(row, 9);
    item.care.mouthed = row.number(10) != 0;
    item.care.mouthedBy = row.text(11);
    item.care.mouthedWhen = dayPartAt(row, 12);
    return item;
}

void addArrival(ItemRow &item, const Statement &row)
{
    item.arrivals.push_back({maybeWholeAt(row, 1), dayAt(row, 2), wholeAt(row, 3)});
}

void addUse(ItemRow &item, const Statement &row)
{
    if (const auto kind = box::exceptionKindNames.parse(row.text(2)))
        item.uses.push_back({dayAt(row, 1), *kind, wholeAt(row, 3)});
}

void addPiece(ItemRow &item, const Statement &row)
{
    item.care.pieces.push_back({{row.text(1)}, maybeDayAt(row, 2), wholeAt(row, 3)});
}

void addRequest(ItemRow &item, const Statement &row)
{
    if (const auto step = box::requestStepNames.parse(row.text(2)))
        item.requests.push_back({wholeAt(row, 1),
                                 *step,
                                 {row.text(3)},
                                 row.text(4),
                                 dayPartAt(row, 5),
                                 row.text(7),
                                 dayPartAt(row, 8)});
}

void addQuestion(ItemRow &item, const Statement &row)
{
    if (auto question = questionFrom(row.text(1)))
        item.questions.push_back(*std::move(question));
}

/// Which query fills which list of a row.
struct Filling {
    std::string_view sql;
    void (*add)(ItemRow &, const Statement &);
};
constexpr Filling fillings[] = {{selectArrivals, addArrival},
                                {selectUses, addUse},
                                {selectPieces, addPiece},
                                {selectRequests, addRequest},
                                {selectQuestions, addQuestion}};

} // namespace

Result<std::vector<ItemRow>> readItems(Database &database, const BoxId &box)
{
    Result<Statement> query = database.prepare(selectItems);
    if (!query)
        return query.error();
    query->bind(1, box.value);
    std::vector<ItemRow> items;
    std::map<std::string, std::size_t> at;
    Result<bool> row = query->step();
    for (; row && *row; row = query->step()) {
        at[query->text(0)] = items.size();
        items.push_back(itemAt(*query));
    }
    if (!row)
        return row.error();
    for (const Filling &filling : fillings) {
        Result<Statement> part = database.prepare(filling.sql);
        if (!part)
            return part.error();
        part->bind(1, box.value);
        Result<bool> one = part->step();
        for (; one && *one; one = part->step()) {
            if (const auto item = at.find(part->text(0)); item != at.end())
                filling.add(items[item->second], *part);
        }
        if (!one)
            return one.error();
    }
    return items;
}

} // namespace lidlark::store

#include "core/cli/goals_command.h"

#include "core/cli/commands.h"
#include "core/cli/csv_table.h"
#include "core/cli/file_contents.h"

#include "core/goals/attainment.h"

#include <charconv>
#include <cmath>
#include <iomanip>
#include <iostream>

namespace lidlark::cli {

namespace {

using Goals = std::vector<goals::WeighedLevel>;

Error invalid(const std::string &field, const std::string &reason)
{
    return {ErrorCode::Invalid, field + ": " + reason};
}

/// Where the columns stand in this table.
struct GoalColumns {
    std::size_t id = 0;
    std::size_t weights = 0;
    std::size_t levels = 0;
    std::optional<std::size_t> rho;
};

Result<GoalColumns> goalColumnsOf(const CsvTable &table)
{
    const auto id = table.column("id");
    const auto weights = table.column("weights");
    const auto levels = table.column("levels");
    for (const auto &[name, found] :
         {std::pair("id", id), {"weights", weights}, {"levels", levels}}) {
        if (!found)
            return Error{ErrorCode::Invalid, std::string("line 1: no column ") + name +
                                                 ". The columns are id,weights,levels,rho"};
    }
    return GoalColumns{*id, *weights, *levels, table.column("rho")};
}

/// "3;;1" has three parts, the second of them empty. The parts lie in @p cell.
std::vector<std::string_view> partsOf(std::string_view cell)
{
    std::vector<std::string_view> parts;
    for (std::size_t begin = 0; begin <= cell.size();) {
        const std::size_t end = std::min(cell.find(';', begin), cell.size());
        std::string_view part = cell.substr(begin, end - begin);
        while (part.starts_with(' '))
            part.remove_prefix(1);
        while (part.ends_with(' '))
            part.remove_suffix(1);
        parts.push_back(part);
        begin = end + 1;
    }
    return parts;
}

Result<double> numberFrom(const std::string &field, std::string_view text)
{
    double number = 0;
    const std::string_view digits = text.starts_with('+') ? text.substr(1) : text;
    const char *end = digits.data() + digits.size();
    const auto [stopped, failed] = std::from_chars(digits.data(), end, number);
    if (failed != std::errc() || stopped != end || !std::isfinite(number))
        return invalid(field, "not a number: " + std::string(text));
    return number;
}

/// A level nobody has given is left empty.
Result<std::optional<int>> levelFrom(std::string_view text)
{
    if (text.empty())
        return std::optional<int>();
    const Result<double> number = numberFrom("levels", text);
    if (!number)
        return number.error();
    if (*number < goals::lowestLevel || *number > goals::highestLevel ||
        *number != std::floor(*number))
        return invalid("levels", std::string(text) + " is none of -2, -1, 0, 1, 2");
    return std::optional(static_cast<int>(*number));
}

Result<Goals> goalsOf(std::string_view weightCell, std::string_view levelCell)
{
    const auto weights = partsOf(weightCell);
    const auto levels = partsOf(levelCell);
    if (weights.size() != levels.size())
        return invalid("levels", std::to_string(levels.size()) + ", but " +
                                     std::to_string(weights.size()) + " weights");
    Goals read;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        const Result<double> weight = numberFrom("weights", weights[i]);
        if (!weight)
            return weight.error();
        if (*weight < 0)
            return invalid("weights", std::string(weights[i]) + " is below 0");
        const auto level = levelFrom(levels[i]);
        if (!level)
            return level.error();
        read.push_back({*weight, *level});
    }
    return read;
}

Result<double> rhoOf(const CsvRow &row, const GoalColumns &columns)
{
    const std::string_view cell = columns.rho ? row.cell(*columns.rho) : std::string_view();
    if (cell.empty())
        return goals::usualCorrelation;
    const Result<double> rho = numberFrom("rho", cell);
    if (rho && (*rho < 0 || *rho > 1))
        return invalid("rho", std::string(cell) + " is not within 0 to 1");
    return rho;
}

Result<double> scoreOf(const CsvRow &row, const GoalColumns &columns, std::size_t width)
{
    if (row.torn)
        return invalid("row", "a quote is in the wrong place or not closed");
    if (row.cells.size() > width)
        return invalid("row", "more cells than the header has");
    const Result<Goals> read = goalsOf(row.cell(columns.weights), row.cell(columns.levels));
    const Result<double> rho = rhoOf(row, columns);
    if (!read || !rho)
        return read ? rho.error() : read.error();
    const std::optional<double> score = goals::attainmentScore(*read, *rho);
    if (!score)
        return invalid("weights", "no goal that is rated has a weight above 0");
    return *score;
}

} // namespace

int runGoals(const std::string &csv)
{
    const std::optional<std::string> text = contentsOf(csv);
    if (!text || text->empty())
        return noAnswer("nothing could be read from " + csv);
    const CsvTable table = csvFrom(*text);
    const Result<GoalColumns> columns = goalColumnsOf(table);
    if (!columns)
        return noAnswer(columns.error().detail);
    int status = allWell;
    std::cout << "id,t\n" << std::fixed << std::setprecision(12);
    for (const CsvRow &row : table.rows) {
        const Result<double> score = scoreOf(row, *columns, table.header.cells.size());
        const std::string id(row.cell(columns->id));
        std::cout << csvCell(id) << ',';
        if (score)
            std::cout << *score;
        else
            status = noAnswer("line " + std::to_string(row.line) + ", id " + id + ", " +
                              score.error().detail);
        std::cout << '\n';
    }
    return status;
}

} // namespace lidlark::cli

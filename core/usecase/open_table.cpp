#include "core/usecase/open_table.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace lidlark::usecase {

namespace {

using OrderedJson = nlohmann::ordered_json;

constexpr std::string_view utf8Mark = "\xEF\xBB\xBF";
constexpr std::string_view lineEnd = "\r\n";

/// A zero byte is not on OWASP's list, but some readers skip it and meet what stands behind it.
bool isReckonedWith(std::string_view text)
{
    constexpr std::string_view begins("=+-@\t\r\n\0", 8);
    return !text.empty() && begins.find(text.front()) != std::string_view::npos;
}

std::string inQuotes(std::string_view text)
{
    std::string cell = isReckonedWith(text) ? "\"'" : "\"";
    for (const char letter : text) {
        if (letter == '"')
            cell += '"';
        cell += letter;
    }
    return cell + '"';
}

std::string csvCell(const Cell &cell)
{
    if (const auto *number = std::get_if<std::int64_t>(&cell.value))
        return std::to_string(*number);
    if (const auto *text = std::get_if<std::string>(&cell.value))
        return inQuotes(*text);
    return {};
}

OrderedJson jsonCell(const Cell &cell)
{
    return std::visit(
        [](const auto &value) -> OrderedJson {
            if constexpr (std::is_same_v<std::decay_t<decltype(value)>, std::monostate>)
                return {};
            else
                return value;
        },
        cell.value);
}

void addLine(std::string &text, const std::vector<Cell> &cells)
{
    for (std::size_t i = 0; i < cells.size(); ++i)
        text += (i > 0 ? "," : "") + csvCell(cells[i]);
    text += lineEnd;
}

} // namespace

std::string plainWords(std::string_view word)
{
    std::string plain(word);
    std::ranges::replace(plain, '-', ' ');
    return plain;
}

std::string_view yesOrNo(bool yes)
{
    return yes ? "yes" : "no";
}

std::string timeOfDay(int minute)
{
    const auto two = [](int number) { return (number < 10 ? "0" : "") + std::to_string(number); };
    return two(minute / 60) + ":" + two(minute % 60);
}

OrderedJson jsonOf(const OpenTable &table)
{
    OrderedJson rows = OrderedJson::array();
    for (const std::vector<Cell> &cells : table.rows) {
        OrderedJson row = OrderedJson::object();
        for (std::size_t i = 0; i < table.columns.size(); ++i)
            row[table.columns[i]] = jsonCell(cells[i]);
        rows.push_back(std::move(row));
    }
    return rows;
}

std::string csvOf(const OpenTable &table)
{
    std::string text(utf8Mark);
    addLine(text, std::vector<Cell>(table.columns.begin(), table.columns.end()));
    for (const std::vector<Cell> &cells : table.rows)
        addLine(text, cells);
    return text;
}

} // namespace lidlark::usecase

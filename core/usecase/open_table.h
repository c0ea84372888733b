#pragma once

#include "core/base/day.h"
#include "core/base/part_of_day.h"

#include <nlohmann/json_fwd.hpp>

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace lidlark::usecase {

/// What stands at one place of a table: nothing, a whole number, or text. A day is its ISO text.
struct Cell {
    Cell() = default;
    Cell(int number) : value(std::int64_t{number}) {}
    Cell(std::string text) : value(std::move(text)) {}
    Cell(std::string_view text) : value(std::string(text)) {}
    Cell(const char *text) : value(std::string(text)) {}
    Cell(Day day) : value(toText(day)) {}
    Cell(PartOfDay part) : value(std::string(toText(part))) {}
    template <class Value> Cell(const std::optional<Value> &known)
    {
        if (known)
            *this = Cell(*known);
    }

    std::variant<std::monostate, std::int64_t, std::string> value;
    bool operator==(const Cell &) const = default;
};

/// One kind of thing that is kept, a row each, for people and programs that know no Lidlark.
struct OpenTable {
    std::string group;                ///< "the box": tables that belong together.
    std::string name;                 ///< "lid list".
    std::vector<std::string> columns; ///< In plain words.
    std::vector<std::vector<Cell>> rows;

    /// @param cells as many as there are columns.
    void add(std::vector<Cell> cells) { rows.push_back(std::move(cells)); }
};

/// "used-up" -> "used up": a word of the events as a person writes it.
std::string plainWords(std::string_view word);
std::string_view yesOrNo(bool yes);
/// "18:05". @param minute of the day.
std::string timeOfDay(int minute);

/// The rows as objects, the columns as their keys. What is not known is null.
nlohmann::ordered_json jsonOf(const OpenTable &table);

/// The table by RFC 4180: a line of columns, then the rows; CRLF, each text in quotes.
///
/// It begins with the mark of UTF-8 (EF BB BF; RFC 3629, 6, allows it): without, spreadsheets in
/// their own country's letters show every accent and all of Urdu as rubbish, and a family opens the
/// file by tapping on it. Programs ask for "utf-8-sig".
///
/// A text that a spreadsheet would reckon with gets an apostrophe before it, and is text. Source:
/// OWASP, "CSV Injection" (owasp.org/www-community/attacks/CSV_Injection): not to begin with
/// "=", "+", "-", "@", tab, carriage return or line feed; each text in quotes, quotes doubled.
std::string csvOf(const OpenTable &table);

} // namespace lidlark::usecase

#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::cli {

/// One record of a CSV text.
struct CsvRow {
    std::size_t line = 1; ///< Of the text, counted from 1, where the record begins.
    std::vector<std::string> cells;
    bool torn = false; ///< A quote stands where none may, or is never closed.

    /// @returns the cell without the spaces about it; empty where the record is too short.
    [[nodiscard]] std::string_view cell(std::size_t column) const;
};

struct CsvTable {
    CsvRow header;
    std::vector<CsvRow> rows;

    [[nodiscard]] std::optional<std::size_t> column(std::string_view name) const;
};

/// Reads comma-separated text (RFC 4180): a header, then records; quotes hold commas, line ends
/// and, doubled, themselves. A byte order mark, any kind of line end and empty lines are let
/// through. A torn record ends with its own line, so that one slip does not swallow the rows after
/// it.
CsvTable csvFrom(std::string_view text);

/// A cell as RFC 4180 writes it: in quotes where it has to be.
std::string csvCell(std::string_view text);

} // namespace lidlark::cli

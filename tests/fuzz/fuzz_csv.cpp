#include "tests/fuzz/target.h"

#include "core/cli/csv_table.h"

#include <algorithm>

namespace lidlark::fuzz {

namespace {

using cli::CsvRow;
using cli::CsvTable;

std::string written(const CsvRow &row)
{
    std::string line;
    for (const std::string &cell : row.cells)
        line += (line.empty() && &cell == &row.cells.front() ? "" : ",") + cli::csvCell(cell);
    return line + "\n";
}

} // namespace

void csv(std::string_view bytes)
{
    const CsvTable table = cli::csvFrom(bytes);
    const auto isTorn = [](const CsvRow &row) { return row.torn; };
    std::string text = written(table.header);
    for (const CsvRow &row : table.rows) {
        must(!row.cells.empty(), "a row has a cell");
        text += written(row);
    }
    // A first cell that begins with a byte order mark would lose it.
    if (table.header.torn || std::ranges::any_of(table.rows, isTorn) ||
        table.header.cells.empty() || text.starts_with("\xEF\xBB\xBF"))
        return;
    const CsvTable again = cli::csvFrom(text);
    must(again.header.cells == table.header.cells, "a header is read as it was written");
    must(std::ranges::equal(again.rows, table.rows,
                            [](const CsvRow &one, const CsvRow &other) {
                                return one.cells == other.cells && !one.torn;
                            }),
         "a row is read as it was written");
}

} // namespace lidlark::fuzz

#include "core/cli/csv_table.h"

#include <algorithm>

namespace lidlark::cli {

namespace {

/// Walks through the text, a record at a time.
class CsvReader
{
public:
    explicit CsvReader(std::string_view text) : m_text(text) {}

    [[nodiscard]] bool atEnd() const { return m_at >= m_text.size(); }

    CsvRow record()
    {
        const std::size_t begin = m_at;
        CsvRow row{m_line, {""}};
        m_state = State::CellBegins;
        while (!atEnd() && take(m_text[m_at], row))
            ++m_at;
        if (m_state == State::Quoted)
            row.torn = true;
        if (row.torn) {
            m_at = std::min(m_text.find_first_of("\r\n", begin), m_text.size());
            m_line = row.line;
        }
        const bool twoBytes = m_text.substr(m_at, 2) == "\r\n";
        m_at += twoBytes ? 2 : 1;
        ++m_line;
        return row;
    }

private:
    enum class State { CellBegins, Plain, Quoted, QuoteEnds };

    /// @returns false at the end of the record.
    bool take(char letter, CsvRow &row)
    {
        if (m_state == State::Quoted || (m_state == State::QuoteEnds && letter == '"')) {
            takeQuoted(letter, row.cells.back());
            return true;
        }
        if (letter == '\n' || letter == '\r')
            return false;
        if (letter == ',') {
            row.cells.emplace_back();
            m_state = State::CellBegins;
        } else if (letter == '"' && m_state == State::CellBegins) {
            m_state = State::Quoted;
        } else if (m_state == State::QuoteEnds) {
            row.torn = true;
        } else {
            row.cells.back() += letter;
            m_state = State::Plain;
        }
        return true;
    }

    void takeQuoted(char letter, std::string &cell)
    {
        if (letter == '"' && m_state == State::Quoted) {
            m_state = State::QuoteEnds;
            return;
        }
        m_state = State::Quoted;
        cell += letter;
        if (letter == '\n')
            ++m_line;
    }

    std::string_view m_text;
    std::size_t m_at = 0;
    std::size_t m_line = 1;
    State m_state = State::CellBegins;
};

bool isEmpty(const CsvRow &row)
{
    return !row.torn && row.cells.size() == 1 && row.cell(0).empty();
}

} // namespace

std::string_view CsvRow::cell(std::size_t column) const
{
    if (column >= cells.size())
        return {};
    const std::string_view text = cells[column];
    const std::size_t first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::optional<std::size_t> CsvTable::column(std::string_view name) const
{
    for (std::size_t i = 0; i < header.cells.size(); ++i) {
        if (header.cell(i) == name)
            return i;
    }
    return std::nullopt;
}

CsvTable csvFrom(std::string_view text)
{
    constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
    if (text.starts_with(byteOrderMark))
        text.remove_prefix(byteOrderMark.size());
    CsvTable table;
    CsvReader reader(text);
    while (!reader.atEnd()) {
        CsvRow row = reader.record();
        if (isEmpty(row))
            continue;
        if (table.header.cells.empty())
            table.header = std::move(row);
        else
            table.rows.push_back(std::move(row));
    }
    return table;
}

std::string csvCell(std::string_view text)
{
    if (text.find_first_of(",\"\r\n") == std::string_view::npos)
        return std::string(text);
    std::string cell = "\"";
    for (const char letter : text) {
        if (letter == '"')
            cell += '"';
        cell += letter;
    }
    return cell + '"';
}

} // namespace lidlark::cli

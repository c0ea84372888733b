#pragma once

#include "mobile/bridge/print_pages.h"
#include "mobile/prints/build_items.h"
#include "mobile/prints/rows_on_pages.h"

#include <string>
#include <utility>
#include <vector>

namespace lidlark::mobile {

/// From where to where a column goes; between the margins, in tenths of a millimetre of A4.
struct Column {
    int from;
    int to;
    bool counted = false; ///< Numbers stand at its end.
};

/// What all rows of a build sheet share.
struct BuildPaper {
    RowedPage page;
    BuildItems items;
    std::string currency;

    [[nodiscard]] QString money(std::int64_t pence) const
    {
        return page.in().money(pence, currency);
    }
    [[nodiscard]] QRect in(const Column &column, int top, int high) const
    {
        return page.between(column.from, column.to, top, high);
    }
};

/// Names over columns, and a line under them.
class ColumnNames
{
public:
    using Names = std::vector<std::pair<Column, wording::Sentence>>;

    ColumnNames(RowedPage page, Names names) : m_page(std::move(page)), m_names(std::move(names)) {}

    [[nodiscard]] int height() const { return m_page.tenths(100); }
    void paint(PrintSheet &sheet, int top) const;

private:
    RowedPage m_page;
    Names m_names;
};

/// What is bought, and the sum at the till.
void addBoughtTable(RowedPrint &print, const usecase::BuildSheetPage &sheet,
                    const BuildPaper &paper);
/// What is in each box, and what it is worth.
void addBoxesTable(RowedPrint &print, const usecase::BuildSheetPage &sheet,
                   const BuildPaper &paper);

} // namespace lidlark::mobile

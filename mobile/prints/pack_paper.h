#pragma once

#include "core/wording/pack_words.h"
#include "mobile/bridge/print_pages.h"
#include "mobile/prints/build_items.h"
#include "mobile/prints/rows_on_pages.h"

namespace lidlark::mobile {

/// What all rows of a pack list share.
struct PackPaper {
    RowedPage page;
    BuildItems items;

    [[nodiscard]] QString tell(const wording::Sentence &sentence) const
    {
        return page.in().tell(sentence);
    }
    /// What is called out, of one thing and of a whole box.
    [[nodiscard]] QString called(const workbench::CallOut &call) const;
    [[nodiscard]] std::vector<wording::CalledLine> called(const workbench::PackBox &box) const;
    [[nodiscard]] QString told(const wording::CalledLine &line) const;
    /// What went wrong with a line, and has to be put right; empty: nothing.
    [[nodiscard]] QString wrongWith(const workbench::PackLine &line) const;
    [[nodiscard]] QString whose(const std::string &alias) const;
    /// A square to tick, with its tick where that was done already.
    void square(PrintSheet &sheet, int left, int top, bool done) const;
};

inline constexpr int packSquare = 58; ///< Tenths of a millimetre of A4.

/// Words white on black, across the page.
class CalledRow
{
public:
    CalledRow(RowedPage page, QString text) : m_page(std::move(page)), m_text(std::move(text)) {}

    [[nodiscard]] int height() const { return textHeight() + m_page.tenths(56); }
    void paint(PrintSheet &sheet, int top) const;

private:
    [[nodiscard]] int textHeight() const;

    RowedPage m_page;
    QString m_text;
};

/// Every box with its lines.
void addPackBoxes(RowedPrint &print, const usecase::PackListPage &list, const PackPaper &paper);
/// Every item with its boxes.
void addPackItems(RowedPrint &print, const usecase::PackListPage &list, const PackPaper &paper);

} // namespace lidlark::mobile

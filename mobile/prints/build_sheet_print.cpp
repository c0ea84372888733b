#include "build_sheet_print.h"

#include "core/wording/build_sheet_words.h"
#include "core/wording/build_words.h"
#include "core/wording/print_words.h"
#include "mobile/prints/build_paper.h"
#include "mobile/prints/words_row.h"

namespace lidlark::mobile {

namespace {

void addProblems(RowedPrint &print, const usecase::BuildSheetPage &sheet, const BuildPaper &paper)
{
    const PrintLanguage &in = paper.page.in();
    print.rows.push_back(rowOf(
        WordsRow(paper.page, in.tell(wording::toPutRight()), 44, PrintSheet::Bold, 20), -1, true));
    for (const workbench::BuildProblem &problem : sheet.problems)
        print.rows.push_back(
            rowOf(WordsRow(paper.page, in.tell(wording::buildProblemSentence(problem)), 40,
                           PrintSheet::Plain, 24)));
}

} // namespace

PrintPages buildSheetPrint(const usecase::BuildSheetPage &sheet, const PrintLanguage &in,
                           QSize size)
{
    const RowedPage page(in, size);
    const BuildPaper paper{page, BuildItems(in, sheet.names), sheet.currency};
    RowedPrint print{in.tell(wording::buildSheetTitle()),
                     in.tell(wording::buildAndDay(sheet.name, wording::fullDateWords(sheet.day))) +
                         QStringLiteral(" \u00b7 ") + in.tell(wording::buildBoxes(sheet.boxes)),
                     {},
                     {}};
    if (!sheet.problems.empty()) {
        addProblems(print, sheet, paper);
    } else if (sheet.boxes == 0) {
        print.rows.push_back(
            rowOf(WordsRow(page, in.tell(wording::noBoxYet()), 44, PrintSheet::Plain, 20)));
    } else {
        addBoughtTable(print, sheet, paper);
        addBoxesTable(print, sheet, paper);
    }
    return rowsOnPages(std::move(print), page);
}

} // namespace lidlark::mobile

#include "pack_list_print.h"

#include "core/wording/build_sheet_words.h"
#include "core/wording/pack_list_words.h"
#include "core/wording/print_words.h"
#include "mobile/prints/pack_paper.h"
#include "mobile/prints/words_row.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

bool anyIn(const usecase::PackListPage &list)
{
    return std::ranges::any_of(list.boxes, [](const auto &box) { return box.linesIn() > 0; });
}

bool anySpecial(const usecase::PackListPage &list)
{
    return std::ranges::any_of(list.boxes, &workbench::PackBox::special);
}

void addNotes(RowedPrint &print, const usecase::PackListPage &list, bool byItem,
              const RowedPage &page)
{
    QStringList notes;
    if (list.boxes.empty())
        notes.append(page.in().tell(wording::nothingToPack()));
    if (anyIn(list))
        notes.append(page.in().tell(wording::tickedAlready()));
    if (byItem && anySpecial(list))
        notes.append(page.in().tell(wording::twoSquares()));
    if (!notes.isEmpty())
        print.rows.push_back(
            rowOf(WordsRow(page, notes.join(u' '), 36, PrintSheet::Plain, 0), -1, true));
}

} // namespace

PrintPages packListPrint(const usecase::PackListPage &list, bool byItem, const PrintLanguage &in,
                         QSize size)
{
    const RowedPage page(in, size);
    const PackPaper paper{page, BuildItems(in, list.names)};
    RowedPrint print{in.tell(wording::packListTitle()),
                     in.tell(wording::buildAndDay(list.name, wording::fullDateWords(list.day))) +
                         QStringLiteral(" \u00b7 ") +
                         in.tell(wording::buildBoxes(static_cast<int>(std::ssize(list.boxes)))),
                     {},
                     {}};
    addNotes(print, list, byItem, page);
    if (byItem)
        addPackItems(print, list, paper);
    else
        addPackBoxes(print, list, paper);
    return rowsOnPages(std::move(print), page);
}

} // namespace lidlark::mobile

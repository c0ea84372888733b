#pragma once

#include "core/wording/sentence.h"

#include <string>
#include <vector>

namespace lidlark::wording {

/// "Build sheet".
Sentence buildSheetTitle();
/// "Spring boxes, 4 January 2027". @param when a day in words.
Sentence buildAndDay(const std::string &build, Sentence when);
Sentence buildBoxes(int boxes);
/// "Page 1 of 2".
Sentence pageOf(int page, int pages);

/// The columns of what is bought, in their order.
enum class SheetColumn { Item, Need, Spares, OnTheShelf, Packs, Spend, LeftOver };
Sentence sheetColumn(SheetColumn column);

/// "2 × pack of 100, at £1.60". @param price of one, with its currency.
Sentence packsToBuy(int packs, int pieces, const std::string &price);
/// In place of packs: "The shelf has enough."
Sentence shelfHasEnough();
/// "What you spend today" (job.md 2.8): the sum at the till.
Sentence spendToday();
/// "What is in each box" (job.md 2.8), and that it is no sum to pay.
Sentence inEachBox();
Sentence inEachBoxNote();
/// Its columns: "Boxes", "What is in them", "Worth of each".
Sentence boxesColumn();
Sentence contentsColumn();
Sentence worthColumn();
/// "As designed."
Sentence asDesigned();
/// In place of a design: "By a list of their own".
Sentence withoutDesign();
/// "Not reckoned, for it has no price: box with lid." @param names at least one.
Sentence withoutPrice(std::vector<Argument> names);
/// "To be put right before this sheet can be reckoned:"
Sentence toPutRight();
/// "There is no box in this build yet."
Sentence noBoxYet();

} // namespace lidlark::wording

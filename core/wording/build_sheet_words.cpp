#include "core/wording/build_sheet_words.h"

#include "core/wording/print_words.h"

#include <array>
#include <utility>

namespace lidlark::wording {

Sentence buildSheetTitle()
{
    return {say("Build sheet"), {}};
}

Sentence buildAndDay(const std::string &build, Sentence when)
{
    return inList({build, std::move(when)});
}

Sentence buildBoxes(int boxes)
{
    return {say("Boxes: %1"), {inDigits(boxes)}};
}

Sentence pageOf(int page, int pages)
{
    return {say("Page %1 of %2"), {inDigits(page), inDigits(pages)}};
}

Sentence sheetColumn(SheetColumn column)
{
    // In the order of SheetColumn.
    static constexpr std::array columns{say("Item"),         say("Need"),         say("Spares"),
                                        say("On the shelf"), say("Packs to buy"), say("Spend"),
                                        say("Left over")};
    return {columns[static_cast<std::size_t>(column)], {}};
}

Sentence packsToBuy(int packs, int pieces, const std::string &price)
{
    return {say("%1 \u00d7 pack of %2, at %3"), {inDigits(packs), inDigits(pieces), price}};
}

Sentence shelfHasEnough()
{
    return {say("The shelf has enough."), {}};
}

Sentence spendToday()
{
    return {say("What you spend today"), {}};
}

Sentence inEachBox()
{
    return {say("What is in each box"), {}};
}

Sentence inEachBoxNote()
{
    return {say("Each piece counts its share of the price of its pack. Spares and what is left "
                "over are not in it: nobody pays these sums, and they do not add up to the one "
                "above."),
            {}};
}

Sentence boxesColumn()
{
    return {say("Boxes"), {}};
}

Sentence contentsColumn()
{
    return {say("What is in them"), {}};
}

Sentence worthColumn()
{
    return {say("Worth of each"), {}};
}

Sentence asDesigned()
{
    return {say("As designed."), {}};
}

Sentence withoutDesign()
{
    return {say("By a list of their own"), {}};
}

Sentence withoutPrice(std::vector<Argument> names)
{
    return {say("Not reckoned, for it has no price: %1."), {inList(std::move(names))}};
}

Sentence toPutRight()
{
    return {say("To be put right before this sheet can be reckoned:"), {}};
}

Sentence noBoxYet()
{
    return {say("There is no box in this build yet."), {}};
}

} // namespace lidlark::wording

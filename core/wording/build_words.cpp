#include "core/wording/build_words.h"

#include "core/wording/money_words.h"

namespace lidlark::wording {

namespace {

using workbench::BuildFault;
using workbench::DifferenceKind;

Sentence ofBuild(BuildFault fault)
{
    switch (fault) {
    case BuildFault::TooManyBoxes:
        return {say("A build holds at most %1 boxes. Make two of it."),
                {inDigits(static_cast<int>(workbench::mostBoxes))}};
    case BuildFault::TooManyItems:
        return {say("A build knows at most %1 kinds of item. Take out those it does not need."),
                {inDigits(workbench::mostItems)}};
    case BuildFault::SparesOutOfRange:
        return {say("Spares are 0 to %1 percent."), {inDigits(workbench::mostSparesPercent)}};
    default:
        return {say("A currency is three capital letters, such as GBP."), {}};
    }
}

Sentence ofBox(const workbench::BuildProblem &problem)
{
    switch (problem.fault) {
    case BuildFault::NoCode:
        return {say("A box has no code. Give it one that no other box has."), {}};
    case BuildFault::CodeTwice:
        return {say("Two boxes have the code %1. Give one of them another."), {problem.about}};
    case BuildFault::UnknownItem:
        return {say("Box %1 holds %2, which is not among the items. Add it there first."),
                {problem.about, problem.also}};
    case BuildFault::PartTwice:
        return {say("Box %1 lists %2 twice. Keep one line."), {problem.about, problem.also}};
    default:
        return {say("Box %1, %2: 1 to %3 pieces."),
                {problem.about, problem.also, inDigits(workbench::mostPiecesInBox)}};
    }
}

Sentence ofSupply(const workbench::BuildProblem &problem)
{
    const Argument item = withCapital(problem.about);
    switch (problem.fault) {
    case BuildFault::NoItem:
        return {say("One of the items has no name of its own. Say which item it is."), {}};
    case BuildFault::SupplyTwice:
        return {say("%1: listed twice among the items. Keep one."), {item}};
    case BuildFault::StockOutOfRange:
        return {say("%1: pieces in stock are 0 or more. Count the shelf again."), {item}};
    case BuildFault::TooManyOffers:
        return {say("%1: at most %2 packs to choose from. Take some out."),
                {item, inDigits(workbench::mostOffers)}};
    default:
        return {say("%1: more is needed than lies on the shelf, and no shop is named. Add a pack "
                    "with its price."),
                {item}};
    }
}

/// @param shop empty: nobody said where.
Sentence ofOffer(BuildFault fault, const Argument &item, const std::string &shop)
{
    const Argument where =
        shop.empty() ? item : Argument(Sentence{say("%1 from %2"), {item, shop}});
    switch (fault) {
    case BuildFault::PackOutOfRange:
        return {say("%1: a pack holds 1 to %2 pieces."),
                {where, inDigits(workbench::mostPiecesInPack)}};
    case BuildFault::PriceOutOfRange:
        return {say("%1: a pack costs 0 to %2 pence."),
                {where, inDigits(static_cast<int>(workbench::mostPenceForPack))}};
    case BuildFault::NoPrice:
        return {say("%1: there is no price yet. Look it up and add it."), {where}};
    default:
        return {say("%1: its price is in another currency than the build. Change the one or the "
                    "other."),
                {where}};
    }
}

} // namespace

Sentence buildProblemSentence(const workbench::BuildProblem &problem)
{
    switch (problem.fault) {
    case BuildFault::TooManyBoxes:
    case BuildFault::TooManyItems:
    case BuildFault::SparesOutOfRange:
    case BuildFault::NoCurrency:
        return ofBuild(problem.fault);
    case BuildFault::NoCode:
    case BuildFault::CodeTwice:
    case BuildFault::UnknownItem:
    case BuildFault::PartTwice:
    case BuildFault::TooFewPieces:
    case BuildFault::TooManyPieces:
        return ofBox(problem);
    case BuildFault::PackOutOfRange:
    case BuildFault::PriceOutOfRange:
    case BuildFault::NoPrice:
    case BuildFault::TwoCurrencies:
        return ofOffer(problem.fault, withCapital(problem.about), problem.also);
    default:
        return ofSupply(problem);
    }
}

Sentence differenceSentence(const workbench::DesignDifference &difference, const ItemWords &names)
{
    const Argument item = names(difference.item);
    switch (difference.kind) {
    case DifferenceKind::LeftOut:
        return {say("Left out: %1."), {item}};
    case DifferenceKind::OtherCount:
        return {say("%1: %2 instead of %3."),
                {withCapital(item), inDigits(difference.inBox), inDigits(difference.inDesign)}};
    case DifferenceKind::Added:
        return {say("Added: %1 (%2)."), {item, inDigits(difference.inBox)}};
    case DifferenceKind::Swapped:
        break;
    }
    const Argument with = withCapital(names(difference.with));
    if (difference.inBox == difference.inDesign)
        return {say("%1 instead of %2."), {with, item}};
    return {say("%1 (%2) instead of %3 (%4)."),
            {with, inDigits(difference.inBox), item, inDigits(difference.inDesign)}};
}

Sentence oneMoreSentence(const workbench::OneMoreBox &more, std::string_view currency)
{
    const std::string inTheBox = moneyText(more.inTheBox.material.pence, currency);
    if (more.more.pence == 0)
        return {say("One box more: nothing more to pay. What lies in the box is worth %1."),
                {inTheBox}};
    return {say("One box more: the till asks for %1 more. What lies in the box is worth %2."),
            {moneyText(more.more.pence, currency), inTheBox}};
}

Sentence moreBoxesSentence(const workbench::OneMoreBox &more, int boxes, bool alike,
                           std::string_view currency)
{
    if (boxes == 1)
        return oneMoreSentence(more, currency);
    if (!alike && more.more.pence == 0)
        return {say("%1 boxes more: nothing more to pay."), {inDigits(boxes)}};
    if (!alike)
        return {say("%1 boxes more: the till asks for %2 more."),
                {inDigits(boxes), moneyText(more.more.pence, currency)}};
    const std::string inTheBox = moneyText(more.inTheBox.material.pence, currency);
    if (more.more.pence == 0)
        return {say("%1 boxes more: nothing more to pay. What lies in one of them is worth %2."),
                {inDigits(boxes), inTheBox}};
    return {say("%1 boxes more: the till asks for %2 more. What lies in one of them is worth %3."),
            {inDigits(boxes), moneyText(more.more.pence, currency), inTheBox}};
}

Sentence itemPlaySentence(const workbench::ItemPlay &play)
{
    if (!play.known)
        return {};
    if (play.activities == 0)
        return {say("This item has nothing to do in this box: no play takes it."), {}};
    if (play.isIdle())
        return {say("This item has almost nothing to do in this box: one play takes it."), {}};
    if (play.lost == 0)
        return {say("Plays that take it: %1. All can be made without it."),
                {inDigits(play.activities)}};
    return {say("Plays that take it: %1. Lost without it: %2."),
            {inDigits(play.activities), inDigits(play.lost)}};
}

Sentence changedLineSentence(const workbench::ChangedLine &line, const ItemWords &names)
{
    const Argument item = withCapital(names(line.after.item));
    const auto before = static_cast<int>(line.before.packCount());
    const auto after = static_cast<int>(line.after.packCount());
    if (before == after)
        return {say("%1: other packs, as many."), {item}};
    if (before == 0)
        return {say("%1, packs to buy: %2."), {item, inDigits(after)}};
    return {say("%1, packs to buy: %2 instead of %3."), {item, inDigits(after), inDigits(before)}};
}

} // namespace lidlark::wording

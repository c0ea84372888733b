#include "core/wording/freshness_words.h"

#include "core/wording/moment_words.h"

namespace lidlark::wording {

namespace {

Sentence lastDayWords(Day last, Day today)
{
    if (last < today)
        return {say("Past its date. Throw it away."), {}};
    if (last == today)
        return {say("Today is its last day."), {}};
    if (last - today == 1)
        return {say("Use it up by tomorrow."), {}};
    return {say("Good until %1."), {untilWords(last, today)}};
}

} // namespace

std::vector<Sentence> pieceWords(const box::PieceFreshness &piece, Day today)
{
    std::vector<Sentence> sentences;
    if (piece.opened)
        sentences.push_back({say("Opened %1."), {onDayWords(*piece.opened, today)}});
    else
        sentences.push_back({say("Not opened yet."), {}});
    if (piece.timesLeftOpen == 1)
        sentences.push_back({say("Left open once."), {}});
    else if (piece.timesLeftOpen == 2)
        sentences.push_back({say("Left open twice."), {}});
    else if (piece.timesLeftOpen > 2)
        sentences.push_back({sayCounted("Left open %1 times."), {inWords(piece.timesLeftOpen)}});
    if (piece.lastDay)
        sentences.push_back(lastDayWords(*piece.lastDay, today));
    return sentences;
}

std::vector<Sentence> lookWords(const box::Freshness &freshness, Day today)
{
    if (!freshness.lastLook)
        return {};
    return {{say("Looked at %1."), {onDayWords(*freshness.lastLook, today)}}};
}

Sentence lookFirstWords(const Argument &name, const Argument &check)
{
    return {say("%1: %2"), {withCapital(name), withSmall(check)}};
}

Sentence mouthedWords(const box::ItemCare &care, DayPart now)
{
    return {say("In a mouth %1, says %2."), {momentWords(care.mouthedWhen, now), care.mouthedBy}};
}

std::vector<Sentence> afterMouthWords(bool cleanable)
{
    if (!cleanable)
        return {{say("It cannot be made clean. Throw it away."), {}}};
    return {{say("Set it aside."), {}},
            {say("Wash it with soap and water, and rinse it."), {}},
            {say("Disinfect it as your local rules say. Let it dry in the air."), {}}};
}

} // namespace lidlark::wording

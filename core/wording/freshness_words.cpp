#include "core/wording/freshness_words.h"

#include "core/wording/moment_words.h"

namespace lidlark::wording {

namespace {

Sentence lastDayWords(Day last, Day today)
{
    if (last < today)
        return {"Past its date. Throw it away.", {}};
    if (last == today)
        return {"Today is its last day.", {}};
    if (last - today == 1)
        return {"Use it up by tomorrow.", {}};
    return {"Good until %1.", {fill(untilWords(last, today))}};
}

} // namespace

std::vector<Sentence> pieceWords(const box::PieceFreshness &piece, Day today)
{
    std::vector<Sentence> sentences;
    if (piece.opened)
        sentences.push_back({"Opened %1.", {fill(onDayWords(*piece.opened, today))}});
    else
        sentences.push_back({"Not opened yet.", {}});
    if (piece.timesLeftOpen == 1)
        sentences.push_back({"Left open once.", {}});
    else if (piece.timesLeftOpen == 2)
        sentences.push_back({"Left open twice.", {}});
    else if (piece.timesLeftOpen > 2)
        sentences.push_back({"Left open %1 times.", {numberWord(piece.timesLeftOpen)}});
    if (piece.lastDay)
        sentences.push_back(lastDayWords(*piece.lastDay, today));
    return sentences;
}

std::vector<Sentence> lookWords(const box::Freshness &freshness, Day today)
{
    if (!freshness.lastLook)
        return {};
    return {{"Looked at %1.", {fill(onDayWords(*freshness.lastLook, today))}}};
}

Sentence mouthedWords(const box::ItemCare &care, DayPart now)
{
    return {"In a mouth %1, says %2.", {fill(momentWords(care.mouthedWhen, now)), care.mouthedBy}};
}

std::vector<Sentence> afterMouthWords(bool cleanable)
{
    if (!cleanable)
        return {{"It cannot be made clean. Throw it away.", {}}};
    return {{"Set it aside.", {}},
            {"Wash it with soap and water, and rinse it.", {}},
            {"Disinfect it as your local rules say. Let it dry in the air.", {}}};
}

} // namespace lidlark::wording

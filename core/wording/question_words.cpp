#include "core/wording/question_words.h"

#include "core/wording/moment_words.h"

#include <algorithm>
#include <numeric>
#include <optional>

namespace lidlark::wording {

namespace {

using box::Question;
using box::QuestionSort;
using box::Side;

int piecesOfAll(const Question &question)
{
    return std::accumulate(question.sides.begin(), question.sides.end(), 0,
                           [](int sum, const Side &side) { return sum + side.pieces; });
}

bool allAgree(const Question &question)
{
    return std::all_of(question.sides.begin(), question.sides.end(), [&](const Side &side) {
        return side.pieces == question.sides.front().pieces;
    });
}

/// What a change says became of the pieces; nothing where it is several things at once.
std::optional<box::ExceptionKind> kindOf(const Side &side)
{
    std::optional<box::ExceptionKind> found;
    for (std::size_t i = 0; i < box::exceptionKindCount; ++i) {
        const auto kind = static_cast<box::ExceptionKind>(i);
        if (side.exceptions.of(kind) == 0)
            continue;
        if (found)
            return std::nullopt;
        found = kind;
    }
    return found;
}

Sentence noted(const Side &side, std::optional<box::ExceptionKind> kind, const PieceNames &item,
               DayPart now)
{
    return {say("%1 noted %2 %3."),
            {side.author, piecesGone(side.pieces, item, kind), momentWords(side.when, now)}};
}

Sentence sameOrHowMany(const Question &question)
{
    const int one = question.sides.front().pieces;
    const Number all = inWords(piecesOfAll(question));
    if (!allAgree(question))
        return {say("The same ones, or %1 in all?"), {all}};
    if (one == 1)
        return {say("Same one, or %1?"), {all}};
    return {say("The same %1, or %2 in all?"), {inWords(one), all}};
}

std::vector<Sentence> sameOrTwo(const Question &question, const PieceNames &item, DayPart now)
{
    const Side &first = question.sides.front();
    const Side &last = question.sides.back();
    const bool alike =
        question.sides.size() == 2 && first.pieces == last.pieces && first.when == last.when;
    const Sentence gone = piecesGone(first.pieces, item, question.kind);
    const Sentence when = momentWords(first.when, now);
    if (alike && first.author != last.author)
        return {{say("%1 and %2 each noted %3 %4."), {first.author, last.author, gone, when}},
                sameOrHowMany(question)};
    if (alike)
        return {{say("%1 noted %2 %3, on two phones."), {first.author, gone, when}},
                sameOrHowMany(question)};
    std::vector<Sentence> sentences;
    sentences.reserve(question.sides.size() + 1);
    for (const Side &side : question.sides)
        sentences.push_back(noted(side, question.kind, item, now));
    sentences.push_back(sameOrHowMany(question));
    return sentences;
}

std::vector<Sentence> beforeOrAfter(const Question &question, const PieceNames &item, DayPart now)
{
    std::vector<Sentence> sentences;
    sentences.reserve(question.sides.size() + 1);
    for (const Side &side : question.sides) {
        const Sentence when = momentWords(side.when, now);
        if (side.isCount)
            sentences.push_back(
                {say("%1 counted %2 %3 %4."),
                 {side.author, inDigits(side.pieces), nameFor(side.pieces, item), when}});
        else if (side.brings)
            sentences.push_back(
                {say("%1 put %2 %3 in %4."),
                 {side.author, inWords(side.pieces), nameFor(side.pieces, item), when}});
        else
            sentences.push_back(noted(side, kindOf(side), item, now));
    }
    sentences.push_back({say("Was that before the count, or after?"), {}});
    return sentences;
}

std::vector<Sentence> whoCountedLast(const Question &question, const PieceNames &item)
{
    std::vector<Sentence> sentences;
    sentences.reserve(question.sides.size() + 1);
    for (const Side &side : question.sides)
        sentences.push_back({say("%1 counted %2 %3."),
                             {side.author, inDigits(side.pieces), nameFor(side.pieces, item)}});
    sentences.push_back({say("Which count was the last?"), {}});
    return sentences;
}

std::vector<Sentence> whichPutBack(const Question &question, const PieceNames &item)
{
    std::vector<Sentence> sentences{{say("Two notes of one play, about %1."), {item.many}}};
    for (const AnswerChoice &choice : answerChoices(question))
        sentences.push_back({say("%1."), {choice.words}});
    sentences.push_back({say("Which is right?"), {}});
    return sentences;
}

std::vector<Sentence> whichCountedIn(const Question &question, const PieceNames &item)
{
    std::vector<Sentence> sentences;
    sentences.reserve(question.sides.size() + 1);
    for (const Side &side : question.sides)
        sentences.push_back({say("%1 counted in %2 %3."),
                             {side.author, inDigits(side.pieces), nameFor(side.pieces, item)}});
    sentences.push_back({say("How many came?"), {}});
    return sentences;
}

const Side *sideOf(const Question &question, const std::string &answer)
{
    const auto found = std::find_if(question.sides.begin(), question.sides.end(),
                                    [&](const Side &side) { return side.identity == answer; });
    return found == question.sides.end() ? nullptr : &*found;
}

Sentence sideWords(const Question &question, const Side &side)
{
    if (question.sort == QuestionSort::WhoCountedLast)
        return {say("%1 counted %2"), {side.author, inDigits(side.pieces)}};
    if (question.sort == QuestionSort::WhichCountedIn)
        return {say("%1, says %2"), {inDigits(side.pieces), side.author}};
    if (side.exceptions.allHome())
        return {say("%1: all back"), {side.author}};
    return {say("%1: %2"), {side.author, numberGone(side.exceptions.total(), kindOf(side))}};
}

Sentence answerWords(const Question &question, const std::string &answer)
{
    if (answer == "before")
        return {say("Before the count"), {}};
    if (answer == "after")
        return {say("After the count"), {}};
    if (const Side *side = sideOf(question, answer))
        return sideWords(question, *side);
    const bool agree = allAgree(question);
    const int one = question.sides.front().pieces;
    if (answer == "same")
        return agree && one == 1 ? Sentence{say("The same one"), {}}
               : agree           ? Sentence{say("The same %1"), {inWords(one)}}
                                 : Sentence{say("The same ones"), {}};
    const Number all = inWords(piecesOfAll(question));
    return agree && one == 1 ? Sentence{say("%1"), {withCapital(all)}}
                             : Sentence{say("%1 in all"), {withCapital(all)}};
}

/// The answer inside a sentence that names who gave it.
Argument answerInside(const Question &question)
{
    const Side *side = sideOf(question, question.answer);
    if (side == nullptr)
        return withSmall(answerWords(question, question.answer));
    if (question.sort != QuestionSort::WhichPutBack)
        return inDigits(side->pieces);
    if (side->exceptions.allHome())
        return Sentence{say("all back"), {}};
    return numberGone(side->exceptions.total(), kindOf(*side));
}

} // namespace

std::vector<Sentence> questionWords(const Question &question, const PieceNames &item, DayPart now)
{
    switch (question.sort) {
    case QuestionSort::SameOrTwo:
        return sameOrTwo(question, item, now);
    case QuestionSort::BeforeOrAfter:
        return beforeOrAfter(question, item, now);
    case QuestionSort::WhoCountedLast:
        return whoCountedLast(question, item);
    case QuestionSort::WhichPutBack:
        return whichPutBack(question, item);
    case QuestionSort::WhichCountedIn:
        break;
    }
    return whichCountedIn(question, item);
}

std::vector<AnswerChoice> answerChoices(const Question &question)
{
    std::vector<AnswerChoice> choices;
    for (const std::string &answer : box::answersOf(question))
        choices.push_back({answer, answerWords(question, answer)});
    return choices;
}

Sentence whoIsAsked(const Question &question)
{
    return {say("%1 is asked."), {question.askedOf}};
}

Sentence answerSaid(const Question &question)
{
    return {say("%1 says: %2."), {question.answeredBy, answerInside(question)}};
}

} // namespace lidlark::wording

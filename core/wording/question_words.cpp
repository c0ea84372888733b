#include "core/wording/question_words.h"

#include "core/wording/moment_words.h"
#include "core/wording/play_words.h"

#include <algorithm>
#include <numeric>

namespace lidlark::wording {

namespace {

using box::Question;
using box::QuestionSort;
using box::Side;

const std::string &nounOf(int pieces, const ItemNames &item)
{
    return pieces == 1 ? item.one : item.many;
}

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

/// What a change says became of the pieces; several words at once are only "gone".
std::string wordOf(const Side &side)
{
    std::string word;
    for (std::size_t i = 0; i < box::exceptionKindCount; ++i) {
        const auto kind = static_cast<box::ExceptionKind>(i);
        if (side.exceptions.of(kind) == 0)
            continue;
        if (!word.empty())
            return "gone";
        word = exceptionWord(kind).english;
    }
    return word.empty() ? "gone" : word;
}

Sentence noted(const Side &side, const std::string &word, const ItemNames &item, DayPart now)
{
    return {"%1 noted %2 %3 %4 %5.",
            {side.author, numberWord(side.pieces), nounOf(side.pieces, item), word,
             fill(momentWords(side.when, now))}};
}

Sentence sameOrHowMany(const Question &question)
{
    const int one = question.sides.front().pieces;
    const std::string all = numberWord(piecesOfAll(question));
    if (!allAgree(question))
        return {"The same ones, or %1 in all?", {all}};
    if (one == 1)
        return {"Same one, or %1?", {all}};
    return {"The same %1, or %2 in all?", {numberWord(one), all}};
}

std::vector<Sentence> sameOrTwo(const Question &question, const ItemNames &item, DayPart now)
{
    const std::string word = exceptionWord(question.kind).english;
    const Side &first = question.sides.front();
    const Side &last = question.sides.back();
    const bool alike =
        question.sides.size() == 2 && first.pieces == last.pieces && first.when == last.when;
    const std::string when = fill(momentWords(first.when, now));
    const std::string pieces = numberWord(first.pieces);
    const std::string &noun = nounOf(first.pieces, item);
    if (alike && first.author != last.author)
        return {{"%1 and %2 each noted %3 %4 %5 %6.",
                 {first.author, last.author, pieces, noun, word, when}},
                sameOrHowMany(question)};
    if (alike)
        return {{"%1 noted %2 %3 %4 %5, on two phones.", {first.author, pieces, noun, word, when}},
                sameOrHowMany(question)};
    std::vector<Sentence> sentences;
    sentences.reserve(question.sides.size() + 1);
    for (const Side &side : question.sides)
        sentences.push_back(noted(side, word, item, now));
    sentences.push_back(sameOrHowMany(question));
    return sentences;
}

std::vector<Sentence> beforeOrAfter(const Question &question, const ItemNames &item, DayPart now)
{
    std::vector<Sentence> sentences;
    sentences.reserve(question.sides.size() + 1);
    for (const Side &side : question.sides) {
        const std::string when = fill(momentWords(side.when, now));
        if (side.isCount)
            sentences.push_back(
                {"%1 counted %2 %3 %4.",
                 {side.author, std::to_string(side.pieces), nounOf(side.pieces, item), when}});
        else if (side.brings)
            sentences.push_back(
                {"%1 put %2 %3 in %4.",
                 {side.author, numberWord(side.pieces), nounOf(side.pieces, item), when}});
        else
            sentences.push_back(noted(side, wordOf(side), item, now));
    }
    sentences.push_back({"Was that before the count, or after?", {}});
    return sentences;
}

std::vector<Sentence> whoCountedLast(const Question &question, const ItemNames &item)
{
    std::vector<Sentence> sentences;
    sentences.reserve(question.sides.size() + 1);
    for (const Side &side : question.sides)
        sentences.push_back(
            {"%1 counted %2 %3.",
             {side.author, std::to_string(side.pieces), nounOf(side.pieces, item)}});
    sentences.push_back({"Which count was the last?", {}});
    return sentences;
}

std::vector<Sentence> whichPutBack(const Question &question, const ItemNames &item)
{
    std::vector<Sentence> sentences{{"Two notes of one play, about %1.", {item.many}}};
    for (const AnswerChoice &choice : answerChoices(question))
        sentences.push_back({"%1.", {fill(choice.words)}});
    sentences.push_back({"Which is right?", {}});
    return sentences;
}

std::vector<Sentence> whichCountedIn(const Question &question, const ItemNames &item)
{
    std::vector<Sentence> sentences;
    sentences.reserve(question.sides.size() + 1);
    for (const Side &side : question.sides)
        sentences.push_back(
            {"%1 counted in %2 %3.",
             {side.author, std::to_string(side.pieces), nounOf(side.pieces, item)}});
    sentences.push_back({"How many came?", {}});
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
        return {"%1 counted %2", {side.author, std::to_string(side.pieces)}};
    if (question.sort == QuestionSort::WhichCountedIn)
        return {"%1, says %2", {std::to_string(side.pieces), side.author}};
    if (side.exceptions.allHome())
        return {"%1: all back", {side.author}};
    return {"%1: %2 %3", {side.author, numberWord(side.exceptions.total()), wordOf(side)}};
}

Sentence answerWords(const Question &question, const std::string &answer)
{
    if (answer == "before")
        return {"Before the count", {}};
    if (answer == "after")
        return {"After the count", {}};
    if (const Side *side = sideOf(question, answer))
        return sideWords(question, *side);
    const bool agree = allAgree(question);
    const int one = question.sides.front().pieces;
    if (answer == "same")
        return agree && one == 1 ? Sentence{"The same one", {}}
               : agree           ? Sentence{"The same %1", {numberWord(one)}}
                                 : Sentence{"The same ones", {}};
    const std::string all = numberWord(piecesOfAll(question));
    return agree && one == 1 ? Sentence{capital(all), {}} : Sentence{"%1 in all", {capital(all)}};
}

/// The answer inside a sentence that names who gave it.
std::string answerInside(const Question &question)
{
    const Side *side = sideOf(question, question.answer);
    if (side == nullptr)
        return uncapital(fill(answerWords(question, question.answer)));
    if (question.sort != QuestionSort::WhichPutBack)
        return std::to_string(side->pieces);
    return side->exceptions.allHome() ? "all back"
                                      : numberWord(side->exceptions.total()) + " " + wordOf(*side);
}

} // namespace

std::vector<Sentence> questionWords(const Question &question, const ItemNames &item, DayPart now)
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
    return {"%1 is asked.", {question.askedOf}};
}

Sentence answerSaid(const Question &question)
{
    return {"%1 says: %2.", {question.answeredBy, answerInside(question)}};
}

} // namespace lidlark::wording

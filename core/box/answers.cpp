#include "core/box/answers.h"

#include "core/base/digest.h"
#include "core/box/box_events.h"
#include "core/box/item_changes.h"

#include <algorithm>
#include <map>

namespace lidlark::box {

namespace {

using journal::Event;

int stockOf(const Side &side, QuestionSort sort)
{
    return sort == QuestionSort::WhichPutBack ? -side.exceptions.total() : side.pieces;
}

std::vector<std::string> byStock(const Question &question)
{
    std::vector<Side> sides = question.sides;
    std::stable_sort(sides.begin(), sides.end(), [&question](const Side &a, const Side &b) {
        return stockOf(a, question.sort) < stockOf(b, question.sort);
    });
    std::vector<std::string> answers;
    answers.reserve(sides.size());
    for (const Side &side : sides)
        answers.push_back(side.identity);
    return answers;
}

} // namespace

std::string questionId(std::vector<std::string> identities)
{
    std::sort(identities.begin(), identities.end());
    std::string text;
    for (const std::string &identity : identities)
        text += identity + '\n';
    return hexOf(blake2b(text));
}

std::vector<std::string> answersOf(const Question &question)
{
    switch (question.sort) {
    case QuestionSort::SameOrTwo:
        return {"two", "same"};
    case QuestionSort::BeforeOrAfter: {
        const bool brings = std::any_of(question.sides.begin(), question.sides.end(),
                                        [](const Side &side) { return side.brings; });
        return brings ? std::vector<std::string>{"before", "after"}
                      : std::vector<std::string>{"after", "before"};
    }
    case QuestionSort::WhoCountedLast:
    case QuestionSort::WhichPutBack:
    case QuestionSort::WhichCountedIn:
        break;
    }
    return byStock(question);
}

Answers::Answers(std::span<const Event> events, const journal::Seen &seen)
{
    std::map<std::string, std::vector<const Event *>> byQuestion;
    for (const Event &event : events) {
        if (const auto answered = readAnswered(event))
            byQuestion[answered->question].push_back(&event);
    }
    for (const auto &[question, given] : byQuestion) {
        for (const Event *event : standingOf(given, seen))
            m_standing.push_back({event, question, readAnswered(*event)->answer});
    }
    std::sort(m_standing.begin(), m_standing.end(),
              [](const Given &a, const Given &b) { return writtenEarlier(*a.event, *b.event); });
}

void Answers::fillIn(Question &question) const
{
    for (const std::string &answer : answersOf(question)) {
        for (const Given &given : m_standing) {
            if (given.question != question.id || given.answer != answer)
                continue;
            question.answer = answer;
            question.answeredBy = given.event->author;
            question.answeredWhen = given.event->when;
            return;
        }
    }
}

} // namespace lidlark::box

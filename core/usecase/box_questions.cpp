#include "core/usecase/box_questions.h"

#include "core/box/box_events.h"
#include "core/usecase/box_in_hand.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

struct Found {
    const store::ItemRow *row = nullptr;
    const box::Question *question = nullptr;
};

Found questionIn(const BoxInHand &box, const std::string &id)
{
    for (const store::ItemRow &row : box.items) {
        for (const box::Question &question : row.questions) {
            if (question.id == id)
                return {&row, &question};
        }
    }
    return {};
}

/// The answer as it is kept, from the word or the number that was said.
Result<std::string> answerTo(const box::Question &question, const std::string &said)
{
    const std::vector<std::string> answers = box::answersOf(question);
    if (std::find(answers.begin(), answers.end(), said) != answers.end())
        return said;
    std::vector<std::string> meant;
    const bool chooses = question.sort != box::QuestionSort::SameOrTwo &&
                         question.sort != box::QuestionSort::BeforeOrAfter;
    for (const box::Side &side : question.sides) {
        if (chooses && std::to_string(side.pieces) == said)
            meant.push_back(side.identity);
    }
    if (meant.size() > 1)
        return Error{ErrorCode::Invalid, "answer: more than one says " + said};
    if (meant.empty())
        return Error{ErrorCode::Invalid, "answer: \"" + said + "\" is no answer to it"};
    return meant.front();
}

} // namespace

Outcome answerQuestion(Workplace &workplace, const std::string &childAlias,
                       const std::string &author, const std::string &question,
                       const std::string &answer)
{
    const Result<BoxInHand> box = boxInHand(workplace, childAlias);
    if (!box)
        return box.error();
    const Found found = questionIn(*box, question);
    if (found.question == nullptr)
        return Error{ErrorCode::NotFound, "this question"};
    const Result<std::string> kept = answerTo(*found.question, answer);
    if (!kept)
        return kept.error();
    if (found.question->answer == *kept)
        return Done{};
    if (!found.question->isOpen())
        return Error{ErrorCode::AlreadyAnswered, found.question->answeredBy};
    return sayOfBox(
        workplace, *box, author,
        {{journal::Kind::Answer, box::fieldsOf(box::Answered{found.row->item, question, *kept})}});
}

} // namespace lidlark::usecase

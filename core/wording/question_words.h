#pragma once

#include "core/box/question.h"
#include "core/wording/gone_words.h"
#include "core/wording/sentence.h"

#include <string>
#include <vector>

namespace lidlark::wording {

/// One question in plain sentences: "Ruth and Gran each noted one stick-on eye used up this
/// evening. Same one, or two?" (job.md scenario 1). Never who was wrong.
std::vector<Sentence> questionWords(const box::Question &question, const PieceNames &item,
                                    DayPart now);

/// One of the answers of equal weight.
struct AnswerChoice {
    std::string answer; ///< As usecase::answerQuestion takes it.
    Sentence words;     ///< "The same one", "Two", "Ruth counted 5".
};

/// In the order of box::answersOf.
std::vector<AnswerChoice> answerChoices(const box::Question &question);

/// "Gran is asked."
Sentence whoIsAsked(const box::Question &question);

/// "Ruth says: two."; of a question that was answered.
Sentence answerSaid(const box::Question &question);

} // namespace lidlark::wording

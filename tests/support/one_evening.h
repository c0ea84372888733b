#pragma once

#include "core/box/question_look.h"
#include "core/usecase/box_questions.h"
#include "core/usecase/play_activity.h"
#include "core/wording/question_words.h"

#include "tests/support/phone.h"

namespace lidlark::test {

/// job.md scenario 1, what both adults do on their own: seven minutes of play, and an eye is gone.
inline PlayId playWithAnEyeUsedUp(Phone &phone, const char *activity)
{
    usecase::Workplace workplace = phone.workplace();
    const auto begun = usecase::startPlay(workplace, {"Fin", {activity}, {}, std::nullopt});
    phone.clock.moveTo(phone.clock.nowMs() + 7 * msPerMinute);
    if (!begun)
        return {};
    const Outcome done =
        usecase::putBack(workplace, *begun, {}, {{{"eyes"}, box::ExceptionKind::UsedUp, 1}});
    return done ? *begun : PlayId{};
}

inline std::vector<box::Question> eyeQuestionsOn(Phone &phone)
{
    return itemOf(phone, "Fin", "eyes").questions;
}

/// The fewest and the most there may be.
inline std::pair<int, int> eyesOn(Phone &phone)
{
    const store::ItemRow row = itemOf(phone, "Fin", "eyes");
    return {row.low, row.high};
}

/// As it is read on the evening of 11 January.
inline std::string wordsOfEyeQuestion(const box::Question &question)
{
    std::string words;
    for (const auto &part : wording::questionWords(question, {"stick-on eye", "stick-on eyes"},
                                                   {*dayFrom({2027, 1, 11}), PartOfDay::Evening}))
        words += wording::fill(part) + " ";
    return words;
}

inline constexpr auto eyeQuestionWords =
    "Ruth and Gran each noted one stick-on eye used up this evening. Same one, or two? ";

} // namespace lidlark::test

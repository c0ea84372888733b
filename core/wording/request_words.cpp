#include "core/wording/request_words.h"

#include "core/wording/day_words.h"

#include <array>

namespace lidlark::wording {

Sentence requestStepWord(box::RequestStep step)
{
    // In the order of box::RequestStep.
    static constexpr std::array words{say("Asked for"), say("Seen"), say("Packed"),
                                      say("On its way"), say("Counted in")};
    return {words[static_cast<std::size_t>(step)], {}};
}

Sentence requestLine(const box::Request &request, Day today)
{
    const Sentence step = requestStepWord(request.step);
    if (request.stepBy.empty())
        return {say("%1."), {step}};
    return {say("%1, says %2, %3."), {step, request.stepBy, dayWords(request.stepWhen.day, today)}};
}

Sentence requestSaidBy(const box::Request &request, Day today)
{
    if (request.stepBy.empty())
        return {};
    return {say("%1, %2"), {request.stepBy, dayWords(request.stepWhen.day, today)}};
}

} // namespace lidlark::wording

#include "core/wording/request_words.h"

#include "core/wording/day_words.h"

#include <array>

namespace lidlark::wording {

Sentence requestStepWord(box::RequestStep step)
{
    // In the order of box::RequestStep.
    static constexpr std::array words{"Asked for", "Seen", "Packed", "On its way", "Counted in"};
    return {words[static_cast<std::size_t>(step)], {}};
}

Sentence requestLine(const box::Request &request, Day today)
{
    const std::string step = requestStepWord(request.step).english;
    if (request.stepBy.empty())
        return {"%1.", {step}};
    return {"%1, says %2, %3.",
            {step, request.stepBy, fill(dayWords(request.stepWhen.day, today))}};
}

Sentence requestSaidBy(const box::Request &request, Day today)
{
    if (request.stepBy.empty())
        return {};
    return {"%1, %2", {request.stepBy, fill(dayWords(request.stepWhen.day, today))}};
}

} // namespace lidlark::wording

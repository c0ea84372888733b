#include "core/wording/use_words.h"

#include "core/wording/day_words.h"

namespace lidlark::wording {

namespace {

Sentence otherWeeks(std::size_t weeks)
{
    if (weeks == 1)
        return {say("None in the other week."), {}};
    return {sayCounted("None in the other %1 weeks."), {inDigits(static_cast<int>(weeks))}};
}

} // namespace

std::vector<Sentence> useWords(const std::string &name, std::span<const WeekPieces> weeks)
{
    std::vector<Sentence> sentences;
    std::size_t none = 0;
    for (const WeekPieces &week : weeks) {
        if (week.pieces == 0)
            ++none;
        else if (sentences.empty())
            sentences.push_back(
                {say("%1: %2 in the week of %3."),
                 {withCapital(name), inDigits(week.pieces), dateWords(week.first)}});
        else
            sentences.push_back(
                {say("%1 in the week of %2."), {inDigits(week.pieces), dateWords(week.first)}});
    }
    if (sentences.empty())
        return {{sayCounted("%1: none in the last %2 weeks."),
                 {withCapital(name), inDigits(static_cast<int>(weeks.size()))}}};
    if (none > 0)
        sentences.push_back(otherWeeks(none));
    return sentences;
}

std::vector<Sentence> weekLabels(std::span<const WeekPieces> weeks)
{
    std::vector<Sentence> labels(weeks.size());
    for (std::size_t i = 1; i < weeks.size(); ++i) {
        if (civilFrom(weeks[i].first).month != civilFrom(weeks[i - 1].first).month)
            labels[i] = monthWord(weeks[i].first);
    }
    if (!labels.empty()) {
        labels.front() = dateWords(weeks.front().first);
        labels.back() = {say("this week"), {}};
    }
    return labels;
}

} // namespace lidlark::wording

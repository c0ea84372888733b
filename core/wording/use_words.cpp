#include "core/wording/use_words.h"

#include "core/wording/day_words.h"

namespace lidlark::wording {

namespace {

Sentence otherWeeks(std::size_t weeks)
{
    if (weeks == 1)
        return {"None in the other week.", {}};
    return {"None in the other %1 weeks.", {std::to_string(weeks)}};
}

/// "January" of "4 January".
std::string monthWord(Day day)
{
    const std::string date = dateWords(day);
    return date.substr(date.find(' ') + 1);
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
                {"%1: %2 in the week of %3.",
                 {capital(name), std::to_string(week.pieces), dateWords(week.first)}});
        else
            sentences.push_back(
                {"%1 in the week of %2.", {std::to_string(week.pieces), dateWords(week.first)}});
    }
    if (sentences.empty())
        return {{"%1: none in the last %2 weeks.", {capital(name), std::to_string(weeks.size())}}};
    if (none > 0)
        sentences.push_back(otherWeeks(none));
    return sentences;
}

std::vector<Sentence> weekLabels(std::span<const WeekPieces> weeks)
{
    std::vector<Sentence> labels(weeks.size());
    for (std::size_t i = 1; i < weeks.size(); ++i) {
        if (civilFrom(weeks[i].first).month != civilFrom(weeks[i - 1].first).month)
            labels[i] = {"%1", {monthWord(weeks[i].first)}};
    }
    if (!labels.empty()) {
        labels.front() = {"%1", {dateWords(weeks.front().first)}};
        labels.back() = {"this week", {}};
    }
    return labels;
}

} // namespace lidlark::wording

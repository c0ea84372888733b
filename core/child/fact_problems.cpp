#include "core/child/fact_problems.h"

#include "core/child/phone_number.h"

#include <algorithm>

namespace lidlark::child {

namespace {

constexpr int grownUpMonths = 18 * 12;

const Person *personOf(const Fact &fact, const HomeSheet *sheet)
{
    if (sheet == nullptr)
        return nullptr;
    const auto person =
        std::find_if(sheet->people.begin(), sheet->people.end(),
                     [&fact](const Person &known) { return known.id.value == fact.person; });
    return person == sheet->people.end() ? nullptr : &*person;
}

std::optional<std::string> problemWithNumber(const Fact &fact)
{
    if (fact.value.empty() || isPhoneNumber(fact.value))
        return std::nullopt;
    const std::string name = fact.fact == poisonLineFact ? "poison line" : "emergency number";
    return name + ": only digits, spaces, + and -, at most 20";
}

std::optional<std::string> problemWithBirth(const Fact &fact, Day today)
{
    const auto day = dayFromText(fact.value);
    if (!day)
        return fact.fact + ": not a day such as 2022-03-31";
    if (*day > today)
        return fact.fact + ": still to come";
    return std::nullopt;
}

/// "latex: yes or no", when the value is another.
std::optional<std::string> problemWithWord(const Fact &fact)
{
    const std::vector<std::string_view> words = wordsOf(fact.fact);
    if (words.empty() || std::find(words.begin(), words.end(), fact.value) != words.end())
        return std::nullopt;
    std::string allowed;
    for (std::size_t i = 0; i < words.size(); ++i) {
        allowed += i == 0 ? "" : i + 1 == words.size() ? " or " : ", ";
        allowed += words[i];
    }
    return fact.fact + ": " + allowed;
}

std::optional<std::string> contradiction(const Fact &fact, const HomeSheet *sheet, Day today)
{
    const Person *person = personOf(fact, sheet);
    if (person == nullptr)
        return std::nullopt;
    if (fact.fact == "mouths" && fact.value == "no" && person->pica)
        return "mouths: pica stands as yes; say no to that first";
    if (fact.fact == "kind" && fact.value == "adult" && person->age &&
        person->age->youngestMonths(today) < grownUpMonths)
        return "kind: an adult, but born less than 18 years ago";
    return std::nullopt;
}

} // namespace

std::optional<std::string> problemWith(const Fact &fact, const HomeSheet *sheet, Day today)
{
    if (fact.fact == emergencyNumberFact || fact.fact == poisonLineFact)
        return problemWithNumber(fact);
    if (fact.fact == "born-by")
        return problemWithBirth(fact, today);
    if (auto problem = problemWithWord(fact))
        return problem;
    return contradiction(fact, sheet, today);
}

} // namespace lidlark::child

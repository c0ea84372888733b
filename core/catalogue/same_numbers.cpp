#include "core/catalogue/same_numbers.h"

#include <algorithm>
#include <string>
#include <vector>

namespace lidlark::catalogue {

namespace {

constexpr std::string_view digits = "0123456789";

/// "12 cm, 3 times" -> "12", "3", sorted.
std::vector<std::string> numbersIn(std::string_view text)
{
    std::vector<std::string> numbers;
    std::size_t begin = text.find_first_of(digits);
    while (begin != std::string_view::npos) {
        const std::size_t end = std::min(text.find_first_not_of(digits, begin), text.size());
        numbers.emplace_back(text.substr(begin, end - begin));
        begin = text.find_first_of(digits, end);
    }
    std::sort(numbers.begin(), numbers.end());
    return numbers;
}

std::string listed(const std::vector<std::string> &numbers)
{
    std::string words;
    for (const std::string &number : numbers)
        words += (words.empty() ? "" : ", ") + number;
    return words.empty() ? "none" : words;
}

} // namespace

void checkSameNumbers(std::string_view english, std::string_view translated, std::string_view field,
                      Findings &findings)
{
    const std::vector<std::string> wanted = numbersIn(english);
    const std::vector<std::string> found = numbersIn(translated);
    if (wanted != found)
        findings.addAt(field, "has other numbers than the English: " + listed(found) +
                                  " instead of " + listed(wanted));
}

} // namespace lidlark::catalogue

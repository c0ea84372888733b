#include "core/catalogue/same_numbers.h"

#include <algorithm>
#include <string>
#include <vector>

namespace lidlark::catalogue {

namespace {

constexpr std::string_view digits = "0123456789";

/// With the digits Urdu is written in (U+06F0 to U+06F9: in UTF-8 0xDB, then 0xB0 to 0xB9) as
/// ASCII's.
std::string withPlainDigits(std::string_view written)
{
    std::string text;
    for (std::size_t i = 0; i < written.size(); ++i) {
        const bool urdu = written[i] == '\xDB' && i + 1 < written.size() &&
                          written[i + 1] >= '\xB0' && written[i + 1] <= '\xB9';
        text += urdu ? static_cast<char>('0' + (written[++i] - '\xB0')) : written[i];
    }
    return text;
}

/// "12 cm, 3 times" -> "12", "3", sorted.
std::vector<std::string> numbersIn(std::string_view written)
{
    const std::string text = withPlainDigits(written);
    std::vector<std::string> numbers;
    std::size_t begin = text.find_first_of(digits);
    while (begin != std::string::npos) {
        const std::size_t end = std::min(text.find_first_not_of(digits, begin), text.size());
        numbers.push_back(text.substr(begin, end - begin));
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

#include "core/wording/sentence.h"

#include <array>
#include <cctype>

namespace lidlark::wording {

std::string fill(const Sentence &sentence)
{
    std::string filled;
    const std::string &text = sentence.english;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool marks =
            text[i] == '%' && i + 1 < text.size() && text[i + 1] >= '1' && text[i + 1] <= '9';
        const auto which = marks ? static_cast<std::size_t>(text[i + 1] - '1') : 0;
        if (!marks || which >= sentence.arguments.size()) {
            filled.push_back(text[i]);
            continue;
        }
        filled += sentence.arguments[which];
        ++i;
    }
    return filled;
}

std::string numberWord(int number)
{
    static constexpr std::array words{"none",  "one",   "two",  "three", "four",   "five",  "six",
                                      "seven", "eight", "nine", "ten",   "eleven", "twelve"};
    if (number >= 0 && number < static_cast<int>(words.size()))
        return words[static_cast<std::size_t>(number)];
    return std::to_string(number);
}

std::string capital(std::string text)
{
    if (!text.empty())
        text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
    return text;
}

std::string uncapital(std::string text)
{
    if (!text.empty())
        text.front() = static_cast<char>(std::tolower(static_cast<unsigned char>(text.front())));
    return text;
}

} // namespace lidlark::wording

#include "core/wording/sentence.h"

#include <array>
#include <cctype>

namespace lidlark::wording {

namespace {

std::string filled(const std::string &text)
{
    return text;
}

std::string filled(const Translated &words)
{
    return words.english;
}

std::string filled(Number number)
{
    return number.words ? numberWord(number.value) : std::to_string(number.value);
}

std::string filled(TimeOfDay time)
{
    return timeText(time);
}

std::string filled(const Sentence &sentence)
{
    return fill(sentence);
}

std::string filled(const Argument &argument)
{
    std::string text =
        std::visit([](const auto &content) { return filled(content); }, argument.content);
    switch (argument.beginning) {
    case Beginning::Capital:
        return capital(std::move(text));
    case Beginning::Small:
        return uncapital(std::move(text));
    case Beginning::AsItIs:
        break;
    }
    return text;
}

} // namespace

Number inWords(int value)
{
    return {value, true};
}

Number inDigits(int value)
{
    return {value, false};
}

std::optional<int> Sentence::plural() const
{
    if (!english.counts())
        return std::nullopt;
    for (const Argument &argument : arguments) {
        if (const auto *number = std::get_if<Number>(&argument.content))
            return number->value;
    }
    return std::nullopt;
}

bool Sentence::operator==(const Sentence &other) const = default;

Argument withCapital(Argument argument)
{
    argument.beginning = Beginning::Capital;
    return argument;
}

Argument withSmall(Argument argument)
{
    argument.beginning = Beginning::Small;
    return argument;
}

std::string fillIn(std::string_view words, const std::vector<std::string> &texts)
{
    std::string result;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const bool marks =
            words[i] == '%' && i + 1 < words.size() && words[i + 1] >= '1' && words[i + 1] <= '9';
        const auto which = marks ? static_cast<std::size_t>(words[i + 1] - '1') : 0;
        if (!marks || which >= texts.size()) {
            result.push_back(words[i]);
            continue;
        }
        result += texts[which];
        ++i;
    }
    return result;
}

std::string fill(const Sentence &sentence)
{
    std::vector<std::string> texts;
    texts.reserve(sentence.arguments.size());
    for (const Argument &argument : sentence.arguments)
        texts.push_back(filled(argument));
    return fillIn(sentence.english.text(), texts);
}

std::string numberWord(int number)
{
    static constexpr std::array words{"none",  "one",   "two",  "three", "four",   "five",  "six",
                                      "seven", "eight", "nine", "ten",   "eleven", "twelve"};
    if (number >= 0 && number < static_cast<int>(words.size()))
        return words[static_cast<std::size_t>(number)];
    return std::to_string(number);
}

std::string timeText(TimeOfDay time)
{
    const auto two = [](int number) { return (number < 10 ? "0" : "") + std::to_string(number); };
    return two(time.minute / 60) + ":" + two(time.minute % 60);
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

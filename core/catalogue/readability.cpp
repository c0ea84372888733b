#include "core/catalogue/readability.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace lidlark::catalogue {

namespace {

/// The first byte of a Latin letter with a mark (U+00C0 to U+02BF); dashes and curly quotes begin
/// with another one.
bool beginsMarkedLetter(unsigned char byte)
{
    return byte >= 0xC3 && byte <= 0xCA;
}

bool isLetterOrDigit(char c)
{
    const auto byte = static_cast<unsigned char>(c);
    return std::isalnum(byte) != 0 || beginsMarkedLetter(byte);
}

bool isSpace(char c)
{
    return std::isspace(static_cast<unsigned char>(c)) != 0;
}

/// Past the closing quotes and brackets that stand at @p at.
std::size_t pastClosers(std::string_view text, std::size_t at)
{
    constexpr std::array<std::string_view, 6> closers{"\"", "'", ")", "]", "\u201D", "\u2019"};
    while (true) {
        const std::string_view rest = text.substr(at);
        const auto closer = std::find_if(closers.begin(), closers.end(),
                                         [rest](auto mark) { return rest.starts_with(mark); });
        if (closer == closers.end())
            return at;
        at += closer->size();
    }
}

/// "U.S." goes on: its stop follows a capital that follows a stop.
bool isInitial(std::string_view text, std::size_t stop)
{
    return text[stop] == '.' && stop >= 2 && text[stop - 2] == '.' &&
           std::isupper(static_cast<unsigned char>(text[stop - 1])) != 0;
}

/// After a space, small letters carry a sentence on ("about 3 cm. wide").
bool beginsSentence(std::string_view text)
{
    const auto first = std::find_if(text.begin(), text.end(), [](char c) { return !isSpace(c); });
    return first == text.end() || std::islower(static_cast<unsigned char>(*first)) == 0;
}

/// Where the sentence that begins at the beginning of @p text ends.
std::size_t sentenceEnd(std::string_view text)
{
    for (std::size_t at = text.find_first_of(".?!"); at != std::string_view::npos;
         at = text.find_first_of(".?!", at + 1)) {
        const std::size_t end = pastClosers(text, at + 1);
        const bool apart = end == text.size() || isSpace(text[end]);
        if (apart && !isInitial(text, at) && beginsSentence(text.substr(end)))
            return end;
    }
    return text.size();
}

std::string_view trimmed(std::string_view text)
{
    while (!text.empty() && isSpace(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && isSpace(text.back()))
        text.remove_suffix(1);
    return text;
}

} // namespace

TextCount &TextCount::operator+=(const TextCount &other)
{
    letters += other.letters;
    words += other.words;
    sentences += other.sentences;
    return *this;
}

std::vector<std::string_view> sentencesIn(std::string_view text)
{
    std::vector<std::string_view> sentences;
    for (text = trimmed(text); !text.empty(); text = trimmed(text)) {
        const std::size_t end = sentenceEnd(text);
        if (wordsIn(text.substr(0, end)) > 0)
            sentences.push_back(trimmed(text.substr(0, end)));
        text.remove_prefix(end);
    }
    return sentences;
}

int wordsIn(std::string_view text)
{
    int words = 0;
    bool counted = false;
    for (const char c : text) {
        if (isSpace(c))
            counted = false;
        else if (!counted && isLetterOrDigit(c)) {
            counted = true;
            ++words;
        }
    }
    return words;
}

TextCount countsOf(std::string_view text)
{
    TextCount count;
    count.letters = static_cast<int>(std::count_if(text.begin(), text.end(), isLetterOrDigit));
    count.words = wordsIn(text);
    count.sentences = static_cast<int>(sentencesIn(text).size());
    return count;
}

double schoolGradeOf(const TextCount &count)
{
    if (count.words == 0)
        return 0;
    const double lettersIn100 = 100.0 * count.letters / count.words;
    const double sentencesIn100 = 100.0 * count.sentences / count.words;
    return 0.0588 * lettersIn100 - 0.296 * sentencesIn100 - 15.8;
}

} // namespace lidlark::catalogue

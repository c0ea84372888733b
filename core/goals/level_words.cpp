#include "core/goals/level_words.h"

#include <algorithm>
#include <array>
#include <sstream>

namespace lidlark::goals {

namespace {

constexpr std::string_view marks = ".,;:!?\"'()-";

/// What nobody can see from across the room, or two people would see differently. `well`, `good`
/// and the like need a measure beside them.
constexpr std::array<std::string_view, 36> feelings{
    "feel",       "feels",     "feeling",    "happy",       "happier",     "happily",
    "sad",        "confident", "confidence", "confidently", "comfortable", "proud",
    "enjoy",      "enjoys",    "likes",      "wants",       "understands", "knows",
    "believes",   "thinks",    "hopes",      "tries",       "motivated",   "willing",
    "interested", "aware",     "better",     "improved",    "improves",    "worse",
    "good",       "nicely",    "well",       "properly",    "normal",      "normally"};

std::string small(std::string text)
{
    for (char &letter : text) {
        if (letter >= 'A' && letter <= 'Z')
            letter = static_cast<char>(letter - 'A' + 'a');
    }
    return text;
}

std::string bare(const std::string &word)
{
    const std::size_t first = word.find_first_not_of(marks);
    if (first == std::string::npos)
        return {};
    return word.substr(first, word.find_last_not_of(marks) - first + 1);
}

} // namespace

std::string withoutTrimmings(std::string_view words)
{
    std::istringstream all{std::string(words)};
    std::string plain;
    for (std::string word; all >> word;)
        plain += (plain.empty() ? "" : " ") + small(word);
    const std::size_t last = plain.find_last_not_of(".,;:!? ");
    return last == std::string::npos ? std::string() : plain.substr(0, last + 1);
}

std::optional<std::string> wordOfFeeling(std::string_view words)
{
    std::istringstream all{std::string(words)};
    for (std::string word; all >> word;) {
        const std::string plain = bare(word);
        if (std::ranges::find(feelings, small(plain)) != feelings.end())
            return plain;
    }
    return std::nullopt;
}

int countOfWords(std::string_view words)
{
    std::istringstream all{std::string(words)};
    int count = 0;
    for (std::string word; all >> word;)
        count += bare(word).empty() ? 0 : 1;
    return count;
}

} // namespace lidlark::goals

#include "core/sync/typed_code.h"

#include "core/sync/join_check.h"
#include "core/sync/join_words.h"
#include "core/sync/typing_slips.h"

#include <algorithm>
#include <optional>

namespace lidlark::sync {

namespace {

/// Nine words of seven letters, numbered, on lines of their own, come to less than a third of this.
constexpr std::size_t longestTyped = 400;
constexpr std::size_t mostNearest = 3;
/// Farther than this, a word is no likeness but chance.
constexpr std::size_t farthestNearest = 3;

std::optional<char> letterOf(char typed)
{
    if (typed >= 'A' && typed <= 'Z')
        return static_cast<char>(typed - 'A' + 'a');
    return typed >= 'a' && typed <= 'z' ? std::optional(typed) : std::nullopt;
}

/// The runs of letters in it, in lower case. All else parts them: a phone's own dashes and spaces
/// too.
std::vector<std::string> runsOfLetters(std::string_view typed)
{
    std::vector<std::string> runs;
    bool inside = false;
    for (const char c : typed) {
        const auto letter = letterOf(c);
        if (letter && !inside)
            runs.emplace_back();
        if (letter)
            runs.back().push_back(*letter);
        inside = letter.has_value();
    }
    return runs;
}

std::vector<std::string_view> nearestTo(std::string_view word)
{
    std::vector<std::pair<std::size_t, std::string_view>> near;
    for (const std::string_view listed : joinWords()) {
        const std::size_t slips = typingSlips(word, listed);
        if (slips <= farthestNearest)
            near.emplace_back(slips, listed);
    }
    std::ranges::sort(near);
    near.resize(std::min(near.size(), mostNearest));
    std::vector<std::string_view> words(near.size());
    std::ranges::transform(near, words.begin(), [](const auto &pair) { return pair.second; });
    return words;
}

} // namespace

std::variant<JoinSecret, WordProblem> secretFromWords(std::string_view typed)
{
    using Kind = WordProblem::Kind;
    if (typed.size() > longestTyped)
        return WordProblem{Kind::TooMany, 0, {}};
    const std::vector<std::string> words = runsOfLetters(typed);
    std::vector<std::uint16_t> numbers;
    WordProblem problem{Kind::Unknown, words.size(), {}};
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (const auto number = joinWordAt(words[i]))
            numbers.push_back(static_cast<std::uint16_t>(*number));
        else
            problem.unknown.push_back({i + 1, words[i], nearestTo(words[i])});
    }
    if (!problem.unknown.empty())
        return problem;
    if (numbers.size() != joinCodeWords)
        return WordProblem{
            numbers.size() < joinCodeWords ? Kind::TooFew : Kind::TooMany, words.size(), {}};
    JoinNumbers secret{};
    std::copy_n(numbers.begin(), secret.size(), secret.begin());
    if (joinCheck(secret) != numbers.back())
        return WordProblem{Kind::Another, words.size(), {}};
    return secretOf(secret);
}

} // namespace lidlark::sync

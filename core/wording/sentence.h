#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace lidlark::wording {

/// English words as they stand in the source, %1 to %9 among them: the key of their translations.
/// Only `say` and `sayCounted` make any, of a literal, so that all there is to translate is found
/// by reading the sources (tests/words).
class English
{
public:
    constexpr English() : English("", false) {}

    /// Ends with a zero, as every literal.
    [[nodiscard]] constexpr std::string_view text() const { return m_text; }
    /// Other languages have a form for one, for few, for many of these.
    [[nodiscard]] constexpr bool counts() const { return m_counts; }
    bool operator==(const English &) const = default;

private:
    friend consteval English say(const char *literal);
    friend consteval English sayCounted(const char *literal);
    constexpr English(const char *literal, bool counts) : m_text(literal), m_counts(counts) {}

    std::string_view m_text;
    bool m_counts;
};

/// Words to translate.
consteval English say(const char *literal)
{
    return {literal, false};
}

/// Words whose form in other languages goes by the first number among the arguments.
consteval English sayCounted(const char *literal)
{
    return {literal, true};
}

/// A count in a sentence. English says "one" to "twelve" where it asks for words, other languages
/// write digits.
struct Number {
    int value = 0;
    bool words = false;
    bool operator==(const Number &) const = default;
};

/// "four".
Number inWords(int value);
/// "4".
Number inDigits(int value);

/// A time of day: "18:05".
struct TimeOfDay {
    int minute = 0; ///< Since midnight.
    bool operator==(const TimeOfDay &) const = default;
};

/// Words of the catalogue as the app shows them, and in English.
struct Translated {
    std::string text;
    std::string english;
    bool operator==(const Translated &) const = default;
};

struct Argument;

/// A sentence a person reads, once for all: its words and what stands in their places. The command
/// line prints it; the app puts the translation in the place of the words, all the way down.
struct Sentence {
    English english;
    std::vector<Argument> arguments;

    /// The number that the form of the words goes by; nothing where there is only one form.
    [[nodiscard]] std::optional<int> plural() const;
    bool operator==(const Sentence &other) const;
};

/// How an argument begins where it stands.
enum class Beginning { AsItIs, Capital, Small };

/// What stands in the place of %1.
struct Argument {
    /// A name, or what somebody typed or the catalogue says: never translated here.
    Argument(std::string text) : content(std::move(text)) {}
    /// The English sentence has the English words in its place.
    Argument(Translated words) : content(std::move(words)) {}
    Argument(Number number) : content(number) {}
    Argument(TimeOfDay time) : content(time) {}
    Argument(Sentence sentence) : content(std::move(sentence)) {}

    std::variant<std::string, Translated, Number, TimeOfDay, Sentence> content;
    Beginning beginning = Beginning::AsItIs;
    bool operator==(const Argument &) const = default;
};

/// The same with its first letter as a capital.
Argument withCapital(Argument argument);
/// The same with its first letter small: a line that goes on inside another.
Argument withSmall(Argument argument);

/// Words with texts in the places of %1 to %9. A "%1" inside a text stays as it was typed.
std::string fillIn(std::string_view words, const std::vector<std::string> &texts);

/// The sentence in English with its arguments in place.
std::string fill(const Sentence &sentence);

/// "one" to "twelve", then digits: counts read aloud.
std::string numberWord(int number);
/// "18:05".
std::string timeText(TimeOfDay time);

/// The first letter as a capital, where it is one of the English alphabet.
std::string capital(std::string text);
/// The first letter small, likewise.
std::string uncapital(std::string text);

} // namespace lidlark::wording

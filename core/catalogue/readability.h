#pragma once

#include <string_view>
#include <vector>

namespace lidlark::catalogue {

/// What can be counted in an English text without a dictionary and without guessing at syllables.
struct TextCount {
    int letters = 0; ///< Letters and digits.
    int words = 0;   ///< Runs between spaces with a letter or digit in them: "finger-tip" is one.
    int sentences = 0;

    TextCount &operator+=(const TextCount &other);
    bool operator==(const TextCount &) const = default;
};

/// Parts of @p text that end with a full stop, a question mark or an exclamation mark, closing
/// quotes and brackets included, before a space and a capital, a digit or a quote; what is left at
/// the end is one too. A colon or a semicolon ends none, nor does the stop of initials ("U.S.").
std::vector<std::string_view> sentencesIn(std::string_view text);

int wordsIn(std::string_view text);

TextCount countsOf(std::string_view text);

/// The US school grade that can read it, by the Coleman-Liau index: 0.0588 L - 0.296 S - 15.8, with
/// L letters and S sentences in 100 words. It was fitted to samples of about 100 words: one line by
/// itself says little. 0 for a text without words.
/// Source: M. Coleman and T. L. Liau, "A computer readability formula designed for machine
/// scoring", Journal of Applied Psychology 60 (1975), 283-284.
double schoolGradeOf(const TextCount &count);

/// US school children are about five years older than the number of their grade when it begins and
/// six when it ends: fourth grade 9 to 10, fifth grade 10 to 11 (common practice, no source).
/// Families read at an age of 9 to 11 (activities.md 1.1, E4): up to the end of the fifth grade.
inline constexpr double hardestGrade = 6.0;

/// Words in one sentence. common practice, no source: plain-language guides ask for 15 to 20.
inline constexpr int longestSentence = 20;

} // namespace lidlark::catalogue

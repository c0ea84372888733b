#include "core/catalogue/lint_rules.h"
#include "core/catalogue/list_path.h"
#include "core/catalogue/readability.h"

#include <array>
#include <cstdio>

namespace lidlark::catalogue {

namespace {

/// What an adult takes in at one glance before the next movement. common practice, no source.
constexpr int longestStep = 40;

std::string oneDecimal(double number)
{
    std::array<char, 16> text{};
    std::snprintf(text.data(), text.size(), "%.1f", number);
    return text.data();
}

void lintSentences(const FamilyLine &line, LintFindings &findings)
{
    for (const std::string_view sentence : sentencesIn(line.text)) {
        if (const int words = wordsIn(sentence); words > longestSentence)
            findings.push_back(
                {LintRule::Reading, line.field,
                 "a sentence has " + std::to_string(words) + " words: \"" + std::string(sentence) +
                     "\"",
                 "Make two of it: at most " + std::to_string(longestSentence) + " words each."});
    }
}

void lintSteps(const Activity &activity, LintFindings &findings)
{
    for (std::size_t i = 0; i < activity.steps.size(); ++i) {
        if (const int words = wordsIn(activity.steps[i].text); words > longestStep)
            findings.push_back(
                {LintRule::Reading, lineOf("steps", i, "text"),
                 "the step has " + std::to_string(words) + " words",
                 "Keep one moment of play: at most " + std::to_string(longestStep) + " words."});
    }
}

} // namespace

double readingGradeOf(const Activity &activity)
{
    TextCount count;
    for (const FamilyLine &line : playingLines(activity))
        count += countsOf(line.text);
    return schoolGradeOf(count);
}

void lintReading(const Activity &activity, LintFindings &findings)
{
    for (const FamilyLine &line : everyLine(activity)) {
        if (!line.field.ends_with("alt")) // what a picture shows is one sentence, however long
            lintSentences(line, findings);
    }
    lintSteps(activity, findings);
    if (const double grade = readingGradeOf(activity); grade > hardestGrade)
        findings.push_back({LintRule::Reading, "steps",
                            "first line, steps, gradings, ways in and put-back read as school "
                            "grade " +
                                oneDecimal(grade),
                            "Shorter words and sentences: grade " + oneDecimal(hardestGrade) +
                                " (age 11) at most."});
}

} // namespace lidlark::catalogue

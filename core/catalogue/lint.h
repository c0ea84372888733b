#pragma once

#include "core/catalogue/catalogue.h"

#include <string>
#include <vector>

namespace lidlark::catalogue {

/// What a rule of writing is about (activities.md section 6 and 1.1).
enum class LintRule {
    Reading,  ///< Sentence length, school grade, length of a step.
    Home,     ///< Fates, counts, and how it ends (questions 3 and 4).
    Floor,    ///< How close the adult is for what it holds (question 5).
    Gradings, ///< Easier and harder (question 6).
    Ways,     ///< One hand, seated (question 7).
    Claims,   ///< A promised result (question 8).
    Talk,     ///< Praise, orders, exclamation marks.
    Colour,   ///< A step that needs colour.
    Drawings, ///< A picture of its own for every step.
    OfItsOwn  ///< Name and lines that no other entry has (question 10, in part).
};
inline constexpr EnumNames<LintRule, 10> lintRuleNames{{"reading", "home", "floor", "gradings",
                                                        "ways", "claims", "talk", "colour",
                                                        "drawings", "of-its-own"}};

/// One thing to mend before an entry is offered for review. What could hurt somebody is no matter
/// of writing: the loader refuses it.
struct LintFinding {
    LintRule rule = LintRule::Reading;
    std::string field;   ///< "steps[2].text".
    std::string problem; ///< What is wrong, in plain words.
    std::string remedy;  ///< What to do.
    bool operator==(const LintFinding &) const = default;
};

/// All that a program can see of the authoring checklist (activities.md section 6).
/// @param activity passed the loader's checks. @param catalogue the others it is compared with; an
/// entry of the same id in it is taken for the activity itself.
std::vector<LintFinding> lint(const Activity &activity, const Catalogue &catalogue);

/// School grade of what an adult reads to play it (readability.h).
double readingGradeOf(const Activity &activity);

/// A question of the checklist that only a person can answer.
struct HumanQuestion {
    int number = 0; ///< In activities.md section 6.
    std::string text;
};

/// Those that no program has answered, with what it can say towards an answer.
std::vector<HumanQuestion> questionsForPeople(const Activity &activity);

} // namespace lidlark::catalogue

#pragma once

#include "core/base/day.h"
#include "core/catalogue/skill.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace lidlark::goals {

inline constexpr std::size_t levelCount = 5;
inline constexpr std::size_t longestGoalWords = 120; ///< Characters.
inline constexpr std::size_t longestLevel = 200;     ///< Characters.
inline constexpr std::size_t longestReason = 200;    ///< Characters.

/// A goal while somebody writes it, in the family's words.
struct GoalDraft {
    std::string words;                          ///< "Opens his lunch tub at school".
    std::string shortWords;                     ///< "opening his lunch tub"; may be empty.
    std::array<std::string, levelCount> levels; ///< From -2 to +2.
    std::optional<int> baseline;                ///< Where the child is today, -2 to +2.
    std::optional<Day> agreedOn;
    std::optional<Day> reviewOn;
    std::vector<catalogue::Skill> skills;
    std::vector<catalogue::LifeArea> lifeAreas;
    std::string reason = {}; ///< Why the words of a goal are changed; may be empty.
};

/// What of a draft a finding is about.
enum class DraftField { Words, ShortWords, Level, Reason, Baseline, ReviewOn };

enum class DraftMatter {
    // These refuse: the goal is not saved.
    Missing,         ///< Nothing stands there.
    TooLong,         ///< Longer than the field takes.
    NotPlain,        ///< More than one line, or no plain text.
    SameAs,          ///< Two levels in the same words.
    BeyondTheLevels, ///< A baseline that is none of the five.
    NotAfterAgreed,  ///< The review does not lie after the day it was agreed.
    // These are said and refuse nothing: a machine cannot judge them.
    ReadsAsFeeling, ///< A word of feeling or opinion: two people may see it differently.
    SaysLittle      ///< One or two words: hardly somebody doing something.
};

struct DraftFinding {
    DraftField field = DraftField::Words;
    DraftMatter matter = DraftMatter::Missing;
    int level = 0;    ///< Of a Level, -2 to +2.
    int other = 0;    ///< The level it is the same as.
    std::string word; ///< The word that reads like a feeling, as it was typed.
    bool operator==(const DraftFinding &) const = default;
};

bool refuses(DraftMatter matter);

/// Everything that can be told of a draft, in the order of its fields, the lowest level first.
/// Whether levels differ in one thing only, or say what a stranger could see, stays a question for
/// people. The words of feeling are English ones: in another language nothing is warned of.
/// Source: job.md T10 (baseline, review date, observable levels); which words read like a feeling:
/// common practice, no source.
std::vector<DraftFinding> findingsOf(const GoalDraft &draft);

/// The first that refuses; nothing: the draft may be saved.
std::optional<DraftFinding> firstRefusal(const std::vector<DraftFinding> &findings);

} // namespace lidlark::goals

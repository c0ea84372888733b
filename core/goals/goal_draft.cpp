#include "core/goals/goal_draft.h"

#include "core/base/utf8.h"
#include "core/goals/attainment.h"
#include "core/goals/level_words.h"

#include <algorithm>

namespace lidlark::goals {

namespace {

constexpr int fewestWords = 3; // somebody, does, something

std::size_t charactersOf(const std::string &text)
{
    return static_cast<std::size_t>(std::ranges::count_if(
        text, [](char byte) { return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U; }));
}

/// What every line that is typed must keep to.
std::optional<DraftMatter> matterOfLine(const std::string &text, std::size_t most, bool needed)
{
    if (!isPlainUtf8(text) || text.find_first_of("\r\n") != std::string::npos)
        return DraftMatter::NotPlain;
    if (needed && withoutTrimmings(text).empty())
        return DraftMatter::Missing;
    if (charactersOf(text) > most)
        return DraftMatter::TooLong;
    return std::nullopt;
}

void lookAtLine(std::vector<DraftFinding> &findings, DraftField field, const std::string &text,
                std::size_t most, bool needed)
{
    if (const auto matter = matterOfLine(text, most, needed))
        findings.push_back({field, *matter, 0, 0, {}});
}

/// The lowest level before @p at that says the same.
std::optional<int> sameBefore(const GoalDraft &draft, std::size_t at)
{
    for (std::size_t before = 0; before < at; ++before) {
        if (withoutTrimmings(draft.levels[before]) == withoutTrimmings(draft.levels[at]))
            return static_cast<int>(before) + lowestLevel;
    }
    return std::nullopt;
}

void lookAtLevel(std::vector<DraftFinding> &findings, const GoalDraft &draft, std::size_t at)
{
    const std::string &text = draft.levels[at];
    const int level = static_cast<int>(at) + lowestLevel;
    const auto add = [&](DraftMatter matter, int other, std::string word) {
        findings.push_back({DraftField::Level, matter, level, other, std::move(word)});
    };
    if (const auto matter = matterOfLine(text, longestLevel, true)) {
        add(*matter, 0, {});
        return;
    }
    if (const auto other = sameBefore(draft, at)) {
        add(DraftMatter::SameAs, *other, {});
        return;
    }
    if (const auto word = wordOfFeeling(text))
        add(DraftMatter::ReadsAsFeeling, 0, *word);
    else if (countOfWords(text) < fewestWords)
        add(DraftMatter::SaysLittle, 0, {});
}

void lookAtDays(std::vector<DraftFinding> &findings, const GoalDraft &draft)
{
    if (!draft.reviewOn)
        findings.push_back({DraftField::ReviewOn, DraftMatter::Missing, 0, 0, {}});
    else if (draft.agreedOn && *draft.reviewOn <= *draft.agreedOn)
        findings.push_back({DraftField::ReviewOn, DraftMatter::NotAfterAgreed, 0, 0, {}});
}

} // namespace

bool refuses(DraftMatter matter)
{
    return matter != DraftMatter::ReadsAsFeeling && matter != DraftMatter::SaysLittle;
}

std::vector<DraftFinding> findingsOf(const GoalDraft &draft)
{
    std::vector<DraftFinding> findings;
    lookAtLine(findings, DraftField::Words, draft.words, longestGoalWords, true);
    lookAtLine(findings, DraftField::ShortWords, draft.shortWords, longestGoalWords, false);
    for (std::size_t at = 0; at < levelCount; ++at)
        lookAtLevel(findings, draft, at);
    lookAtLine(findings, DraftField::Reason, draft.reason, longestReason, false);
    if (!draft.baseline)
        findings.push_back({DraftField::Baseline, DraftMatter::Missing, 0, 0, {}});
    else if (*draft.baseline < lowestLevel || *draft.baseline > highestLevel)
        findings.push_back({DraftField::Baseline, DraftMatter::BeyondTheLevels, 0, 0, {}});
    lookAtDays(findings, draft);
    return findings;
}

std::optional<DraftFinding> firstRefusal(const std::vector<DraftFinding> &findings)
{
    const auto found = std::ranges::find_if(
        findings, [](const DraftFinding &finding) { return refuses(finding.matter); });
    return found != findings.end() ? std::optional(*found) : std::nullopt;
}

} // namespace lidlark::goals

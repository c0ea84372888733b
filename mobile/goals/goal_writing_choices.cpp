#include "goal_writing_view_model.h"

#include "core/wording/day_words.h"
#include "core/wording/skill_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/sentence.h"
#include "mobile/goals/goal_lines.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr int daysInWeek = 7;

QString wordsOf(catalogue::Skill skill)
{
    return capitalised(translated(wording::skillWords(skill)));
}

} // namespace

QStringList GoalWritingViewModel::areas()
{
    QStringList words;
    for (std::size_t i = 0; i < catalogue::lifeAreaCount; ++i)
        words.append(areaWords(static_cast<catalogue::LifeArea>(i)));
    return words;
}

QStringList GoalWritingViewModel::chosenAreas() const
{
    QStringList chosen;
    for (const catalogue::LifeArea area : m_draft.lifeAreas)
        chosen.append(areaWords(area));
    return chosen;
}

void GoalWritingViewModel::chooseArea(int area)
{
    if (area < 0 || area >= static_cast<int>(catalogue::lifeAreaCount))
        return;
    const auto chosen = static_cast<catalogue::LifeArea>(area);
    if (std::erase(m_draft.lifeAreas, chosen) == 0)
        m_draft.lifeAreas.push_back(chosen);
    std::ranges::sort(m_draft.lifeAreas);
    change();
}

QString GoalWritingViewModel::review() const
{
    return m_draft.reviewOn ? translated(wording::dateWords(*m_draft.reviewOn)) : QString();
}

int GoalWritingViewModel::reviewWeeks() const
{
    const int days = m_draft.reviewOn ? *m_draft.reviewOn - m_household->today().day : 0;
    return days > 0 && days % daysInWeek == 0 ? days / daysInWeek : 0;
}

void GoalWritingViewModel::reviewInWeeks(int weeks)
{
    m_draft.reviewOn = m_household->today().day + weeks * daysInWeek;
    change();
}

void GoalWritingViewModel::moveReview(int weeks)
{
    if (!m_draft.reviewOn)
        return;
    m_draft.reviewOn = *m_draft.reviewOn + weeks * daysInWeek;
    change();
}

QStringList GoalWritingViewModel::skills()
{
    QStringList words;
    for (std::size_t i = 0; i < catalogue::skillCount; ++i)
        words.append(wordsOf(static_cast<catalogue::Skill>(i)));
    return words;
}

QStringList GoalWritingViewModel::chosenSkills() const
{
    QStringList chosen;
    for (const catalogue::Skill skill : m_draft.skills)
        chosen.append(wordsOf(skill));
    return chosen;
}

void GoalWritingViewModel::chooseSkill(int skill)
{
    if (skill < 0 || skill >= static_cast<int>(catalogue::skillCount))
        return;
    const auto chosen = static_cast<catalogue::Skill>(skill);
    if (std::erase(m_draft.skills, chosen) == 0)
        m_draft.skills.push_back(chosen);
    change();
}

} // namespace lidlark::mobile

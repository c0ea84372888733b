#include "goal_writing_view_model.h"

#include "core/wording/day_words.h"
#include "core/wording/goal_words.h"
#include "core/wording/skill_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr int levels = static_cast<int>(goals::levelCount);
constexpr int daysInWeek = 7;

/// The highest level stands first.
std::size_t placeOf(int row)
{
    return static_cast<std::size_t>(levels - 1 - row);
}

/// An area takes several lines, a goal one: what was parted by a line end is parted by a space.
std::string oneLine(QString text)
{
    text.replace(QLatin1Char('\r'), QLatin1Char(' '));
    text.replace(QLatin1Char('\n'), QLatin1Char(' '));
    return toCore(text);
}

QString wordsOf(catalogue::Skill skill)
{
    return capitalised(translated(wording::skillWords(skill)));
}

} // namespace

void GoalWritingViewModel::setHousehold(Household *household)
{
    m_household = household;
    load();
}

void GoalWritingViewModel::setGoal(const QString &goal)
{
    m_goal = goal;
    load();
}

/// The words in force, where words are changed.
void GoalWritingViewModel::load()
{
    if (m_household == nullptr || m_goal.isEmpty())
        return;
    beginResetModel();
    auto draft = mobile::draftOf(*m_household, m_goal);
    m_problem = draft ? QString() : m_household->sentenceFor(draft.error());
    if (draft)
        m_draft = *std::move(draft);
    endResetModel();
    emit edited();
}

int GoalWritingViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : levels;
}

QVariant GoalWritingViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= levels)
        return {};
    const int level = static_cast<int>(placeOf(index.row())) + goals::lowestLevel;
    switch (role) {
    case LevelRole:
        return level;
    case LabelRole:
        return translated(wording::levelWords(level));
    case WordsRole:
        return fromCore(m_draft.levels[placeOf(index.row())]);
    case FindingRole:
        return findingOf(goals::DraftField::Level, level);
    case TodayRole:
        return m_draft.baseline == level;
    default:
        return {};
    }
}

QHash<int, QByteArray> GoalWritingViewModel::roleNames() const
{
    return {{LevelRole, "level"},
            {LabelRole, "label"},
            {WordsRole, "words"},
            {FindingRole, "finding"},
            {TodayRole, "today"}};
}

QString GoalWritingViewModel::findingOf(goals::DraftField field, int level) const
{
    const auto found = std::ranges::find_if(m_findings, [&](const goals::DraftFinding &finding) {
        return finding.field == field && finding.level == level;
    });
    return found != m_findings.end() ? translated(wording::findingWords(*found)) : QString();
}

void GoalWritingViewModel::change()
{
    m_problem.clear();
    if (m_lookedOver && m_household != nullptr) {
        goals::GoalDraft draft = m_draft;
        draft.agreedOn = m_household->today().day;
        m_findings = goals::findingsOf(draft);
    }
    emit dataChanged(index(0), index(levels - 1));
    emit edited();
}

QString GoalWritingViewModel::words() const
{
    return fromCore(m_draft.words);
}

void GoalWritingViewModel::setWords(const QString &words)
{
    m_draft.words = oneLine(words);
    change();
}

QString GoalWritingViewModel::shortWords() const
{
    return fromCore(m_draft.shortWords);
}

void GoalWritingViewModel::setShortWords(const QString &words)
{
    m_draft.shortWords = oneLine(words);
    change();
}

void GoalWritingViewModel::setLevel(int row, const QString &words)
{
    if (row < 0 || row >= levels)
        return;
    m_draft.levels[placeOf(row)] = oneLine(words);
    change();
}

void GoalWritingViewModel::setToday(int row)
{
    if (row < 0 || row >= levels)
        return;
    m_draft.baseline = static_cast<int>(placeOf(row)) + goals::lowestLevel;
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

bool GoalWritingViewModel::ready() const
{
    return m_lookedOver && !goals::firstRefusal(m_findings);
}

bool GoalWritingViewModel::lookOver()
{
    m_lookedOver = true;
    change();
    return ready();
}

bool GoalWritingViewModel::agree()
{
    if (!lookOver())
        return false;
    const Outcome agreed = agreeOn(*m_household, m_goal, m_draft);
    m_problem = agreed ? QString() : m_household->sentenceFor(agreed.error());
    if (agreed)
        m_household->announce();
    emit edited();
    return agreed.ok();
}

} // namespace lidlark::mobile

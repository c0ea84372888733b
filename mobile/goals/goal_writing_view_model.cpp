#include "goal_writing_view_model.h"

#include "core/wording/goal_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>
#include <functional>

namespace lidlark::mobile {

namespace {

constexpr int levels = static_cast<int>(goals::levelCount);

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
    if (draft) {
        m_draft = *std::move(draft);
        m_before = m_draft;
    }
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

void GoalWritingViewModel::setReason(const QString &words)
{
    m_draft.reason = oneLine(words);
    change();
}

/// As core compares them: white space at the ends is no other wording.
bool GoalWritingViewModel::rewords() const
{
    const auto differs = [](const std::string &a, const std::string &b) {
        return fromCore(a).trimmed() != fromCore(b).trimmed();
    };
    return m_before &&
           (differs(m_before->words, m_draft.words) ||
            !std::ranges::equal(m_before->levels, m_draft.levels, std::not_fn(differs)));
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

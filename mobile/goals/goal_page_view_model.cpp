#include "goal_page_view_model.h"

#include "core/wording/day_words.h"
#include "core/wording/goal_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"
#include "mobile/goals/goal_lines.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

/// The one in force first; then by number and day, the newest first.
std::vector<goals::GoalVersion> newestFirst(const goals::GoalRecord &record)
{
    std::vector<goals::GoalVersion> wordings(record.versions.rbegin(), record.versions.rend());
    const auto inForce =
        wordings.begin() + static_cast<std::ptrdiff_t>(wordings.size() - 1 - record.inForce);
    std::rotate(wordings.begin(), inForce, inForce + 1);
    return wordings;
}

} // namespace

void GoalPageViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &GoalPageViewModel::load);
    load();
}

void GoalPageViewModel::setGoal(const QString &goal)
{
    m_goal = goal;
    load();
}

void GoalPageViewModel::load()
{
    if (m_household == nullptr || m_goal.isEmpty())
        return;
    renewRows([this] {
        auto record = goalOf(*m_household, m_goal);
        m_problem = record ? QString() : m_household->sentenceFor(record.error());
        m_record = record ? std::optional(*std::move(record)) : std::nullopt;
        m_wordings = m_record ? newestFirst(*m_record) : std::vector<goals::GoalVersion>();
    });
    emit loaded();
}

QStringList GoalPageViewModel::rowKeys() const
{
    QStringList keys;
    for (const goals::GoalVersion &wording : m_wordings)
        keys.append(fromCore(goals::toText(goals::keyOf(wording.goal))));
    return keys;
}

int GoalPageViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_wordings.size());
}

QString GoalPageViewModel::headingOf(int row) const
{
    if (row == 0)
        return ended() ? tr("Its last words") : tr("Its five steps");
    return row == 1 ? tr("Earlier words") : QString();
}

QString GoalPageViewModel::titleOf(const goals::GoalVersion &version) const
{
    const QString day = translated(wording::dateWords(version.goal.agreedOn));
    return version.author.empty() ? tr("Agreed on %1").arg(day)
                                  : tr("Agreed on %1, written down by %2")
                                        .arg(day, isolated(fromCore(version.author)));
}

QStringList GoalPageViewModel::labelsOf(int row) const
{
    const int stood = m_wordings[static_cast<std::size_t>(row)].goal.now;
    QStringList labels;
    for (int level = goals::highestLevel; level >= goals::lowestLevel; --level) {
        const QString label = translated(wording::levelWords(level));
        if (level != stood)
            labels.append(label);
        else
            labels.append(
                (row == 0 && !ended() ? tr("%1: here it is now") : tr("%1: here it stood last"))
                    .arg(label));
    }
    return labels;
}

QVariant GoalPageViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const goals::GoalVersion &version = m_wordings[static_cast<std::size_t>(index.row())];
    const goals::AgreedGoal &goal = version.goal;
    switch (role) {
    case HeadingRole:
        return headingOf(index.row());
    case TitleRole:
        return titleOf(version);
    case WordsRole:
        return goal.words != m_record->current().goal.words ? fromCore(goal.words) : QString();
    case ReasonRole:
        return goal.reason.empty() ? QString() : tr("Why: %1").arg(isolated(fromCore(goal.reason)));
    case LabelsRole:
        return labelsOf(index.row());
    case LevelsRole: {
        QStringList texts;
        for (auto level = goal.levels.rbegin(); level != goal.levels.rend(); ++level)
            texts.append(fromCore(*level));
        return texts;
    }
    case StoodRole:
        return goals::highestLevel - goal.now;
    case SaidRole:
        return ratingLines(version);
    default:
        return {};
    }
}

QHash<int, QByteArray> GoalPageViewModel::roleNames() const
{
    return {{HeadingRole, "heading"}, {TitleRole, "title"},   {WordsRole, "words"},
            {ReasonRole, "reason"},   {LabelsRole, "labels"}, {LevelsRole, "levels"},
            {StoodRole, "stood"},     {SaidRole, "said"}};
}

QString GoalPageViewModel::words() const
{
    return m_record ? fromCore(m_record->current().goal.words) : QString();
}

QString GoalPageViewModel::areas() const
{
    return m_record ? areaLine(m_record->current().goal) : QString();
}

QString GoalPageViewModel::review() const
{
    if (!m_record)
        return {};
    const Day day = m_record->current().goal.reviewOn;
    const QString words = translated(wording::dateWords(day));
    return day > m_household->today().day ? tr("Looked at again %1.").arg(words)
                                          : tr("It was to be looked at again %1.").arg(words);
}

QStringList GoalPageViewModel::turns() const
{
    return m_record ? turnLines(*m_record) : QStringList();
}

void GoalPageViewModel::takeUp()
{
    if (!m_record)
        return;
    const Outcome done = mobile::takeUp(*m_household, m_goal);
    if (done)
        m_household->announce();
    else {
        m_problem = m_household->sentenceFor(done.error());
        emit loaded();
    }
}

} // namespace lidlark::mobile

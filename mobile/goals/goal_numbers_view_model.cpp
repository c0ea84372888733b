#include "goal_numbers_view_model.h"

#include "core/wording/goal_words.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

void GoalNumbersViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &GoalNumbersViewModel::load);
    load();
}

void GoalNumbersViewModel::load()
{
    renewRows([this] {
        m_goals.clear();
        m_scores.clear();
        m_ended = 0;
        if (!m_household->therapist())
            return;
        auto records = goalsOf(*m_household);
        m_problem = records ? QString() : m_household->sentenceFor(records.error());
        if (!records)
            return;
        m_goals = *std::move(records);
        m_ended = static_cast<int>(
            std::erase_if(m_goals, [](const goals::GoalRecord &goal) { return goal.ending; }));
        m_scores = goals::raterScores(m_goals);
    });
    emit loaded();
}

QStringList GoalNumbersViewModel::rowKeys() const
{
    QStringList keys;
    for (const goals::GoalRecord &record : m_goals)
        keys.append(fromCore(record.current().goal.id));
    return keys;
}

int GoalNumbersViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_goals.size());
}

QVariant GoalNumbersViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const goals::GoalVersion &version = m_goals[static_cast<std::size_t>(index.row())].current();
    switch (role) {
    case GoalIdRole:
        return fromCore(version.goal.id);
    case WordsRole:
        return fromCore(version.goal.words);
    case WeightRole:
        return version.goal.weight;
    case LevelsRole:
        return levelsOf(version);
    default:
        return {};
    }
}

QHash<int, QByteArray> GoalNumbersViewModel::roleNames() const
{
    return {{GoalIdRole, "goalId"},
            {WordsRole, "words"},
            {WeightRole, "weight"},
            {LevelsRole, "levels"}};
}

QString GoalNumbersViewModel::nameOf(goals::RatedBy role, const std::string &rater)
{
    return role == goals::RatedBy::Together ? tr("Agreed together") : fromCore(rater);
}

QStringList GoalNumbersViewModel::levelsOf(const goals::GoalVersion &version) const
{
    QStringList lines;
    for (const goals::RaterScore &score : m_scores) {
        const goals::Rating *last = goals::latestBy(version, score.role, score.rater);
        const QString sign = last != nullptr && last->level > 0 ? QStringLiteral("+") : QString();
        lines.append(last != nullptr ? tr("%1: %2").arg(nameOf(score.role, score.rater),
                                                        sign + numerals(last->level))
                                     : tr("%1: not rated").arg(nameOf(score.role, score.rater)));
    }
    return lines;
}

QStringList GoalNumbersViewModel::raters() const
{
    QStringList names;
    for (const goals::RaterScore &score : m_scores)
        names.append(nameOf(score.role, score.rater));
    return names;
}

QStringList GoalNumbersViewModel::scores() const
{
    QStringList texts;
    for (const goals::RaterScore &score : m_scores)
        texts.append(score.t ? numerals(QString::number(*score.t, 'f', 1))
                             : tr("No T-value: nothing rated has a weight"));
    return texts;
}

QStringList GoalNumbersViewModel::restsOn() const
{
    QStringList texts;
    for (const goals::RaterScore &score : m_scores)
        texts.append(
            tr("Rests on %1 of %2 goals").arg(numerals(score.rated), numerals(score.goals)));
    return texts;
}

QString GoalNumbersViewModel::leftOut() const
{
    return m_ended > 0
               ? numerals(tr("%n goals that ended are left out of these values.", nullptr, m_ended))
               : QString();
}

void GoalNumbersViewModel::weigh(int row, int weight)
{
    if (row < 0 || row >= rowCount())
        return;
    const std::string goal = m_goals[static_cast<std::size_t>(row)].current().goal.id;
    const Outcome done = mobile::weigh(*m_household, goal, weight);
    m_problem = done ? QString() : m_household->sentenceFor(done.error());
    if (done)
        m_household->announce();
    else
        emit loaded();
}

} // namespace lidlark::mobile

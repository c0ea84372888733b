#include "goals_view_model.h"

#include "core/wording/day_words.h"
#include "core/wording/goal_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <set>

namespace lidlark::mobile {

void GoalsViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &GoalsViewModel::load);
    load();
}

void GoalsViewModel::load()
{
    renewRows([this] {
        auto records = goalsOf(*m_household);
        m_problem = records ? QString() : m_household->sentenceFor(records.error());
        if (records)
            m_goals = *std::move(records);
    });
    emit loaded();
}

QStringList GoalsViewModel::rowKeys() const
{
    QStringList keys;
    for (const goals::GoalRecord &record : m_goals)
        keys.append(fromCore(record.current().goal.id));
    return keys;
}

int GoalsViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_goals.size());
}

QVariant GoalsViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const goals::GoalRecord &record = m_goals[static_cast<std::size_t>(index.row())];
    const child::Goal &goal = record.current().goal;
    switch (role) {
    case GoalIdRole:
        return fromCore(goal.id);
    case WordsRole:
        return fromCore(goal.words);
    case NowRole:
        return fromCore(child::levelOf(goal, goal.now));
    case NextRole:
        return goal.now < goals::highestLevel ? fromCore(child::levelOf(goal, goal.now + 1))
                                              : QString();
    case DatesRole:
        return datesOf(goal);
    case SaidRole:
        return saidOf(record.current());
    case BeforeRole:
        return record.versions.size() > 1 ? tr("Its words have been changed. What was said of the "
                                               "earlier words stays with them.")
                                          : QString();
    default:
        return {};
    }
}

QHash<int, QByteArray> GoalsViewModel::roleNames() const
{
    return {{GoalIdRole, "goalId"}, {WordsRole, "words"}, {NowRole, "nowText"},
            {NextRole, "nextText"}, {DatesRole, "dates"}, {SaidRole, "said"},
            {BeforeRole, "before"}};
}

QString GoalsViewModel::datesOf(const child::Goal &goal) const
{
    const QString agreed = translated(wording::dateWords(goal.agreedOn));
    const QString review = translated(wording::dateWords(goal.reviewOn));
    return goal.reviewOn > m_household->today().day
               ? tr("Agreed %1. Looked at again %2.").arg(agreed, review)
               : tr("Agreed %1. It was to be looked at again %2.").arg(agreed, review);
}

QStringList GoalsViewModel::saidOf(const goals::GoalVersion &version)
{
    QStringList lines;
    std::set<std::pair<goals::RatedBy, std::string>> heard;
    for (auto rating = version.ratings.rbegin(); rating != version.ratings.rend(); ++rating) {
        const bool together = rating->role == goals::RatedBy::Together;
        if (heard.insert({rating->role, together ? std::string() : rating->rater}).second)
            lines.append(translated(wording::ratingWords(*rating, version)));
    }
    return lines;
}

} // namespace lidlark::mobile

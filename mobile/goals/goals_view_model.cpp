#include "goals_view_model.h"

#include "core/wording/day_words.h"
#include "core/wording/goal_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"
#include "mobile/goals/goal_lines.h"

#include <algorithm>
#include <set>

namespace lidlark::mobile {

namespace {

/// Where a goal is about several parts of life, the first one counts; without any it comes last.
std::size_t areaPlaceOf(const goals::GoalRecord &record)
{
    const auto &areas = record.current().goal.lifeAreas;
    return areas.empty() ? catalogue::lifeAreaCount
                         : static_cast<std::size_t>(std::ranges::min(areas));
}

} // namespace

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
            sort(*std::move(records));
    });
    emit loaded();
}

void GoalsViewModel::sort(std::vector<goals::GoalRecord> records)
{
    m_goals.clear();
    m_earlier.clear();
    for (goals::GoalRecord &record : records)
        (record.ending ? m_earlier : m_goals).push_back(std::move(record));
    std::ranges::stable_sort(m_goals, {}, areaPlaceOf);
    std::ranges::stable_sort(m_earlier, std::ranges::greater{},
                             [](const goals::GoalRecord &record) { return record.ending->on; });
}

QString GoalsViewModel::headingOf(std::size_t row) const
{
    const std::size_t place = areaPlaceOf(m_goals[row]);
    if (row > 0 && areaPlaceOf(m_goals[row - 1]) == place)
        return {};
    if (place < catalogue::lifeAreaCount)
        return areaWords(static_cast<catalogue::LifeArea>(place));
    return row > 0 ? tr("Other goals") : QString();
}

QStringList GoalsViewModel::earlier() const
{
    QStringList ids;
    for (const goals::GoalRecord &record : m_earlier)
        ids.append(fromCore(record.current().goal.id));
    return ids;
}

QStringList GoalsViewModel::earlierWords() const
{
    QStringList words;
    for (const goals::GoalRecord &record : m_earlier)
        words.append(fromCore(record.current().goal.words));
    return words;
}

QStringList GoalsViewModel::earlierEnds() const
{
    QStringList lines;
    for (const goals::GoalRecord &record : m_earlier)
        lines.append(translated(wording::turnLine(*record.ending)));
    return lines;
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
    case HeadingRole:
        return headingOf(static_cast<std::size_t>(index.row()));
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
    return {{GoalIdRole, "goalId"}, {HeadingRole, "heading"}, {WordsRole, "words"},
            {NowRole, "nowText"},   {NextRole, "nextText"},   {DatesRole, "dates"},
            {SaidRole, "said"},     {BeforeRole, "before"}};
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

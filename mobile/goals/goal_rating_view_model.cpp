#include "goal_rating_view_model.h"

#include "core/wording/day_words.h"
#include "core/wording/goal_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"
#include "mobile/goals/goal_lines.h"

namespace lidlark::mobile {

namespace {

constexpr int steps = goals::highestLevel - goals::lowestLevel + 1;
constexpr int roleCount = static_cast<int>(goals::ratedByNames.names.size());

} // namespace

void GoalRatingViewModel::setHousehold(Household *household)
{
    m_household = household;
    m_day = household->today().day;
    load();
}

void GoalRatingViewModel::setGoal(const QString &goal)
{
    m_goal = goal;
    load();
}

void GoalRatingViewModel::load()
{
    if (m_household == nullptr || m_goal.isEmpty())
        return;
    beginResetModel();
    auto record = goalOf(*m_household, m_goal);
    m_problem = record ? QString() : m_household->sentenceFor(record.error());
    m_record = record ? std::optional(*std::move(record)) : std::nullopt;
    endResetModel();
    emit loaded();
}

void GoalRatingViewModel::change()
{
    m_problem.clear();
    if (rowCount() > 0)
        emit dataChanged(index(0), index(rowCount() - 1));
    emit loaded();
}

int GoalRatingViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() || !m_record ? 0 : steps;
}

QVariant GoalRatingViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const int level = goals::highestLevel - index.row();
    switch (role) {
    case LabelRole:
        return translated(wording::levelWords(level));
    case WordsRole:
        return fromCore(child::levelOf(m_record->current().goal, level));
    case ChosenRole:
        return m_level == level;
    default:
        return {};
    }
}

QHash<int, QByteArray> GoalRatingViewModel::roleNames() const
{
    return {{LabelRole, "label"}, {WordsRole, "words"}, {ChosenRole, "chosen"}};
}

QString GoalRatingViewModel::words() const
{
    return m_record ? fromCore(m_record->current().goal.words) : QString();
}

QStringList GoalRatingViewModel::roles()
{
    QStringList words;
    for (int i = 0; i < roleCount; ++i)
        words.append(translated(wording::ratedByWords(static_cast<goals::RatedBy>(i))));
    return words;
}

void GoalRatingViewModel::setRole(int role)
{
    if (role < 0 || role >= roleCount)
        return;
    m_role = static_cast<goals::RatedBy>(role);
    // Whoever holds this phone speaks for one side; of others a name is asked for.
    const auto holder =
        m_household->therapist() ? goals::RatedBy::Therapist : goals::RatedBy::Family;
    m_rater = *m_role == holder ? m_household->person() : QString();
    change();
}

void GoalRatingViewModel::setRater(const QString &rater)
{
    m_rater = rater;
    change();
}

QString GoalRatingViewModel::day() const
{
    if (m_household == nullptr)
        return {};
    return capitalised(translated(wording::dayWords(m_day, m_household->today().day)));
}

bool GoalRatingViewModel::dayMayRise() const
{
    return m_household != nullptr && m_day < m_household->today().day;
}

bool GoalRatingViewModel::dayMayFall() const
{
    return m_record && m_day > m_record->current().goal.agreedOn;
}

QStringList GoalRatingViewModel::said() const
{
    return m_record ? ratingLines(m_record->current()) : QStringList();
}

bool GoalRatingViewModel::complete() const
{
    return m_level && m_role && (!named() || !m_rater.trimmed().isEmpty());
}

void GoalRatingViewModel::choose(int row)
{
    if (row < 0 || row >= rowCount())
        return;
    m_level = goals::highestLevel - row;
    change();
}

void GoalRatingViewModel::moveDay(int days)
{
    if ((days > 0 && !dayMayRise()) || (days < 0 && !dayMayFall()))
        return;
    m_day = m_day + days;
    change();
}

bool GoalRatingViewModel::keep()
{
    if (!complete() || !m_record)
        return false;
    const Outcome kept = rate(*m_household, {toCore(m_goal), *m_level, *m_role, toCore(m_rater),
                                             m_day, goals::keyOf(m_record->current().goal)});
    m_problem = kept ? QString() : m_household->sentenceFor(kept.error());
    if (kept)
        m_household->announce();
    emit loaded();
    return kept.ok();
}

} // namespace lidlark::mobile

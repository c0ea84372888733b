#include "goal_ending_view_model.h"

#include "core/wording/goal_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <array>

namespace lidlark::mobile {

namespace {

constexpr std::array endings{goals::Turn::Reached, goals::Turn::MattersLess, goals::Turn::Replaced};

} // namespace

void GoalEndingViewModel::setHousehold(Household *household)
{
    m_household = household;
    load();
}

void GoalEndingViewModel::setGoal(const QString &goal)
{
    m_goal = goal;
    load();
}

void GoalEndingViewModel::load()
{
    if (m_household == nullptr || m_goal.isEmpty())
        return;
    const auto record = goalOf(*m_household, m_goal);
    m_problem = record ? QString() : m_household->sentenceFor(record.error());
    m_words = record ? fromCore(record->current().goal.words) : QString();
    emit changed();
}

QStringList GoalEndingViewModel::ways()
{
    QStringList words;
    for (const goals::Turn turn : endings)
        words.append(translated(wording::turnWords(turn)));
    return words;
}

void GoalEndingViewModel::setWay(int way)
{
    if (way < 0 || way >= static_cast<int>(endings.size()))
        return;
    m_way = endings[static_cast<std::size_t>(way)];
    m_problem.clear();
    emit changed();
}

void GoalEndingViewModel::setReason(const QString &reason)
{
    m_reason = reason;
    m_problem.clear();
    emit changed();
}

bool GoalEndingViewModel::end()
{
    if (m_household == nullptr || !m_way)
        return false;
    const Outcome done =
        mobile::endGoal(*m_household, {toCore(m_goal), *m_way, toCore(m_reason.simplified())});
    m_problem = done ? QString() : m_household->sentenceFor(done.error());
    if (done)
        m_household->announce();
    emit changed();
    return done.ok();
}

} // namespace lidlark::mobile

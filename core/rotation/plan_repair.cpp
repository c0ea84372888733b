#include "core/rotation/plan_repair.h"

#include <algorithm>
#include <limits>

namespace lidlark::rotation {

namespace {

constexpr int shortRest = 4;
constexpr int restSpread = 5;

} // namespace

PlanRepair::PlanRepair(const MenuProblem &problem, const PlanRules &rules,
                       const std::function<bool()> &isOver)
    : m_problem(problem), m_rules(rules), m_isOver(isOver),
      m_isPinned(problem.entries.size(), false), m_restsTill(problem.entries.size(), 0)
{
    for (const auto &day : rules.pinned) {
        for (const std::size_t entry : day)
            m_isPinned[entry] = true;
    }
}

/// Each entry, the longest first, on the day where it breaks least.
void PlanRepair::layOut(std::span<const std::size_t> entries)
{
    m_days.clear();
    for (const ChoiceRules &rules : m_rules.days)
        m_days.emplace_back(m_problem, rules);
    for (std::size_t day = 0; day < m_rules.pinned.size(); ++day) {
        for (const std::size_t entry : m_rules.pinned[day])
            m_days[day].put(entry);
    }
    std::vector<std::size_t> order(entries.begin(), entries.end());
    std::ranges::stable_sort(order, [&](std::size_t one, std::size_t other) {
        return m_problem.entries[one].minutes > m_problem.entries[other].minutes;
    });
    for (const std::size_t entry : order) {
        std::size_t best = m_days.size();
        int least = std::numeric_limits<int>::max();
        for (std::size_t day = 0; day < m_days.size(); ++day) {
            if (m_days[day].placesLeft() == 0)
                continue;
            const int before = m_days[day].broken();
            m_days[day].put(entry);
            const int added = m_days[day].broken() - before;
            m_days[day].takeOut(entry);
            if (added < least) {
                least = added;
                best = day;
            }
        }
        m_days[best].put(entry);
    }
    m_broken = 0;
    for (const DayLoad &day : m_days)
        m_broken += day.broken();
}

bool PlanRepair::repair(std::span<const std::size_t> entries, std::span<const std::size_t> spare,
                        int steps)
{
    layOut(entries);
    m_spare.assign(spare.begin(), spare.end());
    std::ranges::fill(m_restsTill, 0);
    m_least = m_broken;
    for (int step = 1; step <= steps && m_broken > 0; ++step) {
        if (m_isOver && m_isOver())
            return false;
        exchangeOn(brokenDay(step), step);
    }
    return m_broken == 0;
}

/// The broken days take turns.
std::size_t PlanRepair::brokenDay(int step) const
{
    const std::size_t first = static_cast<std::size_t>(step) % m_days.size();
    for (std::size_t i = 0; i < m_days.size(); ++i) {
        const std::size_t day = (first + i) % m_days.size();
        if (m_days[day].broken() > 0)
            return day;
    }
    return first;
}

void PlanRepair::look(std::size_t day, std::size_t out, std::size_t in, std::size_t from, int step,
                      Exchange &best)
{
    int change = m_days[day].change(out, in);
    if (from < m_days.size())
        change += m_days[from].change(in, out);
    const bool rests = m_restsTill[out] > step || m_restsTill[in] > step;
    if (change < best.change && (!rests || m_broken + change < m_least))
        best = {change, out, in, from};
}

bool PlanRepair::exchangeOn(std::size_t day, int step)
{
    Exchange best{std::numeric_limits<int>::max(), 0, 0, 0};
    const std::vector<std::size_t> here(m_days[day].entries().begin(), m_days[day].entries().end());
    for (const std::size_t out : here) {
        if (m_isPinned[out])
            continue;
        for (std::size_t from = 0; from < m_days.size(); ++from) {
            const std::vector<std::size_t> there(m_days[from].entries().begin(),
                                                 m_days[from].entries().end());
            for (const std::size_t in : there) {
                if (from != day && !m_isPinned[in])
                    look(day, out, in, from, step, best);
            }
        }
        for (const std::size_t in : m_spare)
            look(day, out, in, m_days.size(), step, best);
    }
    if (best.change == std::numeric_limits<int>::max())
        return false;
    m_days[day].takeOut(best.out);
    m_days[day].put(best.in);
    if (best.day < m_days.size()) {
        m_days[best.day].takeOut(best.in);
        m_days[best.day].put(best.out);
    } else {
        *std::ranges::find(m_spare, best.in) = best.out;
    }
    m_broken += best.change;
    m_least = std::min(m_least, m_broken);
    m_restsTill[best.out] = step + shortRest + step % restSpread;
    m_restsTill[best.in] = step + shortRest + step * 7 % restSpread;
    return true;
}

std::vector<std::vector<std::size_t>> PlanRepair::days() const
{
    std::vector<std::vector<std::size_t>> days;
    for (const DayLoad &day : m_days) {
        days.emplace_back(day.entries().begin(), day.entries().end());
        std::ranges::sort(days.back());
    }
    return days;
}

} // namespace lidlark::rotation

#include "core/rotation/found_plans.h"

#include "core/rotation/plan_start.h"

#include <algorithm>
#include <limits>

namespace lidlark::rotation {

namespace {

// All measured, not derived (tests/bench/bench_menu.cpp).
constexpr int stepsWithSpare = 100;
constexpr std::size_t spareMost = 200; // entries: a step asks each of them
constexpr int stepsForProposed = 60;
constexpr int stepsForSettled = 400;
constexpr std::int64_t patienceAtFirst = 20'000;
constexpr std::int64_t patienceForPart = 300;

/// A value that no plan falls short of, less one: curves take nothing away.
std::int64_t belowAll(const MenuProblem &problem, const PlanDraft &pinned,
                      std::span<const std::size_t> open, std::size_t places)
{
    std::vector<int> worths;
    std::int64_t value = -1;
    for (const std::size_t entry : open)
        worths.push_back(problem.entries[entry].worth);
    for (const DayRoom &room : pinned.rooms()) {
        places -= room.entries().size();
        for (const std::size_t entry : room.entries())
            value += problem.entries[entry].worth;
    }
    std::ranges::sort(worths);
    worths.resize(std::min(worths.size(), places));
    for (const int worth : worths)
        value += worth;
    return value;
}

/// FNV-1a over the entries.
std::uint64_t hashOf(std::span<const std::size_t> entries)
{
    std::uint64_t hash = 14695981039346656037ull;
    for (const std::size_t entry : entries)
        hash = (hash ^ entry) * 1099511628211ull;
    return hash;
}

} // namespace

FoundPlans::FoundPlans(const MenuProblem &problem, const PlanRules &rules,
                       const HorizonLimits &limits, const PlanDraft &pinned,
                       std::span<const std::size_t> open, const std::function<bool()> &isOver)
    : m_problem(problem), m_limits(limits), m_pinned(pinned), m_open(open.begin(), open.end()),
      m_isOver(isOver), m_placing(problem, {pinned.rooms().begin(), pinned.rooms().end()}, isOver),
      m_repair(problem, rules, isOver), m_value(belowAll(problem, pinned, open, limits.places()))
{
}

void FoundPlans::know(const PlanDraft &draft)
{
    if (draft.isFull() && (!m_best || draft.value() > m_value)) {
        m_best = draft;
        m_value = draft.value();
    }
}

void FoundPlans::fillFrom(std::span<const std::size_t> order)
{
    PlanDraft draft = m_pinned;
    fillInOrder(draft, order);
    if (draft.isFull()) {
        improveByExchange(draft, m_open, m_isOver);
        know(draft);
        return;
    }
    const std::vector<std::size_t> wanted = notPinned(order);
    std::size_t places = 0;
    for (const DayRoom &room : m_pinned.rooms())
        places += room.placesLeft();
    const auto spare = std::span(wanted).subspan(places);
    if (m_repair.repair(std::span(wanted).first(places),
                        spare.first(std::min(spare.size(), spareMost)), stepsWithSpare))
        adopt(m_repair.days());
}

void FoundPlans::propose(std::span<const std::size_t> entries)
{
    if (valueOf(entries) <= m_value)
        return;
    std::vector<std::size_t> set = notPinned(entries);
    std::ranges::sort(set);
    if (m_proposed.insert(hashOf(set)).second && m_repair.repair(set, {}, stepsForProposed))
        adopt(m_repair.days());
}

void FoundPlans::settle(std::span<const std::size_t> entries)
{
    settle(entries, patienceAtFirst);
}

void FoundPlans::settle(std::span<const std::size_t> entries, std::int64_t patience)
{
    if (valueOf(entries) <= m_value || !keepsLimits(entries))
        return;
    const std::vector<std::size_t> set = notPinned(entries);
    if (m_repair.repair(set, {}, stepsForSettled)) {
        adopt(m_repair.days());
        return;
    }
    const auto outcome = m_placing.place(set, patience);
    m_placesAreScarce = true;
    if (outcome == PlanPlacing::Outcome::Placed)
        adopt(m_placing.days());
    else if (outcome == PlanPlacing::Outcome::NotKnown)
        m_doubtful.emplace_back(entries.begin(), entries.end());
}

void FoundPlans::settleDoubtful()
{
    const std::vector<std::vector<std::size_t>> doubtful = std::move(m_doubtful);
    m_doubtful.clear();
    for (const std::vector<std::size_t> &entries : doubtful)
        settle(entries, std::numeric_limits<std::int64_t>::max());
}

std::int64_t FoundPlans::doubtfulValue() const
{
    std::int64_t most = std::numeric_limits<std::int64_t>::min();
    for (const std::vector<std::size_t> &entries : m_doubtful)
        most = std::max(most, valueOf(entries));
    return most;
}

bool FoundPlans::cannotStand(std::span<const std::size_t> entries)
{
    return m_placesAreScarce &&
           m_placing.place(notPinned(entries), patienceForPart) == PlanPlacing::Outcome::Impossible;
}

std::int64_t FoundPlans::valueOf(std::span<const std::size_t> entries) const
{
    std::vector<int> minutes(m_problem.curves.size(), 0);
    std::int64_t value = 0;
    for (const std::size_t entry : entries) {
        value += m_problem.entries[entry].worth;
        for (const Amount &amount : m_problem.entries[entry].amounts)
            minutes[amount.curve] += amount.minutes;
    }
    for (std::size_t curve = 0; curve < minutes.size(); ++curve)
        value += gainOf(m_problem.curves[curve], 0, minutes[curve]);
    return value;
}

bool FoundPlans::keepsLimits(std::span<const std::size_t> entries) const
{
    const std::vector<std::int64_t> left = m_limits.leftBy(entries);
    return std::ranges::all_of(std::span(left).subspan(m_limits.curves()),
                               [](std::int64_t one) { return one >= 0; });
}

std::vector<std::size_t> FoundPlans::notPinned(std::span<const std::size_t> entries) const
{
    std::vector<std::size_t> others;
    std::ranges::copy_if(entries, std::back_inserter(others),
                         [&](std::size_t entry) { return m_pinned.dayOf(entry) == nowhere; });
    return others;
}

void FoundPlans::adopt(const std::vector<std::vector<std::size_t>> &days)
{
    PlanDraft draft = m_pinned;
    for (std::size_t day = 0; day < days.size(); ++day) {
        for (const std::size_t entry : days[day]) {
            if (draft.dayOf(entry) == nowhere)
                draft.put(entry, day);
        }
    }
    improveByExchange(draft, m_open, m_isOver);
    know(draft);
}

} // namespace lidlark::rotation

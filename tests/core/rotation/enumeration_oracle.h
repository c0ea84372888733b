#pragma once

#include "core/rotation/exact_search.h"
#include "core/rotation/give_way.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <vector>

namespace lidlark::rotation::oracle {

using Set = std::vector<std::size_t>;

/// Minute by minute, so that it shares nothing with the segments' arithmetic.
inline int coverageOf(const MenuProblem &problem, const Set &set)
{
    std::map<int, int> minutes;
    for (const std::size_t index : set) {
        for (const Amount &amount : problem.entries[index].amounts)
            minutes[amount.curve] += amount.minutes;
    }
    int sum = 0;
    for (const auto &[curve, total] : minutes) {
        std::vector<int> slopes;
        for (const Segment &segment : problem.curves[static_cast<std::size_t>(curve)])
            slopes.insert(slopes.end(), static_cast<std::size_t>(segment.width), segment.slope);
        for (int minute = 0; minute < total && minute < static_cast<int>(slopes.size()); ++minute)
            sum += slopes[static_cast<std::size_t>(minute)];
    }
    return sum;
}

inline int valueOf(const MenuProblem &problem, const Set &set)
{
    int value = coverageOf(problem, set);
    for (const std::size_t index : set)
        value += problem.entries[index].worth;
    return value;
}

inline bool isAllowed(const MenuProblem &problem, const Set &set, std::size_t givenWay,
                      std::size_t heldBackMost)
{
    std::size_t fresh = 0;
    std::size_t friends = 0;
    std::size_t free = 0;
    std::size_t messy = 0;
    std::size_t heldBack = 0;
    std::set<int> families;
    std::map<int, int> pieces;
    for (const std::size_t index : set) {
        const Entry &entry = problem.entries[index];
        fresh += entry.isNew ? 1 : 0;
        friends += entry.isKnownFriend ? 1 : 0;
        free += entry.isWithoutTable ? 1 : 0;
        messy += entry.isMessy ? 1 : 0;
        heldBack += entry.isHeldBack ? 1 : 0;
        families.insert(entry.family);
        for (const Need &need : entry.needs)
            pieces[need.item] += need.pieces;
    }
    const bool stocked = std::ranges::all_of(pieces, [&](const auto &needed) {
        return needed.second <= problem.stock[static_cast<std::size_t>(needed.first)];
    });
    return stocked && heldBack <= heldBackMost && (givenWay > 0 || fresh <= 1) &&
           (givenWay > 1 || friends >= 1) && (givenWay > 2 || free >= 1) &&
           (givenWay > 3 || families.size() == set.size()) && (givenWay > 4 || messy <= 1);
}

/// Calls @p visit with every set of @p size entries, ascending, in dictionary order.
template <class Visit>
void forEachSet(std::size_t entries, std::size_t size, const Visit &visit, Set &set)
{
    if (set.size() == size) {
        visit(set);
        return;
    }
    for (std::size_t next = set.empty() ? 0 : set.back() + 1; next < entries; ++next) {
        set.push_back(next);
        forEachSet(entries, size, visit, set);
        set.pop_back();
    }
}

/// The first optimum in dictionary order, by looking at every set.
inline std::optional<Choice> bestByLooking(const MenuProblem &problem, std::size_t offers,
                                           std::size_t givenWay, std::size_t heldBackMost)
{
    std::optional<Choice> best;
    Set set;
    forEachSet(
        problem.entries.size(), offers,
        [&](const Set &one) {
            const int value = valueOf(problem, one);
            if (isAllowed(problem, one, givenWay, heldBackMost) && (!best || value > best->value))
                best = Choice{one, value};
        },
        set);
    return best;
}

/// The ladder of design.md 5, by looking at every set on every step.
inline Choice settleByLooking(const MenuProblem &problem, std::size_t offers)
{
    for (std::size_t count = std::min(offers, problem.entries.size()); count > 0; --count) {
        for (std::size_t heldBack = 0; heldBack <= count; ++heldBack) {
            for (std::size_t givenWay = 0; givenWay <= 5; ++givenWay) {
                if (const auto best = bestByLooking(problem, count, givenWay, heldBack))
                    return *best;
            }
        }
    }
    return {};
}

} // namespace lidlark::rotation::oracle

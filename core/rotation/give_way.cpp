#include "core/rotation/give_way.h"

#include "core/rotation/exact_search.h"

#include <algorithm>

namespace lidlark::rotation {

namespace {

std::optional<Choice> bestOf(const MenuProblem &problem, std::size_t offers, std::int64_t &nodes)
{
    const auto heldBack =
        static_cast<std::size_t>(std::ranges::count_if(problem.entries, &Entry::isHeldBack));
    for (std::size_t most = 0; most <= std::min(heldBack, offers); ++most) {
        for (std::size_t givenWay = 0; givenWay <= sideConditionCount; ++givenWay) {
            const ChoiceRules rules{offers, ConditionsInForce(givenWay), most};
            if (auto choice = bestChoice(problem, rules, nodes))
                return choice;
        }
    }
    return std::nullopt;
}

} // namespace

Settled settle(const MenuProblem &problem, std::size_t offers)
{
    Settled settled;
    for (std::size_t count = std::min(offers, problem.entries.size()); count > 0; --count) {
        if (const auto choice = bestOf(problem, count, settled.nodes)) {
            settled.entries = choice->entries;
            settled.value = choice->value;
            settled.gaveWay = brokenBy(problem, choice->entries);
            break;
        }
    }
    return settled;
}

} // namespace lidlark::rotation

#include "core/rotation/side_conditions.h"

#include <algorithm>
#include <set>

namespace lidlark::rotation {

bool breaks(SideCondition condition, const MenuProblem &problem,
            std::span<const std::size_t> chosen)
{
    const auto count = [&](bool Entry::*trait) {
        return std::ranges::count_if(
            chosen, [&](std::size_t index) { return problem.entries[index].*trait; });
    };
    std::set<int> families;
    switch (condition) {
    case SideCondition::OneNew:
        return count(&Entry::isNew) > 1;
    case SideCondition::KnownFriend:
        return !chosen.empty() && count(&Entry::isKnownFriend) == 0;
    case SideCondition::WithoutTable:
        return !chosen.empty() && count(&Entry::isWithoutTable) == 0;
    case SideCondition::Family:
        for (const std::size_t index : chosen)
            families.insert(problem.entries[index].family);
        return families.size() < chosen.size();
    case SideCondition::OneMess:
        return count(&Entry::isMessy) > 1;
    }
    return false;
}

std::vector<SideCondition> brokenBy(const MenuProblem &problem, std::span<const std::size_t> chosen)
{
    std::vector<SideCondition> broken;
    for (std::size_t i = 0; i < sideConditionCount; ++i) {
        const auto condition = static_cast<SideCondition>(i);
        if (breaks(condition, problem, chosen))
            broken.push_back(condition);
    }
    return broken;
}

} // namespace lidlark::rotation

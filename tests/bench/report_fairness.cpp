#include "tests/support/ninety_days.h"

#include <algorithm>
#include <iostream>

/// Ninety afternoons of every island child: minutes of each skill that fits, beside what the week's
/// curve asks for (core/rotation/coverage.h: 15 minutes a week, and a goal's skills before the
/// others), and how long an activity waited at most. LIDLARK_SOURCE_DIR names the source tree.
int main()
{
    using namespace lidlark;
    using namespace lidlark::test;
    constexpr int needAWeek = 15;
    std::cout << "child,skill,goal,minutes,of_need_percent,bouts,days_between\n";
    for (const auto &family : usecase::island::families()) {
        const NinetyDays lived = NinetyDaysOf(family.child, 1).run();
        for (std::size_t i = 0; i < catalogue::skillCount; ++i) {
            if (lived.possible[i] == 0)
                continue;
            const int need = needAWeek * NinetyDays::days / 7;
            std::cout << family.child << ',' << catalogue::skillCodes.names[i] << ','
                      << (lived.isGoal[i] ? "goal" : "") << ',' << lived.minutes[i] << ','
                      << 100 * lived.minutes[i] / need << ',' << lived.bouts[i] << ','
                      << NinetyDays::days / std::max(1, lived.bouts[i]) << '\n';
        }
        const auto longest = std::ranges::max_element(
            lived.longestGap, {}, [](const auto &entry) { return entry.second; });
        std::cout << family.child << ",waited at most,," << longest->second << " days ("
                  << longest->first.value << "; " << lived.feasible.size() << " activities)\n";
    }
    return 0;
}

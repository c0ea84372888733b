// lidlark-mutants-worker CASES: judges CASES random cases by the mutated gate (LIDLARK_MUTANT says
// by which mutant of it; 0: by the gate itself) and by the second reading of the rules. The cases
// are the same every time. Exit 1 at the first disagreement, 0 where there is none.

#include "tests/core/safety/gate_comparison.h"
#include "tests/core/safety/gate_random.h"
#include "tests/mutation/chosen.h"

#include <cstdio>
#include <cstdlib>
#include <exception>

namespace {

using namespace lidlark;

/// Several seeds, so that no single one decides what is seen.
constexpr std::uint64_t seeds[] = {1, 20, 300, 4000};

const char *firstDisagreement(std::uint64_t seed, int cases, comparison::Tally &tally)
{
    drawn::WithDice dice(seed);
    for (int i = 0; i < cases; ++i) {
        dice.begin(i);
        const GateWorld world = drawn::aWorld();
        if (const char *what = comparison::disagreement(world, drawn::anActivity(world), tally))
            return what;
    }
    return nullptr;
}

int judgeAll(int cases)
{
    comparison::Tally tally;
    for (const std::uint64_t seed : seeds) {
        const int share = cases / static_cast<int>(std::size(seeds));
        if (const char *what = firstDisagreement(seed, share, tally)) {
            std::printf("mutant %d, case %d: %s\n", mutation::chosen(), tally.all(), what);
            return 1;
        }
    }
    std::printf("mutant %d: no disagreement in %d cases\n", mutation::chosen(), tally.all());
    return 0;
}

} // namespace

int main(int count, char **words)
{
    if (count != 2) {
        std::fputs("usage: lidlark-mutants-worker CASES\n", stderr);
        return 2;
    }
    try {
        return judgeAll(std::atoi(words[1]));
    } catch (const std::exception &problem) {
        std::printf("mutant %d throws: %s\n", mutation::chosen(), problem.what());
        return 1;
    }
}

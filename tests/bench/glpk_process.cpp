#include "tests/bench/read_instance.h"
#include "tests/core/rotation/plan_program.h"

#include <cstdio>

/// One problem solved by GLPK in a process of its own: what bench_menu measures whole.
/// @param argv the problem's file.
int main(int argc, char **argv)
{
    if (argc < 2)
        return 2;
    const auto instance = lidlark::bench::readFile(argv[1]);
    if (!instance)
        return 1;
    const auto rules = lidlark::bench::rulesOfAll(*instance);
    const lidlark::rotation::oracle::PlanProgram program(instance->problem, rules);
    const auto value = lidlark::rotation::oracle::glpkOptimum(program.program(), 60);
    std::printf("%d\n", value.value_or(-1));
    return 0;
}

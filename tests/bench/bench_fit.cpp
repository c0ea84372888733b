#include "core/measure/test_cylinder.h"
#include "tests/core/measure/random_solid.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <fstream>
#include <optional>
#include <sstream>

/// The time of one size check (design.md 12: median under 0.2 ms), over the things of objects.csv
/// and over made-up solids. A pass asks every solid once; `median_ms` and `worst_ms` are over
/// solids, of each solid's mean over the passes.
namespace {

using lidlark::measure::Solid;

/// A row of objects.csv, which has no quoted cells.
std::optional<Solid> solidOf(const std::string &line)
{
    std::istringstream cells(line);
    std::string name;
    std::string shape;
    std::getline(cells, name, ',');
    std::getline(cells, shape, ',');
    std::vector<double> mm;
    std::string size;
    for (int i = 0; i < 3 && std::getline(cells, size, ','); ++i) {
        if (!size.empty())
            mm.push_back(std::stod(size));
    }
    const auto solid = lidlark::measure::solidFrom(shape, mm);
    return solid ? std::optional(*solid) : std::nullopt;
}

std::vector<Solid> thingsAtHand()
{
    std::ifstream file(LIDLARK_OBJECTS_CSV);
    std::vector<Solid> solids;
    std::string line;
    std::getline(file, line);
    while (std::getline(file, line)) {
        if (const auto solid = solidOf(line))
            solids.push_back(*solid);
    }
    return solids;
}

std::vector<Solid> madeUp()
{
    constexpr int number = 300;
    std::mt19937_64 random(number);
    std::vector<Solid> solids;
    solids.reserve(number);
    for (int i = 0; i < number; ++i)
        solids.push_back(lidlark::measure::samples::randomSolid(i, random).solid());
    return solids;
}

void measure(benchmark::State &state, const std::vector<Solid> &solids)
{
    using Clock = std::chrono::steady_clock;
    if (solids.empty()) {
        state.SkipWithError("no solids to measure");
        return;
    }
    std::vector<double> taken(solids.size(), 0);
    for ([[maybe_unused]] const auto pass : state) {
        for (std::size_t i = 0; i < solids.size(); ++i) {
            const auto begin = Clock::now();
            benchmark::DoNotOptimize(lidlark::measure::largestScaleInTestCylinder(solids[i]));
            taken[i] += std::chrono::duration<double, std::milli>(Clock::now() - begin).count();
        }
    }
    std::ranges::sort(taken);
    const auto passes = static_cast<double>(state.iterations());
    state.counters["solids"] = static_cast<double>(solids.size());
    state.counters["median_ms"] = taken[taken.size() / 2] / passes;
    state.counters["worst_ms"] = taken.back() / passes;
}

void thingsAtHandAreChecked(benchmark::State &state)
{
    measure(state, thingsAtHand());
}

void madeUpSolidsAreChecked(benchmark::State &state)
{
    measure(state, madeUp());
}

} // namespace

BENCHMARK(thingsAtHandAreChecked)->Unit(benchmark::kMillisecond);
BENCHMARK(madeUpSolidsAreChecked)->Unit(benchmark::kMillisecond);

BENCHMARK_MAIN();

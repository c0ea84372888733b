#include "core/rotation/exact_search.h"
#include "core/rotation/instance.h"
#include "tests/core/rotation/glpk_oracle.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <sstream>

/// The search for one day of a plain-number menu problem beside GLPK's, in processor time of one
/// run (reference/rotation.md, targets). `ratio` is ours by GLPK's: its call alone, without the
/// start of a process and the reading of a file, so a little harder on ours than the target.
namespace {

using namespace lidlark::rotation;

Instance read(const std::filesystem::path &path)
{
    std::ifstream file(path);
    std::ostringstream text;
    text << file.rdbuf();
    auto instance = readInstance(text.str());
    return instance ? *std::move(instance) : Instance();
}

double secondsOfProcessor()
{
    return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

void solve(benchmark::State &state, const std::filesystem::path &path)
{
    const Instance instance = read(path);
    if (instance.minutes.empty()) {
        state.SkipWithError("not a problem of the format");
        return;
    }
    const ChoiceRules rules = rulesOf(instance, 0);
    std::int64_t nodes = 0;
    const double begun = secondsOfProcessor();
    for ([[maybe_unused]] const auto pass : state)
        benchmark::DoNotOptimize(bestChoice(instance.problem, rules, nodes));
    const auto passes = static_cast<double>(state.iterations());
    const double ours = (secondsOfProcessor() - begun) / passes;
    const double glpkBegun = secondsOfProcessor();
    oracle::GlpkMenu glpk(instance.problem, rules);
    benchmark::DoNotOptimize(glpk.optimum());
    const double theirs = secondsOfProcessor() - glpkBegun;
    state.counters["nodes"] = static_cast<double>(nodes) / passes;
    state.counters["glpk_ms"] = theirs * 1000;
    state.counters["ratio"] = ours / theirs;
}

} // namespace

/// @param argv folders with *.rot files of one day beside those of the tests.
int main(int argc, char **argv)
{
    std::vector<std::filesystem::path> folders{LIDLARK_ROTATION_FOLDER};
    benchmark::Initialize(&argc, argv);
    folders.insert(folders.end(), argv + 1, argv + argc);
    std::vector<std::filesystem::path> files;
    for (const auto &folder : folders) {
        for (const auto &entry : std::filesystem::directory_iterator(folder)) {
            if (entry.path().extension() == ".rot" && read(entry.path()).minutes.size() == 1)
                files.push_back(entry.path());
        }
    }
    std::ranges::sort(files);
    for (const auto &file : files)
        benchmark::RegisterBenchmark(file.stem().c_str(), solve, file)
            ->Unit(benchmark::kMillisecond);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}

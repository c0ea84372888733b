#include "core/rotation/exact_search.h"
#include "core/rotation/plan_search.h"
#include "tests/bench/cbc_program.h"
#include "tests/bench/process_seconds.h"
#include "tests/bench/read_instance.h"
#include "tests/core/rotation/plan_program.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <map>
#include <optional>
#include <sstream>
#include <string>

/// The search for the menu problems of a folder beside GLPK and CBC, in processor seconds of one
/// run (reference/rotation.md, targets). Theirs are library calls, and for one day GLPK as a whole
/// process too, which is what the targets are said of. What solver finds no
/// optimum in a minute counts with the minute. Days of a week are CBC's alone: GLPK seldom proves
/// one.
namespace {

using namespace lidlark;
using namespace lidlark::rotation;

constexpr int mostSeconds = 60;

double secondsOfProcessor()
{
    return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

/// What a solver made of a problem.
struct Outcome {
    std::optional<int> value;
    double seconds = 0;
    std::int64_t nodes = 0;
    std::optional<int> gap; ///< Of ours, where there is a value.
};

/// Processor seconds of one pass; short ones are repeated.
template <class Solve> Outcome timed(const Solve &solve)
{
    constexpr double enough = 0.2;
    Outcome outcome;
    int passes = 0;
    const double begun = secondsOfProcessor();
    do {
        outcome = solve();
        ++passes;
    } while (secondsOfProcessor() - begun < enough);
    outcome.seconds = (secondsOfProcessor() - begun) / passes;
    return outcome;
}

Outcome ours(const Instance &instance, const PlanRules &rules)
{
    const double begun = secondsOfProcessor();
    const auto isOver = [&] { return secondsOfProcessor() - begun > mostSeconds; };
    Outcome outcome;
    if (rules.days.size() == 1) {
        const auto choice = bestChoice(instance.problem, rules.days.front(), outcome.nodes, isOver);
        if (choice)
            outcome.value = choice->value;
        return outcome;
    }
    const PlanAnswer answer = bestPlan(instance.problem, rules, outcome.nodes, isOver);
    if (const Plan *plan = std::get_if<Plan>(&answer)) {
        outcome.value = plan->value;
        outcome.gap = plan->bound - plan->value;
    }
    return outcome;
}

/// The median of five; a process has a bad moment now and then.
std::optional<double> wholeGlpk(const std::filesystem::path &path)
{
    std::vector<double> seconds;
    for (int pass = 0; pass < 5; ++pass) {
        if (const auto one = bench::processSeconds(LIDLARK_GLPK_PROCESS, path.string()))
            seconds.push_back(*one);
    }
    std::ranges::sort(seconds);
    return seconds.empty() ? std::nullopt : std::optional(seconds[seconds.size() / 2]);
}

std::string shown(const Outcome &outcome)
{
    std::ostringstream text;
    text.precision(4);
    text << std::fixed << outcome.seconds << " s (";
    text << (outcome.value ? std::to_string(*outcome.value) : "none") << ')';
    return text.str();
}

/// Ratios of ours to the faster of the others, of one size.
using Ratios = std::map<std::string, std::vector<double>>;

void measureBeside(const std::filesystem::path &path, Ratios &ratios)
{
    const auto instance = bench::readFile(path);
    if (!instance)
        return;
    const PlanRules rules = bench::rulesOfAll(*instance);
    const oracle::PlanProgram program(instance->problem, rules);
    const std::string size = std::to_string(instance->problem.entries.size()) + " entries, " +
                             std::to_string(rules.days.size()) + " days";
    const Outcome us = timed([&] { return ours(*instance, rules); });
    const Outcome cbc = timed([&] {
        return Outcome{oracle::cbcOptimum(program.program(), mostSeconds), 0, 0, {}};
    });
    std::printf("%-28s ours %s, nodes %lld", path.stem().c_str(), shown(us).c_str(),
                static_cast<long long>(us.nodes));
    if (us.gap)
        std::printf(", gap %d", *us.gap);
    std::printf("; CBC %s", shown(cbc).c_str());
    double fastest = cbc.seconds;
    if (rules.days.size() == 1) {
        const Outcome glpk = timed([&] {
            return Outcome{oracle::glpkOptimum(program.program(), mostSeconds), 0, 0, {}};
        });
        std::printf("; GLPK %s, by GLPK %.4f", shown(glpk).c_str(), us.seconds / glpk.seconds);
        fastest = std::min(fastest, glpk.seconds);
        if (const auto whole = wholeGlpk(path)) {
            std::printf("; by the whole GLPK process (%.4f s) %.4f", *whole, us.seconds / *whole);
            ratios[size + ", by the whole GLPK process"].push_back(us.seconds / *whole);
        }
    }
    std::printf("; by the faster %.4f\n", us.seconds / fastest);
    std::fflush(stdout);
    ratios[size + ", by the faster"].push_back(us.seconds / fastest);
}

} // namespace

/// @param argv folders with *.rot files; none: those of the tests.
int main(int argc, char **argv)
{
    std::vector<std::filesystem::path> folders(argv + 1, argv + argc);
    if (folders.empty())
        folders.emplace_back(LIDLARK_ROTATION_FOLDER);
    std::vector<std::filesystem::path> files;
    for (const auto &folder : folders) {
        for (const auto &entry : std::filesystem::directory_iterator(folder)) {
            if (entry.path().extension() == ".rot")
                files.push_back(entry.path());
        }
    }
    std::ranges::sort(files);
    Ratios ratios;
    for (const auto &file : files)
        measureBeside(file, ratios);
    for (const auto &[size, all] : ratios) {
        double logarithms = 0;
        for (const double ratio : all)
            logarithms += std::log(ratio);
        std::printf("%s: geometric mean %.4f, worst %.4f\n", size.c_str(),
                    std::exp(logarithms / static_cast<double>(all.size())),
                    *std::ranges::max_element(all));
    }
    return 0;
}

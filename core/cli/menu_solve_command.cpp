#include "core/cli/commands.h"
#include "core/cli/file_contents.h"
#include "core/rotation/exact_search.h"
#include "core/rotation/instance.h"
#include "core/rotation/plan_search.h"

#include <nlohmann/json.hpp>

#include <chrono>
#include <iostream>
#include <optional>

namespace lidlark::cli {

namespace {

using Json = nlohmann::ordered_json;

/// What a problem came to: the fields that are printed, before those of the search itself.
struct Solved {
    bool feasible = false;
    Json value;
    Json chosen = Json::array();
    Json bound;
    Json gap;
    bool proven = true;
};

/// A choice for one day; nothing: none was found in time.
std::optional<Solved> solveDay(const rotation::Instance &instance, std::int64_t &nodes,
                               const std::function<bool()> &isOver)
{
    const auto choice =
        rotation::bestChoice(instance.problem, rotation::rulesOf(instance, 0), nodes, isOver);
    if (!choice && isOver())
        return std::nullopt;
    if (!choice)
        return Solved{};
    Solved solved{true, choice->value, choice->entries, {}, {}, choice->proven};
    if (choice->proven) {
        solved.bound = choice->value;
        solved.gap = 0;
    }
    return solved;
}

/// A choice for each of several days; nothing: none was found in time.
std::optional<Solved> solveDays(const rotation::Instance &instance, std::int64_t &nodes,
                                const std::function<bool()> &isOver)
{
    rotation::PlanRules rules;
    for (std::size_t day = 0; day < instance.minutes.size(); ++day)
        rules.days.push_back(rotation::rulesOf(instance, day));
    const auto answer = rotation::bestPlan(instance.problem, rules, nodes, isOver);
    if (const auto *plan = std::get_if<rotation::Plan>(&answer))
        return Solved{true,        plan->value, plan->days, plan->bound, plan->bound - plan->value,
                      plan->proven};
    if (std::get<rotation::NoPlan>(answer) == rotation::NoPlan::NotFound)
        return std::nullopt;
    return Solved{};
}

Json jsonOf(const Solved &solved)
{
    return {{"feasible", solved.feasible}, {"value", solved.value}, {"chosen", solved.chosen},
            {"bound", solved.bound},       {"gap", solved.gap},     {"proven", solved.proven}};
}

void printIds(const Json &ids)
{
    for (const Json &id : ids)
        std::cout << ' ' << id;
}

void printPlain(const Solved &solved)
{
    if (!solved.feasible) {
        std::cout << "No choice keeps to all limits.\n";
        return;
    }
    const bool isOneDay = solved.chosen.empty() || !solved.chosen.front().is_array();
    std::cout << "value " << solved.value;
    if (isOneDay) {
        std::cout << ", chosen";
        printIds(solved.chosen);
    }
    if (!solved.proven)
        std::cout << ", not proven in that time";
    if (!solved.proven && !solved.bound.is_null())
        std::cout << ": none is worth more than " << solved.bound;
    std::cout << '\n';
    for (std::size_t day = 0; !isOneDay && day < solved.chosen.size(); ++day) {
        std::cout << "day " << day << ':';
        printIds(solved.chosen[day]);
        std::cout << '\n';
    }
}

} // namespace

int runMenuSolve(const Options &options, const SolveOptions &solve)
{
    const auto text = contentsOf(solve.file);
    if (!text)
        return fail({ErrorCode::NotFound, solve.file});
    const auto instance = rotation::readInstance(*text);
    if (!instance)
        return fail(instance.error());
    std::int64_t nodes = 0;
    const auto begun = std::chrono::steady_clock::now();
    const auto took = [begun] {
        const std::chrono::duration<double> seconds = std::chrono::steady_clock::now() - begun;
        return seconds.count();
    };
    const auto isOver = [&] { return took() > solve.limit; };
    const auto solver = instance->minutes.size() == 1 ? solveDay : solveDays;
    const auto solved = solver(*instance, nodes, isOver);
    if (!solved)
        return fail({ErrorCode::Invalid, "--limit: no choice was found in that time"});
    if (options.json) {
        Json json = jsonOf(*solved);
        json["nodes"] = nodes;
        json["seconds"] = took();
        std::cout << json.dump() << '\n';
    } else {
        printPlain(*solved);
    }
    return allWell;
}

} // namespace lidlark::cli

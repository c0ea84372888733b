#include "core/cli/commands.h"
#include "core/cli/file_contents.h"
#include "core/rotation/exact_search.h"
#include "core/rotation/instance.h"

#include <nlohmann/json.hpp>

#include <chrono>
#include <iostream>

namespace lidlark::cli {

namespace {

using Json = nlohmann::ordered_json;

void printPlain(const Json &solved)
{
    if (!solved["feasible"].get<bool>()) {
        std::cout << "No choice keeps to all limits.\n";
        return;
    }
    std::cout << "value " << solved["value"] << ", chosen";
    for (const Json &id : solved["chosen"])
        std::cout << ' ' << id;
    std::cout << (solved["proven"].get<bool>() ? "\n" : ", not proven in that time\n");
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
    if (instance->minutes.size() != 1)
        return fail({ErrorCode::Invalid, "days: one day is solved, not several"});
    std::int64_t nodes = 0;
    const auto begun = std::chrono::steady_clock::now();
    const auto took = [begun] {
        const std::chrono::duration<double> seconds = std::chrono::steady_clock::now() - begun;
        return seconds.count();
    };
    const auto isOver = [&] { return took() > solve.limit; };
    const auto choice =
        rotation::bestChoice(instance->problem, rotation::rulesOf(*instance, 0), nodes, isOver);
    if (!choice && isOver())
        return fail({ErrorCode::Invalid, "--limit: no choice was found in that time"});
    const Json solved{{"feasible", choice.has_value()},
                      {"value", choice ? Json(choice->value) : Json()},
                      {"chosen", choice ? Json(choice->entries) : Json::array()},
                      {"proven", !choice || choice->proven},
                      {"nodes", nodes},
                      {"seconds", took()}};
    if (options.json)
        std::cout << solved.dump() << '\n';
    else
        printPlain(solved);
    return allWell;
}

} // namespace lidlark::cli

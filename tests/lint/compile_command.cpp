#include "tests/lint/compile_command.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace lidlark::lint {

namespace {

bool isBelow(const std::filesystem::path &folder, const std::filesystem::path &file)
{
    return std::ranges::mismatch(folder, file).in1 == folder.end();
}

/// CMake ends every command with "-o OBJECT -c SOURCE".
std::string flagsOf(const std::string &command)
{
    return command.substr(0, command.rfind(" -o "));
}

} // namespace

std::vector<CompileCommand> commandsBelow(const std::filesystem::path &folder,
                                          const std::string &json)
{
    std::vector<CompileCommand> commands;
    for (const nlohmann::json &entry : nlohmann::json::parse(json)) {
        const std::filesystem::path file = entry.at("file").get<std::string>();
        if (isBelow(folder, file))
            commands.push_back({file, entry.at("directory").get<std::string>(),
                                flagsOf(entry.at("command").get<std::string>())});
    }
    std::ranges::stable_sort(commands, {}, &CompileCommand::file);
    const auto repeated = std::ranges::unique(commands, {}, &CompileCommand::file);
    commands.erase(repeated.begin(), repeated.end());
    return commands;
}

} // namespace lidlark::lint

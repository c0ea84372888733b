#include "tests/lint/compile_command.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <regex>

namespace lidlark::lint {

namespace {

bool isBelow(const std::filesystem::path &folder, const std::filesystem::path &file)
{
    return std::ranges::mismatch(folder, file).in1 == folder.end();
}

/// CMake ends every command with "-o OBJECT -c SOURCE". Without the precompiled headers, which are
/// GCC's own and would hide that a file forgets to include what it uses.
std::string flagsOf(const std::string &command)
{
    static const std::regex precompiled(R"( -Winvalid-pch| -include \S+cmake_pch\.hxx)");
    return std::regex_replace(command.substr(0, command.rfind(" -o ")), precompiled, "");
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

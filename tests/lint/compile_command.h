#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace lidlark::lint {

/// How the build compiles one source file.
struct CompileCommand {
    std::filesystem::path file; ///< Absolute.
    std::string directory;      ///< In which the compiler is started.
    std::string flags; ///< Compiler and options for a shell, without the names of what goes in and
                       ///< comes out.
    bool operator==(const CompileCommand &) const = default;
};

/// The commands that @p json (a compile_commands.json, as CMake writes it) has for files below
/// @p folder, sorted by file. A file that is compiled twice is listed once.
/// Source of the format: Clang documentation, "JSON Compilation Database Format Specification".
std::vector<CompileCommand> commandsBelow(const std::filesystem::path &folder,
                                          const std::string &json);

} // namespace lidlark::lint

#pragma once

#include "tests/lint/compile_command.h"

#include <filesystem>
#include <map>
#include <set>
#include <string>

namespace lidlark::lint {

/// Which files were found clean before and have not changed since, own headers included.
class Freshness
{
public:
    /// @param root the project; @param cache a folder for the marks, made when it is not there.
    /// @param settings whatever else a verdict hangs on: the version of clang-tidy, .clang-tidy.
    Freshness(std::filesystem::path root, std::filesystem::path cache, std::string settings);

    [[nodiscard]] bool isKnownClean(const CompileCommand &command) const;
    void markClean(const CompileCommand &command) const;

private:
    [[nodiscard]] std::filesystem::path markOf(const CompileCommand &command) const;
    /// @p path and every file of the project that it includes, directly or not.
    [[nodiscard]] std::set<std::string> closureOf(const std::string &path) const;

    std::filesystem::path m_root;
    std::filesystem::path m_cache;
    std::string m_settings;
    std::map<std::string, std::string> m_texts;           ///< By path from the root.
    std::map<std::string, std::set<std::string>> m_named; ///< Own files that each file includes.
};

} // namespace lidlark::lint

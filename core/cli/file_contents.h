#pragma once

#include <filesystem>
#include <fstream>
#include <optional>
#include <sstream>
#include <string>

namespace lidlark::cli {

/// All of a file. @returns nothing when it cannot be opened. A folder opens like a file; only
/// reading it fails, so it comes back empty.
inline std::optional<std::string> contentsOf(const std::filesystem::path &path)
{
    std::ifstream file(path, std::ios::binary);
    if (!file)
        return std::nullopt;
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

} // namespace lidlark::cli

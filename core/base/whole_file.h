#pragma once

#include <filesystem>
#include <string_view>
#include <system_error>

namespace lidlark {

/// Puts @p bytes in a file that only its owner's account may read (mode 0600), whole or not at all:
/// what was there before stands until the new bytes are on the disk.
/// @returns what the system says; no error: they are on the disk.
std::error_code writeWholeFile(const std::filesystem::path &path, std::string_view bytes);

} // namespace lidlark

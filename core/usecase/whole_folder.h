#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <span>
#include <string>

namespace lidlark::usecase {

/// A file that is about to be written.
struct NamedFile {
    std::string name;
    std::string bytes;
};

/// Writes @p files into a new folder, all of them or none: they are written beside it, brought to
/// the disk, and put in place as one. Nobody but the phone's own account may look into it.
/// @param folder new, or empty; the one it lies in is there.
/// Errors: Invalid (something lies there already), NotFound (the folder it would lie in),
/// Unwritable (no room, no permission). Then nothing is left behind.
Outcome writeWholeFolder(const std::filesystem::path &folder, std::span<const NamedFile> files);

} // namespace lidlark::usecase

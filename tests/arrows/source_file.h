#pragma once

#include <filesystem>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::arrows {

/// One text file of the project.
struct SourceFile {
    std::string path; ///< From the project's root, with '/': "core/box/place.h".
    std::string text;
};

/// Something that breaks a rule of the house, at one line of one file.
struct Complaint {
    std::string path;
    int line = 0; ///< 1 is the first; 0 where the whole file is meant.
    std::string reason;
    bool operator==(const Complaint &) const = default;
};

/// "core/box/place.h:12: reason".
std::string toText(const Complaint &complaint);

/// The whole of @p file; empty where it cannot be read.
std::string contentsOf(const std::filesystem::path &file);

/// Every text file below @p folders of @p root, sorted by path. A file is text when it holds no
/// zero byte.
std::vector<SourceFile> readTree(const std::filesystem::path &root,
                                 const std::vector<std::string> &folders);

std::set<std::string> pathsOf(const std::vector<SourceFile> &files);

/// The lines of @p text without their line breaks.
std::vector<std::string_view> linesOf(std::string_view text);

/// @p text with every // and /* */ comment turned to spaces; line breaks stay where they are.
/// Strings in double quotes are left alone.
std::string withoutComments(std::string_view text);

} // namespace lidlark::arrows

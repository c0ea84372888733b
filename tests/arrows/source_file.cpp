#include "tests/arrows/source_file.h"

#include <algorithm>
#include <fstream>
#include <iterator>

namespace lidlark::arrows {

namespace {

/// Where the comment or string that opens at @p from is over.
std::size_t endOf(std::string_view text, std::size_t from)
{
    if (text.substr(from, 2) == "//")
        return std::min(text.find('\n', from), text.size());
    if (text.substr(from, 2) == "/*") {
        const std::size_t close = text.find("*/", from + 2);
        return close == std::string_view::npos ? text.size() : close + 2;
    }
    std::size_t at = from + 1;
    while (at < text.size() && text[at] != '"' && text[at] != '\n')
        at += text[at] == '\\' ? 2 : 1;
    return std::min(at + 1, text.size());
}

} // namespace

std::string toText(const Complaint &complaint)
{
    return complaint.path + ":" + std::to_string(complaint.line) + ": " + complaint.reason;
}

std::string contentsOf(const std::filesystem::path &file)
{
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
}

std::vector<SourceFile> readTree(const std::filesystem::path &root,
                                 const std::vector<std::string> &folders)
{
    std::vector<SourceFile> files;
    for (const std::string &folder : folders) {
        if (!std::filesystem::exists(root / folder))
            continue;
        for (const auto &entry : std::filesystem::recursive_directory_iterator(root / folder)) {
            if (!entry.is_regular_file())
                continue;
            std::string text = contentsOf(entry.path());
            if (text.find('\0') == std::string::npos)
                files.push_back(
                    {entry.path().lexically_relative(root).generic_string(), std::move(text)});
        }
    }
    std::ranges::sort(files, {}, &SourceFile::path);
    return files;
}

std::set<std::string> pathsOf(const std::vector<SourceFile> &files)
{
    std::set<std::string> paths;
    for (const SourceFile &file : files)
        paths.insert(file.path);
    return paths;
}

std::vector<std::string_view> linesOf(std::string_view text)
{
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        lines.push_back(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    return lines;
}

std::string withoutComments(std::string_view text)
{
    std::string code(text);
    std::size_t at = 0;
    while (at < text.size()) {
        const bool isComment = text.substr(at, 2) == "//" || text.substr(at, 2) == "/*";
        if (!isComment && text[at] != '"') {
            ++at;
            continue;
        }
        const std::size_t end = endOf(text, at);
        for (; at < end; ++at) {
            if (isComment && code[at] != '\n')
                code[at] = ' ';
        }
    }
    return code;
}

} // namespace lidlark::arrows

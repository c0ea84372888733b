#include "core/usecase/typed_line.h"

#include "core/base/utf8.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

constexpr std::string_view spaces = " \t\r\n";

/// Code points: each begins with a byte that does not continue another.
std::size_t charactersOf(const std::string &text)
{
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char byte) {
        return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U;
    }));
}

} // namespace

Result<std::string> typedLine(const std::string &field, const std::string &typed, std::size_t most)
{
    if (!isPlainUtf8(typed))
        return Error{ErrorCode::Invalid, field + ": not plain text"};
    const auto first = typed.find_first_not_of(spaces);
    if (first == std::string::npos)
        return std::string();
    const std::string line = typed.substr(first, typed.find_last_not_of(spaces) - first + 1);
    if (line.find_first_of("\r\n") != std::string::npos)
        return Error{ErrorCode::Invalid, field + ": one line only"};
    if (charactersOf(line) > most)
        return Error{ErrorCode::Invalid,
                     field + ": at most " + std::to_string(most) + " characters"};
    return line;
}

} // namespace lidlark::usecase

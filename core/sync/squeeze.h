#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace lidlark::sync {

/// @p text compressed (zlib format, RFC 1950): the same text gives the same bytes with the same
/// zlib.
std::string squeezed(std::string_view text);

/// @param size of the text, known beforehand, so that a few hostile bytes cannot fill the memory.
/// @returns nothing where it is not the compression of a text of just that size.
std::optional<std::string> unsqueezed(std::string_view bytes, std::size_t size);

} // namespace lidlark::sync

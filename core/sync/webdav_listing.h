#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::sync {

/// Bytes of a listing at most: more than five times the thousand files a folder is kept below.
inline constexpr std::size_t largestListing = 2'000'000;

/// A line of a listing: a file, a folder, or the folder itself that was asked about.
struct Listed {
    std::string name;                   ///< The last part of its path.
    std::optional<std::uint64_t> bytes; ///< A folder's says nothing, where it has one.

    bool operator==(const Listed &) const = default;
};

/// Whether @p name is of the kind that is ever written: [0-9a-z.], 1 to 100 letters, no dot first
/// (platform.md, WebDAV: what every server keeps as it is).
bool isPlainName(std::string_view name);

/// What a server says of files in answer to a PROPFIND. Names that are not plain are left out.
/// @returns nothing when it is no multistatus of `DAV:`, or is cut.
/// Source: RFC 4918, 13 and 14; names by their namespace, whatever the prefix.
std::optional<std::vector<Listed>> readListing(std::string_view xml);

} // namespace lidlark::sync

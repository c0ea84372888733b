#pragma once

#include "core/sync/storage.h"

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace lidlark::sync {

/// The files of a storage, or some of them, to be handed over as one: on a stick, by post, from
/// phone to phone. Each is sealed and signed in itself; what holds them together only tells damage.
using Bundle = std::map<Place, std::string>;

/// Bytes of a whole bundle at most: a phone reads it in one piece.
inline constexpr std::size_t largestBundle = 64'000'000;
/// Files in it at most.
inline constexpr std::size_t mostInBundle = 10'000;
/// Characters of a folder's or a file's name at most (platform.md, WebDAV).
inline constexpr std::size_t longestName = 100;

/// Why bytes are no bundle. Nothing of it is taken then.
enum class BundleFault {
    Foreign, ///< Not a bundle of Lidlark, or torn at its beginning.
    Newer,   ///< Written by a later Lidlark.
    Torn,    ///< Not all there, or not as it was written.
    TooLarge ///< More than a bundle or a file in it may have.
};

/// @p bundle as one file (FORMAT.md, 6): the same files give the same bytes.
/// @returns nothing where there is too much of it, or a name is not one of a storage.
std::optional<std::string> bundleOf(const Bundle &bundle);

/// What @p bytes hold, wholly as it was written.
std::variant<Bundle, BundleFault> bundleFrom(std::string_view bytes);

} // namespace lidlark::sync

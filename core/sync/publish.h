#pragma once

#include "core/base/entropy.h"
#include "core/sync/storage.h"

#include <string_view>

namespace lidlark::sync {

/// What became of a segment that was to be published.
enum class Published {
    Done, ///< It lies under its name, whole: byte for byte what was sealed.
    Taken ///< Other bytes lie there: this phone was copied or restored, and needs a new device id.
};

/// Brings @p bytes to @p place, so that nobody ever meets half of them, and never over anything
/// else. May be cut off anywhere and begun again with the same bytes; what was done before is
/// found. Source: platform.md, "Publish protocol".
Answer<Published> publish(Storage &storage, const Place &place, std::string_view bytes,
                          Entropy &entropy);

/// The end of names under which a file is written before it has its own.
inline constexpr std::string_view partEnd = ".part";

} // namespace lidlark::sync

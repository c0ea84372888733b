#pragma once

#include "core/workbench/supply.h"

#include <optional>
#include <span>
#include <string_view>

namespace lidlark::workbench {

/// The offer whose piece costs least, compared exactly; of equals the one that stands first.
/// Prices of two currencies are never compared: those of @p currency count, and only where there is
/// none those of the first currency that has one.
/// @returns its place among @p offers; nothing where none has a price.
std::optional<std::size_t> cheapestOffer(std::span<const PackOffer> offers,
                                         std::string_view currency);

} // namespace lidlark::workbench

#pragma once

#include "core/catalogue/item_kind.h"

#include <cstddef>
#include <optional>
#include <string_view>

namespace lidlark::catalogue {

/// Which of an item's care lines speaks of a substance, by its English words.
/// @param substance "latex", as in `child::avoidedNames`.
/// @returns nothing where none does.
std::optional<std::size_t> careAbout(const ItemKind &kind, std::string_view substance);

} // namespace lidlark::catalogue

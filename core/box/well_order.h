#pragma once

#include "core/base/id.h"

#include <cstddef>

namespace lidlark::box {

/// The place of an item in the tray and on the printed lid list: its own for good, whatever the
/// lid list says (look.md 6), so that paper and screen are read alike. What is not among the known
/// ones comes last.
std::size_t wellOf(const ItemId &item);

} // namespace lidlark::box

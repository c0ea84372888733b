#pragma once

#include "core/workbench/kept_build.h"

#include <cstddef>
#include <span>
#include <vector>

namespace lidlark::workbench {

/// Places of boxes that depart from the same design in the same way, whoever they are for and
/// whatever the order of their parts. Groups in the order of their first boxes, each in the order
/// of @p boxes.
std::vector<std::vector<std::size_t>> boxesAlike(std::span<const KeptBox> boxes);

} // namespace lidlark::workbench

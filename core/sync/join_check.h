#pragma once

#include <cstddef>
#include <cstdint>
#include <span>

namespace lidlark::sync {

/// The number of the ninth word of a joining code, from those of the eight before it, each 0 to
/// 1023. One wrong word among the nine is always noticed, and so are two that changed places; of
/// all other mistakes all but one in 1024.
std::uint16_t joinCheck(std::span<const std::uint16_t> words);

} // namespace lidlark::sync

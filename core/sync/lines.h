#pragma once

#include "core/journal/erasure.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::sync {

/// What a segment's text holds, in the order of its lines (FORMAT.md, 1).
struct Lines {
    std::vector<journal::Event> events;
    std::vector<journal::Gone> gone;     ///< Of the device that seals.
    std::vector<std::uint64_t> counters; ///< Of both, line by line.
};

/// Events and what is gone of one run, each in a line, by counter.
/// @param events, @param gone each in the order of their counters.
std::string textOf(std::span<const journal::Event> events, std::span<const journal::Gone> gone);

/// @returns nothing unless each line is in just the form it was hashed in: another spelling would
/// be another event.
std::optional<Lines> linesIn(std::string_view text);

} // namespace lidlark::sync

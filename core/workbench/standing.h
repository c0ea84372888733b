#pragma once

#include "core/journal/seen.h"

#include <vector>

namespace lidlark::workbench {

/// What stands of one register: those of @p said that no other of them has seen. More than one:
/// they were written by people who did not know of each other (events.md 3).
/// @param said events of one register, any order; the result points to the same ones.
std::vector<const journal::Event *> standingOf(const std::vector<const journal::Event *> &said,
                                               const journal::Seen &seen);

/// Whether @p a was written after @p b as far as their instants tell: the same on every device.
bool writtenLater(const journal::Event &a, const journal::Event &b);

} // namespace lidlark::workbench

#pragma once

#include "core/journal/event.h"

#include <string>

namespace lidlark::box {

/// Bytes of UTF-8.
inline constexpr std::size_t longestWhy = 600;

/// The fields of a revision with the therapist's words on why it was made beside them.
/// @param fields of box_events.h. @param why empty: nothing is added.
std::string withWhy(const std::string &fields, const std::string &why);

/// Why, in the therapist's words; empty: no revision, not said, or longer than may be. A removal
/// acts whatever is said about it, so words that cannot be read take nothing away from it.
std::string whyOf(const journal::Event &event);

} // namespace lidlark::box

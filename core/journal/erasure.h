#pragma once

#include "core/journal/event.h"

#include <optional>
#include <set>
#include <string>

namespace lidlark::journal {

/// What was said in a lane and is to go: everything up to a day, or just these events. It covers
/// what arrives later as well, only grows and always wins (events.md 9).
struct Erasure {
    std::optional<Day> upTo;      ///< That day too.
    std::set<std::string> events; ///< Identities.
};

std::string fieldsOf(const Erasure &erasure);
/// @returns nothing for another kind, or where nothing is named.
std::optional<Erasure> readErasure(const Event &event);

/// Whether a kind can be erased: not what others must know to read on (who is in the crew, which
/// keys there are, who has seen what), and not the erasures themselves.
bool canBeErased(Kind kind);

/// Whether @p erasure, said in the lane of @p event, takes it.
bool covers(const Erasure &erasure, const Event &event);

/// An erased event: only that it was, and which.
struct Gone {
    std::uint64_t counter = 0;
    std::string identity;
    bool operator==(const Gone &) const = default;
};

} // namespace lidlark::journal

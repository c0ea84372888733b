#pragma once

#include "core/box/item_ledger.h"

#include <span>
#include <vector>

namespace lidlark::box {

/// One change of stock with its place in time: what a count covers or does not.
struct Change {
    const journal::Event *first = nullptr;    ///< Decides the place in time (events.md 5).
    const journal::Event *standing = nullptr; ///< The event whose value stands.
    PlayId play;                              ///< Empty outside a play.
    Exceptions careful;
    Exceptions hopeful; ///< Differs from careful only between concurrent values.
    int found = 0;
};

/// The standing changes of one item: one per (play, item) register, one per loose exception and
/// per find. Malformed events have no effect.
std::vector<Change> changesOf(std::span<const journal::Event> events, const journal::Seen &seen);

/// The events that no other of the list has seen: what stands in a register.
std::vector<const journal::Event *> standingOf(const std::vector<const journal::Event *> &events,
                                               const journal::Seen &seen);

} // namespace lidlark::box

#pragma once

#include "core/box/box_events.h"
#include "core/journal/seen.h"

#include <optional>
#include <span>
#include <vector>

namespace lidlark::box {

/// One value that stands for a change.
struct Value {
    const journal::Event *event = nullptr;
    Exceptions gone;
    int found = 0;
    int countedIn = 0;

    [[nodiscard]] int brought() const { return found + countedIn; }
    [[nodiscard]] bool sameAs(const Value &other) const
    {
        return gone == other.gone && found == other.found && countedIn == other.countedIn;
    }
};

/// One change of stock with its place in time: what a count covers or does not.
struct Change {
    const journal::Event *first = nullptr; ///< Decides the place in time (events.md 5).
    PlayId play;                           ///< Empty outside a play.
    std::optional<int> round;              ///< Of a counting-in.
    Day day;                               ///< On which it happened, as far as was said.
    std::vector<Value> values;             ///< What stands: several where concurrent ones differ.
    std::vector<Value> setAside{};         ///< Stood too, until somebody chose another.

    /// Each kind of exception as high as any standing value has it: whatever one says is lost stays
    /// lost.
    [[nodiscard]] Exceptions mostGone() const;
    [[nodiscard]] int leastBrought() const;
    /// Pieces come into the box by it, by any reading.
    [[nodiscard]] bool brings() const;
    [[nodiscard]] bool isNothing() const;
};

/// The standing changes of one item: one per (play, item) register, one per counting-in's round,
/// one per loose exception and per find; in one order whatever the order of @p events. Malformed
/// events have no effect.
std::vector<Change> changesOf(std::span<const journal::Event> events, const journal::Seen &seen);

/// The events that no other of the list has seen: what stands in a register.
std::vector<const journal::Event *> standingOf(const std::vector<const journal::Event *> &events,
                                               const journal::Seen &seen);

/// The order in which concurrent events are listed: (instant, device, counter).
bool writtenEarlier(const journal::Event &a, const journal::Event &b);

} // namespace lidlark::box

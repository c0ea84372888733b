#pragma once

#include "core/base/instant.h"
#include "core/box/box_events.h"
#include "core/journal/seen.h"

#include <algorithm>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lidlark::box {

/// Where every piece of one item is, by the careful and by the hopeful reading of what is open.
/// packed + found + foundAtCount = inBox + out + usedUp + lost + broken + driedOut +
/// missingAtCount + takenOut holds for each (events.md 6.4); inBox may be below zero: "please
/// count".
struct Tally {
    int packed = 0;
    int found = 0;
    int foundAtCount = 0;
    int inBox = 0;
    int out = 0; ///< Knowingly out: still in use.
    int usedUp = 0;
    int lost = 0;
    int broken = 0;
    int driedOut = 0;
    int missingAtCount = 0;
    int takenOut = 0; ///< Left the house: an allergy, a removal by a revision.

    [[nodiscard]] bool conserved() const
    {
        return packed + found + foundAtCount ==
               inBox + out + usedUp + lost + broken + driedOut + missingAtCount + takenOut;
    }
    bool operator==(const Tally &) const = default;
};

/// Pieces that may lie on a floor, from one entry.
struct Loss {
    std::string identity; ///< Of the event that opened it.
    int pieces = 0;       ///< Still not found.
    bool closed = false;  ///< All found, or the floor was checked after it.
    std::string author;
    DayPart when;
    bool operator==(const Loss &) const = default;
};

/// What stands for one item in one play, for the notebook.
struct PlayOutcome {
    PlayId play;
    Exceptions exceptions;
    std::string author;
    bool operator==(const PlayOutcome &) const = default;
};

/// The state of one item of one box: a pure fold of the events that name it.
struct ItemLedger {
    Tally careful; ///< Every open change counted against the box.
    Tally hopeful; ///< No open change counted.
    std::vector<Loss> losses;
    std::vector<PlayOutcome> outcomes;
    std::optional<Day> opened; ///< Earliest day said since the last count-in.
    bool driedOut = false;     ///< All that is left of a perishable was said to be dried out.

    [[nodiscard]] int low() const { return std::max(0, careful.inBox); }
    [[nodiscard]] int high() const { return std::max(0, hopeful.inBox); }
    /// The ledger says less than nothing, or more than ever went out: only a count can tell.
    [[nodiscard]] bool pleaseCount() const
    {
        return careful.inBox < 0 || hopeful.inBox > hopeful.packed + hopeful.foundAtCount;
    }
    bool operator==(const ItemLedger &) const = default;
};

/// Two hours (events.md 3.5): concurrent instants closer than this are not ordered. [P]
inline constexpr std::int64_t marginMs = 2 * msPerHour;

/// Folds one item (events.md 5 and 6).
/// @param packed pieces by the lid list in force. @param events those whose subject is the item, in
/// any order, each once. @param seen of the box lane.
ItemLedger foldItem(int packed, std::span<const journal::Event> events, const journal::Seen &seen);

} // namespace lidlark::box

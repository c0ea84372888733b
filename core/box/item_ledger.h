#pragma once

#include "core/base/instant.h"
#include "core/box/box_events.h"
#include "core/box/question.h"
#include "core/journal/meetings.h"

#include <algorithm>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lidlark::box {

/// Where every piece of one item is, by one reading of what is open.
/// packed + restocked + found + foundAtCount = inBox + out + usedUp + lost + broken + driedOut +
/// missingAtCount + takenOut holds for each (events.md 6.4); inBox may be below zero: "please
/// count".
struct Tally {
    int packed = 0;
    int restocked = 0;
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
        return packed + restocked + found + foundAtCount ==
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

/// Pieces that left the box for good on one day, each counted once: what a forecast rests on.
struct DatedUse {
    Day day; ///< On which it happened, as far as was said.
    ExceptionKind kind = ExceptionKind::UsedUp;
    int pieces = 0;
    bool operator==(const DatedUse &) const = default;
};

/// Pieces that came into the box together.
struct Arrival {
    std::optional<int> round; ///< Of the request they were counted in with; none: packed.
    Day day;
    int pieces = 0;
    bool operator==(const Arrival &) const = default;
};

/// The pieces a box began with.
struct Packed {
    int pieces = 0;
    Day day; ///< On which the box with this item was handed over.
    /// By the lid list in force it is to be taken out: what was counted without knowing that it was
    /// taken out is history, and puts nothing back (events.md 5, confirmation).
    bool removed = false;
};

/// The state of one item of one box: a pure fold of the events that name it.
struct ItemLedger {
    Tally careful; ///< Every open change counted against the box.
    Tally hopeful; ///< No open change counted.
    std::vector<Loss> losses;
    std::vector<PlayOutcome> outcomes;
    std::vector<Question> questions; ///< Answered ones too.
    std::vector<DatedUse> uses;      ///< By day.
    std::vector<Arrival> arrivals;
    std::optional<Day> counted; ///< The day of the count that it starts from.
    int piecesAtCount = 0;      ///< That it says there were, in the box and out; 0 without a count.
    bool driedOut = false;      ///< All that is left of a perishable was said to be dried out.

    [[nodiscard]] int low() const { return std::max(0, careful.inBox); }
    [[nodiscard]] int high() const { return std::max(low(), hopeful.inBox); }
    /// The ledger says less than nothing, or more than ever went in: only a count can tell.
    [[nodiscard]] bool pleaseCount() const
    {
        const int wentIn = hopeful.packed + hopeful.restocked + hopeful.foundAtCount;
        return careful.inBox < 0 || hopeful.inBox > std::max(wentIn, piecesAtCount);
    }
    bool operator==(const ItemLedger &) const = default;
};

/// Folds one item (events.md 5 to 7).
/// @param packed by the lid list in force. @param events those whose subject is the item, in any
/// order, each once. @param meetings of the box lane.
ItemLedger foldItem(const Packed &packed, std::span<const journal::Event> events,
                    const journal::Meetings &meetings);

} // namespace lidlark::box

#pragma once

#include "core/workbench/box_departures.h"
#include "core/workbench/pack_mark.h"

namespace lidlark::workbench {

/// How far one line of one box is.
enum class LineState {
    Open,       ///< Not packed.
    WrongHand,  ///< What was packed is made for the other hand.
    WrongCount, ///< The list has changed since, or so many were not packed.
    Packed,     ///< In the box.
    LookedOver  ///< In the box, and a second person has looked.
};

/// One line of a box as it is packed.
struct PackLine {
    ItemId item;
    int pieces = 0;
    Hand hand = Hand::Unsaid; ///< For which it must be made; unsaid: it does not matter.
    LineState state = LineState::Open;
    std::vector<PackedBy> packed; ///< Who says that it is in.
    std::string lookedBy;         ///< Who has looked it over.
    /// Two people packed it without knowing of each other: it may lie there twice.
    bool perhapsTwice = false;
    bool operator==(const PackLine &) const = default;

    [[nodiscard]] bool isIn() const
    {
        return state == LineState::Packed || state == LineState::LookedOver;
    }
};

/// What keeps a box from being ready, the first that holds.
enum class NotReady {
    Nothing,   ///< It is ready.
    Conflict,  ///< It is written so that it may not be packed (conflictIn).
    Disputed,  ///< Two people have written it differently.
    TakeOut,   ///< Something lies in it that is not on its list any more.
    Lines,     ///< Not all of it is in.
    SecondLook ///< It is special, and nobody else has looked at all of it.
};

struct PackBox {
    std::string code;
    std::string whose;
    bool special = false;
    std::vector<CallOut> callOuts;
    std::vector<PackLine> lines;
    std::vector<ItemId> takeOut; ///< Packed, and no more on the list.
    std::string conflict;        ///< As conflictIn says.
    NotReady notReady = NotReady::Nothing;
    bool operator==(const PackBox &) const = default;

    [[nodiscard]] bool isReady() const { return notReady == NotReady::Nothing; }
    [[nodiscard]] int linesIn() const;
    [[nodiscard]] int linesLookedOver() const;
    /// Whether @p who may look a line over: packed by others, and not by nobody.
    [[nodiscard]] static bool mayLookOver(const PackLine &line, const std::string &who);
};

/// A box is ready when each of its lines is in, in the right number and for the right hand, nothing
/// else lies in it, and, where it is special, each line was looked over by somebody whose name is
/// none of those that packed that line, after it was packed (job.md T4).
PackBox packBoxOf(const KeptBox &box, const Design *design, const Marks &marks,
                  const catalogue::Catalogue &catalogue, const KeptSupplies &supplies);

/// "All of the line lies in the box", with the lot that its supply has now.
MarkSaid packedMark(const BuildId &build, const std::string &box, const PackLine &line,
                    const KeptSupplies &supplies);

} // namespace lidlark::workbench

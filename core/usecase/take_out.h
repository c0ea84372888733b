#pragma once

#include "core/child/avoided.h"
#include "core/usecase/family.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::usecase {

/// Who said first that the home must avoid something: what the therapist's phone sees too.
struct SafetyNote {
    child::Avoided what = child::Avoided::Latex;
    std::string person; ///< Alias of whom it was said; empty: of the home.
    std::string author;
    DayPart when;
    int minuteOfDay = 0; ///< Local time of the author's phone.
};

/// One thing of the box that must leave the house.
struct TakeOutThing {
    ItemId item;
    int pieces = 0; ///< That may be in the box.
    bool out = false;
    std::string outBy; ///< Who said it is out, and when.
    DayPart outWhen;
    std::optional<ItemId> swap; ///< What stands in for it.
    bool asked = false;         ///< The swap was asked for.
};

/// All that follows for the box from one avoidance (job.md scenario 3).
struct TakeOut {
    SafetyNote note;
    std::vector<TakeOutThing> things; ///< In the order of the lid list.
    /// Box items without it whose own care lines speak of it: they stay, and say why.
    std::vector<ItemId> stays;
    [[nodiscard]] bool isDone() const; ///< Everything is out.
};

/// Worked out from the set of events alone: the same on every phone that holds them.
/// @returns nothing of what the home need not avoid.
Result<std::vector<TakeOut>> takeOutsOf(Workplace &workplace, const Family &family);

/// An adult says that all pieces of an item have left the house: of what the home must avoid, or of
/// what a new lid list removes (revision_state.h). Errors: NotFound (child), Invalid (an item
/// nobody has to take out).
Outcome confirmTakenOut(Workplace &workplace, const std::string &childAlias,
                        const std::string &author, const ItemId &item);

} // namespace lidlark::usecase

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/workbench/kept_build.h"
#include "core/workbench/kept_supply.h"

namespace lidlark::workbench {

/// What whoever packs a box must know of it (job.md T4).
enum class CallKind {
    LeftHand,   ///< This child cuts with the left hand.
    Avoids,     ///< Nothing with this may go in.
    Swapped,    ///< This, not that.
    LeftOut,    ///< Not in this box.
    OtherCount, ///< More or fewer than usual.
    Added       ///< Beside what usually goes in.
};

struct CallOut {
    CallKind kind = CallKind::LeftHand;
    ItemId item;                                    ///< What goes in; left out: what does not.
    ItemId insteadOf;                               ///< Swapped.
    int pieces = 0;                                 ///< Swapped, other count, added.
    int usual = 0;                                  ///< Other count.
    child::Avoided avoided = child::Avoided::Latex; ///< Avoids.
    std::optional<Departure> because;
    bool operator==(const CallOut &) const = default;
};

/// By kind, then in the order of the lid list. @param design null: the box has none.
std::vector<CallOut> callOutsOf(const KeptBox &box, const Design *design);

/// A box that a second person looks over: it differs from its design, has none that is known, is
/// for a left hand, or for a home that must avoid something.
bool isSpecial(const KeptBox &box, const Design *design);

/// Why a box may not be packed as it is written: an item holds what its home must avoid (no
/// override for an allergy, job.md T3), or is made for the other hand. As an error's detail;
/// nothing: it may. An item that the catalogue does not know is refused for such a home, unless its
/// supply says that it was looked at.
std::optional<std::string> conflictIn(const KeptBox &box, const catalogue::Catalogue &catalogue,
                                      const KeptSupplies &supplies);

} // namespace lidlark::workbench

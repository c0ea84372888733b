#pragma once

#include "core/box/exceptions.h"
#include "core/box/piece_events.h"
#include "core/usecase/workplace.h"

#include <optional>
#include <string>

namespace lidlark::usecase {

/// Which item of whose box, and who says it.
struct Tending {
    std::string child;  ///< Alias.
    std::string author; ///< Empty: the phone's own person.
    ItemId item;
};

/// Pieces are gone, noted outside a play: used up, lost, broken, dried out, still in use.
/// @param day on which it happened; none: today. Errors: NotFound (child, item), Invalid (count
/// below one or more than the box can hold; a day to come, or more than 31 days ago).
Outcome noteGone(Workplace &workplace, const Tending &tending, box::ExceptionKind kind, int pieces,
                 std::optional<Day> day = std::nullopt);

/// Pieces that were still in use are back in the box. Errors: NotFound, Invalid (more than are
/// out).
Outcome noteBackAgain(Workplace &workplace, const Tending &tending, int pieces);

/// A piece was opened on @p day; none: it was not opened after all.
/// Errors: NotFound (child, item, piece), Invalid (a day to come or before the piece came).
Outcome noteOpened(Workplace &workplace, const Tending &tending, const box::PieceId &piece,
                   std::optional<Day> day);

/// A piece was found put back unwrapped. Errors: NotFound.
Outcome noteLeftOpen(Workplace &workplace, const Tending &tending, const box::PieceId &piece);

/// Looked over, and good. Errors: NotFound.
Outcome noteChecked(Workplace &workplace, const Tending &tending);

/// How long the family keeps it once opened; none: as the catalogue says.
/// Errors: NotFound, Invalid (below 1 or over 365 days).
Outcome setKeepingLimit(Workplace &workplace, const Tending &tending, std::optional<int> days);

/// In a mouth, washed, replaced. Errors: NotFound, Invalid (washed, of what cannot be cleaned).
Outcome noteHygiene(Workplace &workplace, const Tending &tending, box::HygieneMark mark);

/// A dried-out or past-date piece is thrown away, and another is asked for once: one act
/// (job.md scenario 4). Errors: NotFound (child, item; none is left).
Outcome throwAway(Workplace &workplace, const Tending &tending);

} // namespace lidlark::usecase

#pragma once

#include "core/usecase/revision_state.h"
#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// What a changed lid list asks of the phones that share the box.

/// How far it has come; nothing where the box has the list that it was handed over with, or nothing
/// can be read.
std::optional<usecase::RevisionState> newList(Household &household);

/// Something that the list removes has not left the house.
bool listRemovesMore(const std::optional<usecase::RevisionState> &list);

/// The paper on the lid is of an earlier revision, as far as this phone knows: each phone is told
/// by whoever has it.
bool lidIsOutOfDate(Household &household, const std::optional<usecase::RevisionState> &list);
Outcome sayLidIsNew(Household &household, const usecase::RevisionState &list);

/// "rubber bands, balloons": as inside a sentence.
QString itemNames(const Household &household, const std::vector<ItemId> &items);

} // namespace lidlark::mobile

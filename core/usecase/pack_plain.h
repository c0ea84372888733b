#pragma once

#include "core/usecase/pack_box.h"

namespace lidlark::usecase {

/// Codes of the boxes for which nobody has to look twice: nothing is called out in them, they may
/// be packed as they are written, and of @p item, which may be for either hand, nothing lies in
/// them yet. In the order of the build.
std::vector<std::string> plainBoxesWithout(const PackTable &table, const ItemId &item);

/// "All of it lies in each of these": one act over the plain boxes of a build, kept as a whole or
/// not at all, with the lot that the supply has now. Nothing left to pack: writes nothing.
/// Errors: NotAllowed, NotFound (build).
Outcome packPlainBoxes(Workplace &therapist, const workbench::BuildId &build, const ItemId &item);

} // namespace lidlark::usecase

#pragma once

#include "core/catalogue/own_files.h"
#include "core/usecase/workplace.h"
#include "core/workbench/own_entry.h"

#include <string>
#include <vector>

namespace lidlark::usecase {

/// At most so many own entries of a box are read; of the rest only that they are there. [P]
inline constexpr std::size_t mostOwnEntries = 100;

/// The therapist's own entries in one box, withdrawn ones among them, items first, by id. Of those
/// beyond mostOwnEntries, `standing` and `known` are empty and they are unsettled.
Result<std::vector<workbench::OwnEntry>> ownEntriesOf(Workplace &workplace, const BoxId &box);

/// What of a therapist's own lies over the catalogue for one box (catalogueWith): the same wherever
/// the same events are held. Of the store's other boxes, and of the therapist's desk, what is the
/// therapist's own is known by name and offered to nobody.
/// @param box empty: all by name alone.
Result<catalogue::OwnFiles> ownFilesOf(Workplace &workplace, const BoxId &box);
/// The same for the box of @p child; empty: the only box of the store, where there is one.
Result<catalogue::OwnFiles> ownFilesFor(Workplace &workplace, const std::string &child);

} // namespace lidlark::usecase

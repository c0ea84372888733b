#pragma once

#include "core/journal/event.h"
#include "core/sync/crew_book.h"
#include "core/sync/exchange.h"

#include <vector>

namespace lidlark::sync {

/// Brings along what others have sealed and what reached this phone from hand to hand: who sealed
/// it may never come to the storage again. A file that lies there already is left as it is.
Outcome carryAlong(Post &post, const CrewBook &book, Storage &storage, const GoOn &goOn,
                   Exchanged &report);

/// Those events that this phone carries so in a lane, where anybody takes them from it: to be
/// handed on before their files go, because something in the lane was erased.
Result<std::vector<journal::Event>> carriedIn(Post &post, const CrewBook &book,
                                              const journal::Lane &lane);

} // namespace lidlark::sync

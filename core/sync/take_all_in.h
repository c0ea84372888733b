#pragma once

#include "core/store/coverage.h"
#include "core/sync/crew_book.h"
#include "core/sync/exchange.h"
#include "core/sync/fetch.h"

namespace lidlark::sync {

/// Whether an exchange goes on; else it notes that it was stopped.
bool goesOn(const GoOn &goOn, Exchanged &report);

/// Fetches and applies round after round, since who is in and which keys there are come the same
/// way. @param grew what became known of each lane. @returns the book as it is afterwards.
Result<CrewBook> takeAllIn(Post &post, CrewBook book, Storage &storage, const GoOn &goOn,
                           store::AheadByLane &grew, Exchanged &report,
                           Whose whose = Whose::Others);

} // namespace lidlark::sync

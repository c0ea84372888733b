#pragma once

#include "core/store/coverage.h"
#include "core/sync/crew_book.h"
#include "core/sync/exchange.h"
#include "core/sync/fetch.h"

namespace lidlark::sync {

/// Whether an exchange goes on; else it notes that it was stopped.
bool goesOn(const GoOn &goOn, Exchanged &report);

/// How a storage is looked at.
struct Look {
    GoOn goOn = {};
    Whose whose = Whose::Others;
    bool byHand = false; ///< A file that was handed over: what is in it may lie nowhere else.
};

/// Fetches and applies round after round, since who is in and which keys there are come the same
/// way. @param grew what became known of each lane. @returns the book as it is afterwards.
Result<CrewBook> takeAllIn(Post &post, CrewBook book, Storage &storage, const Look &look,
                           store::AheadByLane &grew, Exchanged &report);

} // namespace lidlark::sync

#pragma once

#include "core/sync/crew_book.h"
#include "core/sync/findings.h"
#include "core/sync/storage.h"

#include <optional>

namespace lidlark::sync {

/// Folders are listed once a day, and asked for the next file alone in between: a listing costs a
/// hundred times as much (platform.md).
Result<bool> isDayToLookThrough(Post &post, const std::string &box);
Outcome lookedThrough(Post &post, const std::string &box);

/// What this phone had brought and the storage has lost waits to be brought again, and is named.
/// @returns the trouble that cut it short.
Result<std::optional<Trouble>> lookForOwn(Post &post, const CrewBook &book, Storage &storage,
                                          Findings &findings);

} // namespace lidlark::sync

#pragma once

#include "core/sync/chain.h"
#include "core/sync/crew_book.h"
#include "core/sync/findings.h"
#include "core/sync/storage.h"

namespace lidlark::sync {

/// A segment that was fetched and verified, and is the next of its device.
struct Fetched {
    Epoch epoch;
    DeviceId device;
    Segment segment;
    std::string bytes;
    std::uint64_t lastCounter = 0; ///< Of its own events up to here.
};

/// What one look at a storage brought.
struct Catch {
    std::vector<Fetched> segments; ///< In an order in which they can be applied.
    Findings findings;             ///< What cannot be applied, for now or ever.
    /// Removals that somebody wrote who was removed: kept, and judged by core/crew alone.
    std::vector<journal::Event> lastWords;
    std::optional<Trouble> trouble; ///< The look was cut short.
    bool more = false;              ///< There may be more than was taken at once.
};

/// Whose segments are looked for.
enum class Whose {
    Others,
    Own ///< This phone's own: its store was set back.
};

/// Asks for the next segments of every other device under every epoch held: one request each where
/// there is nothing new (platform.md: polling is one GET per device).
Result<Catch> fetchNew(Post &post, const CrewBook &book, Storage &storage,
                       Whose whose = Whose::Others);

} // namespace lidlark::sync

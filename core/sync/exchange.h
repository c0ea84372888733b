#pragma once

#include "core/sync/findings.h"
#include "core/sync/post.h"
#include "core/sync/storage.h"

#include <functional>
#include <optional>
#include <string>

namespace lidlark::sync {

/// What an exchange came to.
struct Exchanged {
    int received = 0; ///< Events that were new.
    int shared = 0;   ///< Segments brought to the storage.
    int waiting = 0;  ///< Segments that still wait to be brought.
    Findings findings;
    std::optional<Trouble> trouble; ///< What cut it short; everything before stands.
    bool out = false;               ///< This phone is not in the crew, or no longer.
    /// Bytes of somebody else lie under this phone's name: it was copied or restored, and must be
    /// let in anew before it shares anything.
    bool copied = false;
    bool stopped = false; ///< It was told to.
};

/// Asked between two steps: false stops the exchange there. Nothing is lost, and the next one goes
/// on.
using GoOn = std::function<bool()>;

/// Fetches what is new of the crew of @p box, verifies and applies it, and brings what this phone
/// has written (design.md 9). Each step is whole by itself, so that it may be cut off anywhere.
/// Errors: of the store, and ClockUnset.
Result<Exchanged> exchange(Post &post, const std::string &box, Storage &storage,
                           const GoOn &goOn = {});

/// Takes in only.
Result<Exchanged> takeIn(Post &post, const std::string &box, Storage &storage);

/// Takes in what was handed over as a file; the next exchange brings it along (carry.h).
Result<Exchanged> takeInByHand(Post &post, const std::string &box, Storage &file);

/// Takes in what this phone itself had shared, before its store was set back to a backup.
Result<Exchanged> takeOwnIn(Post &post, const std::string &box, Storage &storage);

} // namespace lidlark::sync

#pragma once

#include "core/store/database.h"

#include <cstdint>
#include <optional>

namespace lidlark::sync {

/// How far what was noted on this phone has come (job.md S7).
struct SharingState {
    bool inCrew = false;                  ///< There is somebody to share with.
    bool agreed = false;                  ///< An adult has said yes to it.
    std::optional<std::int64_t> sharedMs; ///< The last time all went well.
    int waiting = 0;                      ///< Notes of this phone that nobody else can have yet.
};

/// Read from the store alone. What the phone writes for its own order is no note, and what lies in
/// a lane that is never shared does not wait.
Result<SharingState> sharingState(store::Database &database);

/// Remembers that everything was exchanged.
Outcome noteShared(store::Database &database, std::int64_t nowMs);

} // namespace lidlark::sync

#pragma once

#include "core/play/sharing.h"
#include "core/store/recording.h"
#include "core/usecase/workplace.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::usecase {

/// A family's choice whether the therapist hears what is played (job.md 1.4, D3): theirs alone, off
/// at the start, and never asked for twice.
struct PlaySharing {
    std::vector<std::string> with; ///< The therapists in the crew, by name: it goes to all of them.
    bool shares = false;
    std::string by;         ///< Who has said so; empty: nobody has said anything.
    std::optional<Day> day; ///< When.
};

/// @returns nothing where there is nothing to choose: on a phone other than a parent's, and where
/// no therapist is in the crew. Errors: NotFound (child).
Result<std::optional<PlaySharing>> playSharing(Workplace &workplace, const std::string &childAlias);

/// Says yes, or no. From a yes on each play that ends is copied for the therapist, unless it was
/// stopped early; a no ends that, and takes back what was copied. Works without any network.
/// Errors: NotAllowed, where `playSharing` gives nothing; NotFound (child).
Outcome sharePlays(Workplace &workplace, const std::string &childAlias, bool yes);

/// Ends @p recording, with the copies as they are to be then (core/store/shared_copies.h).
Outcome commitWithCopies(Workplace &workplace, store::Recording &recording);

} // namespace lidlark::usecase

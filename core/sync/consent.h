#pragma once

#include "core/base/day.h"
#include "core/store/database.h"

#include <optional>
#include <string>

namespace lidlark::sync {

/// Which words were agreed to: one more whenever what is asked on the screen changes.
inline constexpr int consentWording = 1;

/// An adult's yes to sharing what is on this phone with its crew (job.md D4): who, when, to what.
struct Consent {
    std::string person; ///< Alias.
    Day day;
    int wording = consentWording;

    bool operator==(const Consent &) const = default;
};

/// The yes that stands; nothing where nobody has said it, or it was withdrawn: sharing is off at
/// the start (job.md D3).
Result<std::optional<Consent>> consentIn(store::Database &database);

/// Keeps it. Errors: Invalid (nobody's name), ClockUnset is the caller's.
Outcome consentToSharing(store::Database &database, const Consent &consent);

/// From now on nothing goes out. Works without any network; that it was withdrawn, and when, stays.
Outcome withdrawConsent(store::Database &database, Day today);

} // namespace lidlark::sync

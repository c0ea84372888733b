#pragma once

#include "core/crew/member.h"
#include "core/sync/welcome.h"

namespace lidlark::sync {

/// A guest's invitation lasts at most so many days, the first one counted (job.md G7).
inline constexpr int guestDays = 7;

/// Lets a phone into the crew of @p box: says so, turns the keys, and gathers what it is given. A
/// guest is also given the box and the home sheet as they stand (guest_copy.h). In one transaction.
/// Errors: NotAllowed (not a parent's or the therapist's phone, or not in the crew), Invalid
/// (a guest without an end, or for too long; a device that is in it, or was; into the clinic's
/// crew, anybody but a therapist's).
Result<Welcome> letIn(Post &post, const std::string &box, const crew::Member &newcomer);

/// What @p member may be given of what this phone holds: who is in the crew, and keys.
Result<Welcome> welcomeFor(Post &post, const std::string &box, const crew::Member &member);

/// Removes another's device, accepting what is here of it, and turns the keys. In one transaction.
/// Errors: NotAllowed, NotFound.
Outcome removeMember(Post &post, const std::string &box, const DeviceId &device);

/// A new phone takes what it was given: who it is, whom it trusts, its keys.
/// Errors: those of may_settle.h.
Outcome settleIn(Post &post, const Welcome &welcome);

} // namespace lidlark::sync

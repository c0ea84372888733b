#pragma once

#include "core/crew/member.h"
#include "core/sync/join_room.h"
#include "core/sync/post.h"

#include <array>
#include <optional>
#include <string>
#include <variant>

namespace lidlark::sync {

/// A joining code is good for so long, and once.
inline constexpr std::int64_t inviteMs = 10 * msPerMinute;

/// Whom a code lets in.
struct Asked {
    crew::Role role = crew::Role::Guest;
    HomeId home;                             ///< Empty for a therapist.
    std::optional<Day> until = std::nullopt; ///< A guest's last day.
};

/// A code that was made and waits for somebody.
struct Invited {
    JoinSecret secret;
    Asked asked;
    std::int64_t untilMs = 0; ///< When the code ends.
};

/// Somebody has typed the code in: shown to an adult in the room, who accepts or does not.
struct Knock {
    crew::Member newcomer;
    /// Three words that both phones show: if they differ, it is another phone.
    std::array<std::string, 3> same;
};

/// The words that both phones show for a newcomer's keys.
std::array<std::string, 3> sameWords(const crew::Member &newcomer, const JoinSecret &secret);

/// Makes a code for the crew of @p box; an earlier one ends. Errors: NotAllowed (only a parent's or
/// the therapist's phone invites), Invalid (a guest without an end, or for too long; into the
/// clinic's crew, anybody but a therapist's).
Result<Invited> invite(Post &post, const std::string &box, const Asked &asked);

/// The code that waits; nothing where there is none, or its time is over.
Result<std::optional<Invited>> invited(Post &post, const std::string &box);

/// Ends the code.
Outcome endInvitation(Post &post, const std::string &box);

/// Looks whether somebody knocks. @returns nothing inside where nobody does yet.
Answer<std::optional<Knock>> lookForKnock(const Invited &invited, Storage &storage);

/// Lets the newcomer in and leaves the welcome. Cut off after the first, the second is done by
/// `bringWelcome`. Errors: those of let_in.h.
Outcome accept(Post &post, const std::string &box, const Invited &invited, const Knock &knock);

/// Leaves the welcome that waits to be brought, if one does.
/// @returns whether one was.
Result<Answer<bool>> bringWelcome(Post &post, const std::string &box, Storage &storage);

} // namespace lidlark::sync

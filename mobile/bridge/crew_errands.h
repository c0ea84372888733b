#pragma once

#include "core/sync/invite.h"
#include "core/sync/knock.h"
#include "core/wording/sentence.h"
#include "mobile/bridge/crew_desk.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::mobile {

/// What came of sharing.
struct ShareReport {
    std::optional<wording::Sentence> trouble; ///< What cut it short.
    std::vector<wording::Sentence> findings;  ///< What was met and not taken in.
    int received = 0;
    bool setBack = false; ///< This phone was copied or set back to a backup.
};

/// The same of one exchange, in words.
ShareReport reportOf(CrewDesk &desk, const std::string &box, const sync::Exchanged &exchanged);

/// Exchanges with every crew of the store. Errors: NotAllowed (nobody has said yes), and of the
/// store.
Result<ShareReport> share(CrewDesk &desk);

/// Makes a code for the crew asked for. @param another for another home than this one.
Result<sync::Invited> makeCode(CrewDesk &desk, const Whose &whose, sync::Asked asked, bool another);

/// Whether somebody knocks.
struct Heard {
    std::optional<sync::Knock> knock;
    std::optional<wording::Sentence> trouble;
};
Result<Heard> listen(CrewDesk &desk, const sync::Invited &invited);

/// Lets the newcomer in, and shares at once: what it needs then lies in the shared place.
Result<ShareReport> acceptKnock(CrewDesk &desk, const Whose &whose, const sync::Invited &invited,
                                const sync::Knock &knock);

/// Begins to join, or goes on with what was begun. @param anew a phone that was in this crew
/// before. @returns the words that both phones show.
Result<std::array<std::string, 3>> beginToJoin(CrewDesk &desk, const sync::JoinSecret &secret,
                                               const std::string &person, bool anew);

/// How far a phone is that joins.
struct JoinReport {
    bool in = false;
    std::optional<wording::Sentence> trouble;
};
/// Knocks, and, once it is let in, fetches what is there for it.
Result<JoinReport> knock(CrewDesk &desk);

/// Takes a device out, this one or another's: out of the crew asked for, and tells the others.
Result<ShareReport> removeDevice(CrewDesk &desk, const Whose &whose, const DeviceId &device);

} // namespace lidlark::mobile

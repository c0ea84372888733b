#pragma once

#include "core/sync/invite.h"
#include "core/sync/secret_keeper.h"

#include <optional>
#include <string>

namespace lidlark::sync {

/// A phone on its way into a crew: it has the code and waits to be let in.
struct Joining {
    JoinSecret secret;
    store::Device device;            ///< Its new id, and who writes on it.
    std::array<std::string, 3> same; ///< Words that the other phone shows too.
};

/// How far it is.
enum class Step {
    Waiting, ///< The other phone has not let it in yet.
    In       ///< It is in: the next exchange brings the box.
};

/// Begins, or goes on with the one begun under this code. The store must be nobody's yet, or that
/// of a phone that was copied or restored and must be let in anew.
/// Errors: Invalid (an empty or over-long alias; a store that is somebody's).
Result<Joining> beginJoining(store::Database &database, const Clock &clock, Entropy &entropy,
                             SecretKeeper &keeper, const JoinSecret &secret,
                             const std::string &person);

/// The one begun; nothing where there is none.
Result<std::optional<Joining>> joiningIn(store::Database &database);

/// Knocks, and looks whether it was let in.
Result<Answer<Step>> goOnJoining(store::Database &database, const Clock &clock, Entropy &entropy,
                                 SecretKeeper &keeper, Storage &storage);

/// Gives up: the code can be used by nobody any more, as far as this phone can tell.
Outcome giveUpJoining(store::Database &database);

} // namespace lidlark::sync

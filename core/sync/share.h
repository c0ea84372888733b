#pragma once

#include "core/sync/exchange.h"
#include "core/sync/own_secret.h"

#include <map>
#include <string>

namespace lidlark::sync {

/// The phone whose store this is, ready for its crews; what its keychain says of the store is in
/// @ref Opened::match. Errors: NotFound (a store that is nobody's).
struct Opened {
    Post post;
    Match match = Match::Well;
};
Result<Opened> openPost(store::Database &database, const Clock &clock, Entropy &entropy,
                        SecretKeeper &keeper);

/// What came of sharing all the boxes of one store.
struct Shared {
    Match match = Match::Well; ///< Other than Well: nothing was shared (but see `shareAll`).
    std::map<std::string, Exchanged> boxes; ///< By box that has a crew.
};

/// Exchanges every crew of the store: welcomes that wait, what is new, what was written. A store
/// that was set back to a backup writes nothing; if its phone is the only one of the crew, it first
/// reads what it had shared itself, and goes on from there.
Result<Shared> shareAll(Post &post, Match match, SecretKeeper &keeper, Storage &storage,
                        const GoOn &goOn = {});

} // namespace lidlark::sync

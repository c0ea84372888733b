#pragma once

#include "core/sync/post.h"
#include "core/sync/secret_keeper.h"

#include <optional>
#include <string>

namespace lidlark::sync {

/// What the keychain and the store say of each other.
enum class Match {
    Well,
    Restored, ///< The store is older than the keychain's mark: it was set back to a backup.
    Strange   ///< The keychain knows nothing of this phone: the store was copied from another.
};

/// A phone's secret, and whether the store beside it is the one it belongs to.
struct OwnSecret {
    crypto::DeviceSecret secret;
    Match match = Match::Well;
};

/// The secret of this phone; a fresh one, kept, where it has never had any.
Result<OwnSecret> ownSecret(store::Database &database, const DeviceId &device, SecretKeeper &keeper,
                            Entropy &entropy);

/// Moves the mark on in the store and then in the keychain: before each exchange. A store that
/// comes back from a backup is found by it before it writes.
Outcome moveMarkOn(store::Database &database, const DeviceId &device, SecretKeeper &keeper);

/// A phone that was copied or restored goes on under a new id, and must be let in anew. What it had
/// not shared is handed on then; what it had sealed and not brought is sealed anew. @p post becomes
/// the new one.
Outcome takeNewId(Post &post, SecretKeeper &keeper);

/// The id under which this phone was known before; empty: none.
Result<DeviceId> formerId(store::Database &database);

} // namespace lidlark::sync

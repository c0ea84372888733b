#pragma once

#include "core/store/database.h"
#include "core/sync/secret_keeper.h"

#include <memory>

namespace lidlark::mobile {

class Keychain;

/// Where a family's keys lie: chosen once, when they are first needed, and never changed under
/// them. The system's keychain where it answers, else a file beside the store.
/// @param keychain null: the phone has none.
/// Errors: Unwritable (the choice cannot be kept).
Result<std::unique_ptr<sync::SecretKeeper>> keeperFor(store::Database &database,
                                                      std::shared_ptr<Keychain> keychain);

/// The keys lie in a file; false while they lie nowhere yet.
bool keysLieInAFile(store::Database &database);

} // namespace lidlark::mobile

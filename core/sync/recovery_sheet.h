#pragma once

#include "core/sync/join_code.h"
#include "core/sync/let_in.h"
#include "core/sync/secret_keeper.h"
#include "core/sync/storage.h"

#include <array>
#include <optional>
#include <string>

namespace lidlark::sync {

/// What is printed on a recovery sheet: twice nine words, 160 bits. Whoever finds the sheet and the
/// way into the storage reads what a parent of the home reads.
using SheetSecret = std::array<JoinSecret, 2>;

/// A member on paper (events.md 10): lets a home whose only phone has drowned come back.
struct RecoverySheet {
    SheetSecret secret;
    crew::Member member;
};

/// Makes one and lets it into the crew; earlier ones of this home are removed. Its secret is given
/// once and kept nowhere. Errors: NotAllowed (a parent's phone only).
Result<RecoverySheet> makeSheet(Post &post, const std::string &box);

/// Leaves on the storage what the sheets of this home need, where it is not there yet.
/// @returns the trouble that cut it short.
Result<std::optional<Trouble>> leaveForSheets(Post &post, const std::string &box, Storage &storage);

/// A fresh store takes everything that the sheet's home had shared, and its phone is let into the
/// crew as a parent's.
/// @returns trouble, or whether there was anything for this sheet.
/// Errors: Invalid (a store that is somebody's, an empty alias), ClockUnset.
Result<Answer<bool>> recover(store::Database &database, const Clock &clock, Entropy &entropy,
                             SecretKeeper &keeper, Storage &storage, const SheetSecret &secret,
                             const std::string &person);

} // namespace lidlark::sync

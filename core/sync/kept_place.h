#pragma once

#include "core/store/database.h"
#include "core/sync/secret_keeper.h"

#include <optional>
#include <string>

namespace lidlark::sync {

/// Where the phones of a crew leave what they share.
struct CrewPlace {
    std::string
        address;      ///< A folder, or the address of one on a server; never with a password in it.
    std::string user; ///< Empty: none is asked for.
    std::string password;

    bool operator==(const CrewPlace &) const = default;
};

/// The one that was chosen for this store, with its password from the keeper; nothing where none
/// was.
Result<std::optional<CrewPlace>> placeIn(store::Database &database, SecretKeeper &keeper);

/// Its address alone, for a screen; empty: none was chosen.
Result<std::string> addressIn(store::Database &database);

/// Keeps it: the password with the keeper, the rest in the store.
Outcome keepPlace(store::Database &database, SecretKeeper &keeper, const CrewPlace &place);

/// What lies there stays there.
Outcome forgetPlace(store::Database &database, SecretKeeper &keeper);

} // namespace lidlark::sync

#pragma once

#include "core/base/entropy.h"
#include "core/sync/kept_place.h"
#include "core/sync/storage.h"
#include "core/wording/sentence.h"

#include <memory>
#include <string>
#include <variant>

namespace lidlark::mobile {

/// A storage, or why there is none.
using StorageOrWhy = std::variant<std::unique_ptr<sync::Storage>, wording::Sentence>;

/// The storage at @p place: a folder where its address is a path, else one on a server.
StorageOrWhy storageFor(const sync::CrewPlace &place);

/// Tries out all that sharing asks of a storage. @returns whether it can be used, and what that
/// came to.
std::pair<bool, wording::Sentence> triedOut(sync::Storage &storage, Entropy &entropy);

/// The place as it is kept: credentials out of the address and into their own fields.
sync::CrewPlace tidied(const sync::CrewPlace &typed);

/// Whether it is reached over a network.
bool isOnServer(const std::string &address);

} // namespace lidlark::mobile

#pragma once

#include "core/base/entropy.h"
#include "core/base/result.h"
#include "core/sync/kept_place.h"
#include "core/sync/storage.h"
#include "core/wording/sentence.h"

#include <memory>
#include <optional>

namespace lidlark::mobile {

/// The storage at @p place: a folder where its address is a path, else one on a server.
/// Errors: NotFound (no such folder), Invalid (no address).
Result<std::unique_ptr<sync::Storage>> storageFor(const sync::CrewPlace &place);

/// Tries out all that sharing asks of a storage. @returns why it cannot be used; nothing where it can.
std::optional<wording::Sentence> whatBars(sync::Storage &storage, Entropy &entropy);

/// Whether it is reached over a network.
bool isOnServer(const std::string &address);

} // namespace lidlark::mobile

#pragma once

#include "core/base/result.h"
#include "core/sync/kept_place.h"
#include "core/sync/storage.h"

#include <memory>

namespace lidlark::mobile {

/// The storage at @p place: a folder where its address is a path, else one on a server.
/// Errors: NotFound (no such folder), Invalid (no address).
Result<std::unique_ptr<sync::Storage>> storageFor(const sync::CrewPlace &place);

/// Whether it is reached over a network.
bool isOnServer(const std::string &address);

} // namespace lidlark::mobile

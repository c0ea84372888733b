#pragma once

#include "core/sync/connection_check.h"
#include "core/sync/server_address.h"
#include "core/wording/sentence.h"

namespace lidlark::sync {

/// What a trial of a storage came to, and what to do about it.
wording::Sentence sentenceFor(Connection connection);

/// Why what was typed is no address to go to.
wording::Sentence sentenceFor(AddressFault fault);

} // namespace lidlark::sync

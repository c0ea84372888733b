#pragma once

#include "core/sync/http_call.h"
#include "core/sync/storage.h"

namespace lidlark::sync {

/// What a call that brought no whole answer means for a storage.
Trouble troubleOf(HttpFault fault);

/// What an answer means that is not the one hoped for. Source: RFC 9110, 15; RFC 4918, 11; RFC
/// 6585.
Trouble troubleOfStatus(long status);

/// The trouble of @p answer where its status is not one of those hoped for.
Trouble troubleOf(const HttpAnswer &answer);

} // namespace lidlark::sync

#pragma once

#include <cstddef>
#include <string_view>

namespace lidlark {

/// Whether @p bytes are CBOR (RFC 8949) with no more than @p levels lists and maps inside each
/// other. The library reads each level by a call inside the last one's, so that a hostile file of a
/// few thousand bytes would use up the stack: this stops at the first level too many.
bool isShallowCbor(std::string_view bytes, std::size_t levels);

} // namespace lidlark

#pragma once

#include <cstddef>
#include <string_view>

namespace lidlark {

/// Whether @p bytes are one item of CBOR (RFC 8949, 3) with no more than @p levels lists and maps
/// inside each other, all of known length and without tags: what packTree writes. The library reads
/// each level, and each piece of a string of unknown length, by a call inside the last one's: a
/// hostile file of some thousand bytes would use up the stack. Here nothing calls itself.
bool isShallowCbor(std::string_view bytes, std::size_t levels);

} // namespace lidlark

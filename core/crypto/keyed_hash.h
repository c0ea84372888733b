#pragma once

#include "core/base/digest.h"
#include "core/crypto/bytes.h"

#include <string_view>

namespace lidlark::crypto {

/// BLAKE2b with a key and a 32-byte digest (RFC 7693, 2.9 and 3.3). Whoever has not the key can
/// neither work it out nor tell it from chance.
Digest keyedHash(const Secret<32> &key, std::string_view text);

/// A key of its own for one use, from another: the keyed hash of the use's name. BLAKE2b keyed is a
/// pseudorandom function (RFC 7693, 5), which is all that a derivation from a uniform key needs.
/// @param use "lidlark seal 1": says what the key is for, and is the same for everybody.
Secret<32> derivedKey(const Secret<32> &key, std::string_view use);

} // namespace lidlark::crypto

#pragma once

#include "core/crypto/bytes.h"

#include <string_view>

namespace lidlark::crypto {

/// The key by which others know who signs with @p seed (Ed25519, RFC 8032, 5.1.5).
PublicKey publicKeyOf(const SigningSeed &seed);
/// Ed25519 (RFC 8032, 5.1.6): the same text and seed give the same signature.
Signature signatureOf(std::string_view text, const SigningSeed &seed);
/// RFC 8032, 5.1.7; small orders and forms of a number that are not the least are refused.
bool isSignedBy(const PublicKey &key, std::string_view text, const Signature &signature);

} // namespace lidlark::crypto

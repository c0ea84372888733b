#include "core/crypto/keyed_hash.h"

#include <sodium.h>

namespace lidlark::crypto {

Digest keyedHash(const Secret<32> &key, std::string_view text)
{
    Digest digest{};
    crypto_generichash(digest.data(), digest.size(), bytesOf(text), text.size(), key.data(),
                       Secret<32>::size);
    return digest;
}

Secret<32> derivedKey(const Secret<32> &key, std::string_view use)
{
    return Secret<32>(keyedHash(key, use));
}

} // namespace lidlark::crypto

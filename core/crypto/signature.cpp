#include "core/crypto/signature.h"

#include <sodium.h>

namespace lidlark::crypto {

namespace {

static_assert(SigningSeed::size == crypto_sign_ed25519_SEEDBYTES);
static_assert(std::tuple_size_v<PublicKey> == crypto_sign_ed25519_PUBLICKEYBYTES);
static_assert(std::tuple_size_v<Signature> == crypto_sign_ed25519_BYTES);

/// Both halves, and the secret one wiped when it goes.
struct SigningPair {
    PublicKey open{};
    std::array<std::uint8_t, crypto_sign_ed25519_SECRETKEYBYTES> secret{};

    explicit SigningPair(const SigningSeed &seed)
    {
        crypto_sign_ed25519_seed_keypair(open.data(), secret.data(), seed.data());
    }
    ~SigningPair() { sodium_memzero(secret.data(), secret.size()); }
    SigningPair(const SigningPair &) = delete;
    SigningPair &operator=(const SigningPair &) = delete;
};

} // namespace

PublicKey publicKeyOf(const SigningSeed &seed)
{
    return SigningPair(seed).open;
}

Signature signatureOf(std::string_view text, const SigningSeed &seed)
{
    const SigningPair pair(seed);
    Signature signature{};
    crypto_sign_ed25519_detached(signature.data(), nullptr, bytesOf(text), text.size(),
                                 pair.secret.data());
    return signature;
}

bool isSignedBy(const PublicKey &key, std::string_view text, const Signature &signature)
{
    return crypto_sign_ed25519_verify_detached(signature.data(), bytesOf(text), text.size(),
                                               key.data()) == 0;
}

} // namespace lidlark::crypto

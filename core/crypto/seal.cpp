#include "core/crypto/seal.h"

#include <sodium.h>

namespace lidlark::crypto {

static_assert(sealGrowth == crypto_aead_xchacha20poly1305_ietf_ABYTES);
static_assert(SealKey::size == crypto_aead_xchacha20poly1305_ietf_KEYBYTES);
static_assert(std::tuple_size_v<Nonce> == crypto_aead_xchacha20poly1305_ietf_NPUBBYTES);

std::string sealed(std::string_view text, std::string_view beside, const SealKey &key,
                   const Nonce &nonce)
{
    std::string closed(text.size() + sealGrowth, '\0');
    crypto_aead_xchacha20poly1305_ietf_encrypt(reinterpret_cast<std::uint8_t *>(closed.data()),
                                               nullptr, bytesOf(text), text.size(), bytesOf(beside),
                                               beside.size(), nullptr, nonce.data(), key.data());
    return closed;
}

std::optional<std::string> opened(std::string_view closed, std::string_view beside,
                                  const SealKey &key, const Nonce &nonce)
{
    if (closed.size() < sealGrowth)
        return std::nullopt;
    std::string text(closed.size() - sealGrowth, '\0');
    const int status = crypto_aead_xchacha20poly1305_ietf_decrypt(
        reinterpret_cast<std::uint8_t *>(text.data()), nullptr, nullptr, bytesOf(closed),
        closed.size(), bytesOf(beside), beside.size(), nonce.data(), key.data());
    return status == 0 ? std::optional(std::move(text)) : std::nullopt;
}

} // namespace lidlark::crypto

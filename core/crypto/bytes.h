#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace lidlark::crypto {

/// A secret of fixed length. It is wiped when it goes, and is never printed; two are compared in
/// constant time (libsodium: sodium_memzero, sodium_memcmp).
template <std::size_t Size> class Secret
{
public:
    static constexpr std::size_t size = Size;

    Secret() = default;
    explicit Secret(const std::array<std::uint8_t, Size> &bytes) : m_bytes(bytes) {}
    Secret(const Secret &) = default;
    Secret &operator=(const Secret &) = default;
    ~Secret();

    [[nodiscard]] const std::uint8_t *data() const { return m_bytes.data(); }
    [[nodiscard]] const std::array<std::uint8_t, Size> &bytes() const { return m_bytes; }
    [[nodiscard]] bool equals(const Secret &other) const;

private:
    std::array<std::uint8_t, Size> m_bytes{};
};

/// What seals a lane in one epoch: all other keys of the epoch come from it.
using EpochKey = Secret<32>;
/// Seals segments.
using SealKey = Secret<32>;
/// Names what lies on a storage.
using NameKey = Secret<32>;
/// What a device signs with: the seed of RFC 8032, 5.1.5.
using SigningSeed = Secret<32>;

using PublicKey = std::array<std::uint8_t, 32>; ///< Ed25519.
using Signature = std::array<std::uint8_t, 64>; ///< Ed25519.
using Nonce = std::array<std::uint8_t, 24>;     ///< Never twice under one key.

extern template class Secret<10>; // a joining code
extern template class Secret<32>;

/// The bytes of text, for libsodium.
inline const std::uint8_t *bytesOf(std::string_view text)
{
    return reinterpret_cast<const std::uint8_t *>(text.data());
}

/// An array of bytes as text.
template <std::size_t Size> std::string textOf(const std::array<std::uint8_t, Size> &bytes)
{
    return {reinterpret_cast<const char *>(bytes.data()), Size};
}

} // namespace lidlark::crypto

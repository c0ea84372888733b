#include "core/base/entropy.h"

#include "core/base/digest.h"

#include <sodium.h>

#include <algorithm>

namespace lidlark {

bool startRandomness()
{
    return sodium_init() >= 0;
}

std::string Entropy::freshId()
{
    static constexpr char hexDigits[] = "0123456789abcdef";
    std::string id;
    for (const std::uint8_t byte : sixteenBytes()) {
        id.push_back(hexDigits[byte >> 4U]);
        id.push_back(hexDigits[byte & 15U]);
    }
    return id;
}

std::array<std::uint8_t, 16> SystemEntropy::sixteenBytes()
{
    std::array<std::uint8_t, 16> bytes{};
    randombytes_buf(bytes.data(), bytes.size());
    return bytes;
}

std::array<std::uint8_t, 16> SeededEntropy::sixteenBytes()
{
    const Digest digest = blake2b(m_seed + '\0' + std::to_string(m_count++));
    std::array<std::uint8_t, 16> bytes{};
    std::copy_n(digest.begin(), bytes.size(), bytes.begin());
    return bytes;
}

} // namespace lidlark

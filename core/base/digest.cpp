#include "core/base/digest.h"

#include <sodium.h>

namespace lidlark {

Digest blake2b(std::string_view bytes)
{
    Digest digest{};
    crypto_generichash(digest.data(), digest.size(),
                       reinterpret_cast<const unsigned char *>(bytes.data()), bytes.size(), nullptr,
                       0);
    return digest;
}

std::string hexOf(const Digest &digest)
{
    static constexpr char hexDigits[] = "0123456789abcdef";
    std::string text;
    text.reserve(digest.size() * 2);
    for (const std::uint8_t byte : digest) {
        text.push_back(hexDigits[byte >> 4U]);
        text.push_back(hexDigits[byte & 15U]);
    }
    return text;
}

std::uint64_t leadingEight(const Digest &digest)
{
    std::uint64_t value = 0;
    for (std::size_t i = 0; i < 8; ++i)
        value = value << 8U | digest[i];
    return value;
}

} // namespace lidlark

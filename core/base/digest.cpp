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

std::uint64_t leadingEight(const Digest &digest)
{
    std::uint64_t value = 0;
    for (std::size_t i = 0; i < 8; ++i)
        value = value << 8U | digest[i];
    return value;
}

} // namespace lidlark

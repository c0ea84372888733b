#include "core/sync/post.h"

#include <algorithm>

namespace lidlark::sync {

crew::Member memberOf(const store::Device &device, const crypto::DeviceSecret &secret)
{
    return {device.id,
            device.person,
            device.role,
            device.home,
            crypto::publicKeyOf(crypto::signingSeedOf(secret)),
            crypto::letterKeyOf(crypto::letterSeedOf(secret)),
            device.until,
            false,
            {},
            {}};
}

crypto::Secret<32> freshSecret(Entropy &entropy)
{
    std::array<std::uint8_t, 32> bytes{};
    const auto first = entropy.sixteenBytes();
    const auto second = entropy.sixteenBytes();
    std::copy(first.begin(), first.end(), bytes.begin());
    std::copy(second.begin(), second.end(), bytes.begin() + 16);
    return crypto::Secret<32>(bytes);
}

crypto::Nonce freshNonce(Entropy &entropy)
{
    const crypto::Secret<32> bytes = freshSecret(entropy);
    crypto::Nonce nonce{};
    std::copy_n(bytes.bytes().begin(), nonce.size(), nonce.begin());
    return nonce;
}

} // namespace lidlark::sync

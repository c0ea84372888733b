#include "core/crypto/device_keys.h"

#include "core/crypto/keyed_hash.h"

namespace lidlark::crypto {

SigningSeed signingSeedOf(const DeviceSecret &secret)
{
    return derivedKey(secret, "lidlark sign 1");
}

LetterSeed letterSeedOf(const DeviceSecret &secret)
{
    return derivedKey(secret, "lidlark letter 1");
}

} // namespace lidlark::crypto

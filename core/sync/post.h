#pragma once

#include "core/base/clock.h"
#include "core/base/entropy.h"
#include "core/crew/member.h"
#include "core/crypto/device_keys.h"
#include "core/store/device_repository.h"

namespace lidlark::sync {

/// A phone as far as its crew is concerned: its store, whose it is, its secret, time and chance.
struct Post {
    store::Database &database;
    const Clock &clock;
    Entropy &entropy;
    store::Device device;
    crypto::DeviceSecret secret;
};

/// A phone as a member: who it is, and what others verify and reach it by.
crew::Member memberOf(const store::Device &device, const crypto::DeviceSecret &secret);

/// 32 bytes of chance.
crypto::Secret<32> freshSecret(Entropy &entropy);
/// 24 bytes of chance: never used before, and never again.
crypto::Nonce freshNonce(Entropy &entropy);

} // namespace lidlark::sync

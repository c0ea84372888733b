#pragma once

#include "core/crypto/letter.h"
#include "core/crypto/signature.h"

namespace lidlark::crypto {

/// The one secret of a phone in a crew. It never leaves the phone's keychain; both of its keys come
/// from it.
using DeviceSecret = Secret<32>;

/// What it signs with.
SigningSeed signingSeedOf(const DeviceSecret &secret);
/// What it reads letters with.
LetterSeed letterSeedOf(const DeviceSecret &secret);

} // namespace lidlark::crypto

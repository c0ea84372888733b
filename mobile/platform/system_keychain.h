#pragma once

#include "mobile/platform/keychain.h"

namespace lidlark::mobile {

/// The keychain of the desktop or the phone (QtKeychain: Secret Service, KWallet, Android's
/// keystore). Where none answers in time it is as if there were none: a window that asks for a
/// password is not waited for.
class SystemKeychain final : public Keychain
{
public:
    Answer read(const QString &name) override;
    bool keep(const QString &name, const QByteArray &value) override;
    bool forget(const QString &name) override;
};

} // namespace lidlark::mobile

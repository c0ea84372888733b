#pragma once

#include <QByteArray>
#include <QString>

#include <optional>

namespace lidlark::mobile {

/// Where the system keeps what nobody else may read. Each call waits for the answer, and not for
/// long: it is asked on a thread that nobody looks at.
class Keychain
{
public:
    struct Answer {
        bool came = false;               ///< False: no keychain, or it is locked.
        std::optional<QByteArray> value; ///< What is kept; absent: nothing.
    };

    Keychain() = default;
    Keychain(const Keychain &) = delete;
    Keychain &operator=(const Keychain &) = delete;
    virtual ~Keychain() = default;

    virtual Answer read(const QString &name) = 0;
    /// @returns whether it is kept.
    virtual bool keep(const QString &name, const QByteArray &value) = 0;
    /// Whether or not there was anything.
    virtual bool forget(const QString &name) = 0;
};

} // namespace lidlark::mobile

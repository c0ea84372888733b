#pragma once

#include "core/base/result.h"

#include <optional>
#include <string>

namespace lidlark::sync {

/// Where a phone keeps what nobody else may read: its secret, and the way into a storage. The
/// system's keychain where there is one, else a file of its own (secret_file.h).
class SecretKeeper
{
public:
    SecretKeeper() = default;
    SecretKeeper(const SecretKeeper &) = delete;
    SecretKeeper &operator=(const SecretKeeper &) = delete;
    virtual ~SecretKeeper() = default;

    /// Errors of each: Unreadable, Unwritable.
    virtual Result<std::optional<std::string>> read(const std::string &name) = 0;
    virtual Outcome keep(const std::string &name, const std::string &value) = 0;
    virtual Outcome forget(const std::string &name) = 0;
};

} // namespace lidlark::sync

#pragma once

#include "core/sync/secret_keeper.h"

#include <filesystem>
#include <map>

namespace lidlark::sync {

/// A file that only its owner's account may read (mode 0600), where there is no keychain: whoever
/// holds the unlocked phone, or its disk, can read it. Written whole or not at all.
class SecretFile final : public SecretKeeper
{
public:
    explicit SecretFile(std::filesystem::path path) : m_path(std::move(path)) {}

    Result<std::optional<std::string>> read(const std::string &name) override;
    Outcome keep(const std::string &name, const std::string &value) override;
    Outcome forget(const std::string &name) override;

private:
    using Secrets = std::map<std::string, std::string>;
    [[nodiscard]] Result<Secrets> readAll() const;
    [[nodiscard]] Outcome writeAll(const Secrets &secrets) const;

    std::filesystem::path m_path;
};

} // namespace lidlark::sync

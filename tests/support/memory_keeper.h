#pragma once

#include "core/sync/secret_keeper.h"

#include <map>

namespace lidlark::test {

/// A keychain for as long as the test runs.
class MemoryKeeper final : public sync::SecretKeeper
{
public:
    Result<std::optional<std::string>> read(const std::string &name) override
    {
        const auto found = m_secrets.find(name);
        return found == m_secrets.end() ? std::optional<std::string>()
                                        : std::optional(found->second);
    }
    Outcome keep(const std::string &name, const std::string &value) override
    {
        m_secrets[name] = value;
        return Done{};
    }
    Outcome forget(const std::string &name) override
    {
        m_secrets.erase(name);
        return Done{};
    }

private:
    std::map<std::string, std::string> m_secrets;
};

} // namespace lidlark::test

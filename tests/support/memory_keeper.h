#pragma once

#include "core/sync/secret_keeper.h"

#include <map>

namespace lidlark::test {

/// A keychain in memory.
class MemoryKeeper final : public sync::SecretKeeper
{
public:
    std::map<std::string, std::string> secrets;

    Result<std::optional<std::string>> read(const std::string &name) override
    {
        const auto found = secrets.find(name);
        return found == secrets.end() ? std::optional<std::string>() : std::optional(found->second);
    }
    Outcome keep(const std::string &name, const std::string &value) override
    {
        secrets[name] = value;
        return Done{};
    }
    Outcome forget(const std::string &name) override
    {
        secrets.erase(name);
        return Done{};
    }
};

} // namespace lidlark::test

#include "core/sync/secret_file.h"

#include "core/base/whole_file.h"

#include <nlohmann/json.hpp>

#include <fstream>
#include <sstream>

namespace lidlark::sync {

Result<SecretFile::Secrets> SecretFile::readAll() const
{
    std::error_code error;
    if (!std::filesystem::exists(m_path, error))
        return error ? Result<Secrets>(Error{ErrorCode::Unreadable, m_path.string()}) : Secrets();
    std::ifstream file(m_path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    const auto json = nlohmann::json::parse(text.str(), nullptr, false);
    if (!file || !json.is_object())
        return Error{ErrorCode::Unreadable, m_path.string()};
    Secrets secrets;
    for (const auto &[name, value] : json.items()) {
        if (!value.is_string())
            return Error{ErrorCode::Unreadable, m_path.string()};
        secrets[name] = value.get<std::string>();
    }
    return secrets;
}

Outcome SecretFile::writeAll(const Secrets &secrets) const
{
    if (writeWholeFile(m_path, nlohmann::json(secrets).dump()))
        return Error{ErrorCode::Unwritable, m_path.string()};
    return Done{};
}

Result<std::optional<std::string>> SecretFile::read(const std::string &name)
{
    const auto secrets = readAll();
    if (!secrets)
        return secrets.error();
    const auto found = secrets->find(name);
    return found == secrets->end() ? std::optional<std::string>() : std::optional(found->second);
}

Outcome SecretFile::keep(const std::string &name, const std::string &value)
{
    auto secrets = readAll();
    if (!secrets)
        return secrets.error();
    (*secrets)[name] = value;
    return writeAll(*secrets);
}

Outcome SecretFile::forget(const std::string &name)
{
    auto secrets = readAll();
    if (!secrets)
        return secrets.error();
    return secrets->erase(name) == 0 ? Outcome(Done{}) : writeAll(*secrets);
}

} // namespace lidlark::sync

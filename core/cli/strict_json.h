#pragma once

#include "core/base/result.h"

#include <nlohmann/json.hpp>

#include <initializer_list>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::cli {

/// What is wrong with a file: the first thing found stays.
using FirstError = std::optional<Error>;

/// One object of a file that people write. What is missing, of another form or not known is noted
/// with its path, and an empty value is given in its place; reading never throws.
class StrictJson
{
public:
    /// @param known the keys it may have.
    StrictJson(const nlohmann::json &object, std::string path, FirstError &error,
               std::initializer_list<std::string_view> known);

    [[nodiscard]] bool has(const char *key) const { return find(key) != nullptr; }
    /// @param absent what stands where the key is not there; nothing: it must be there.
    std::string text(const char *key, const std::optional<std::string> &absent = std::nullopt);
    /// A number beyond 32 bits comes as the nearest that has them.
    int whole(const char *key, std::optional<int> absent = std::nullopt);
    /// Pence: nothing where the key is absent or null. Beyond 53 bits: the nearest within.
    std::optional<std::int64_t> pence(const char *key);
    bool yes(const char *key);
    /// The list's values, each with its path; empty where it is absent.
    std::vector<std::pair<const nlohmann::json *, std::string>> list(const char *key);
    /// { "pegs": 6, "straws": 2 }, in no order of its own.
    std::map<std::string, int> counts(const char *key);
    /// { "loops": "rubber-bands" }
    std::map<std::string, std::string> names(const char *key);

    void refuse(const std::string &key, const std::string &reason);

private:
    [[nodiscard]] const nlohmann::json *find(const char *key) const;
    [[nodiscard]] std::string pathOf(const std::string &key) const;
    /// Its value, where it has one that @p fits; else that is noted.
    const nlohmann::json *wanted(const char *key, bool mayBeAbsent,
                                 bool (nlohmann::json::*fits)() const noexcept, const char *form);

    const nlohmann::json *m_object;
    std::string m_path;
    FirstError &m_error;
};

} // namespace lidlark::cli

#pragma once

#include "core/journal/bounded_json.h"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace lidlark::journal {

/// The fields of one event, read without ever throwing: a missing or mistyped field is absent.
class Fields
{
public:
    explicit Fields(const std::string &text) : m_json(readJson(text))
    {
        if (!m_json.is_object())
            m_json = nlohmann::json::object();
    }

    [[nodiscard]] std::optional<std::string> text(const char *key) const
    {
        const auto found = m_json.find(key);
        return found != m_json.end() && found->is_string()
                   ? std::optional(found->get<std::string>())
                   : std::nullopt;
    }

    /// A whole number within [@p least, @p most].
    [[nodiscard]] std::optional<int> whole(const char *key, int least, int most) const
    {
        const auto found = m_json.find(key);
        return found != m_json.end() ? wholeOf(*found, least, most) : std::nullopt;
    }

    [[nodiscard]] bool isTrue(const char *key) const
    {
        const auto found = m_json.find(key);
        return found != m_json.end() && found->is_boolean() && found->get<bool>();
    }

    [[nodiscard]] const nlohmann::json &json() const { return m_json; }

    static std::optional<int> wholeOf(const nlohmann::json &value, int least, int most)
    {
        if (!value.is_number_integer() ||
            (value.is_number_unsigned() && value.get<std::uint64_t>() > INT64_MAX))
            return std::nullopt;
        const auto number = value.get<std::int64_t>();
        if (number < least || number > most)
            return std::nullopt;
        return static_cast<int>(number);
    }

private:
    nlohmann::json m_json;
};

} // namespace lidlark::journal

#include "core/cli/strict_json.h"

#include <algorithm>
#include <cstdint>
#include <limits>

namespace lidlark::cli {

namespace {

using PlainJson = nlohmann::json;

/// Whole numbers as JSON's readers agree on them (RFC 8259, section 6).
constexpr std::int64_t furthest = 9'007'199'254'740'991;

std::int64_t numberOf(const PlainJson &value)
{
    if (value.is_number_unsigned() &&
        value.get<std::uint64_t>() > static_cast<std::uint64_t>(furthest))
        return furthest;
    return std::clamp(value.get<std::int64_t>(), -furthest, furthest);
}

int smallNumberOf(const PlainJson &value)
{
    using Limits = std::numeric_limits<int>;
    return static_cast<int>(
        std::clamp<std::int64_t>(numberOf(value), Limits::min(), Limits::max()));
}

const PlainJson &nothing()
{
    static const PlainJson empty = PlainJson::object();
    return empty;
}

} // namespace

StrictJson::StrictJson(const PlainJson &object, std::string path, FirstError &error,
                       std::initializer_list<std::string_view> known)
    : m_object(object.is_object() ? &object : &nothing()), m_path(std::move(path)), m_error(error)
{
    if (!object.is_object())
        m_error = m_error.value_or(Error{ErrorCode::Invalid, m_path + ": an object is wanted"});
    for (const auto &[key, value] : m_object->items()) {
        if (std::ranges::find(known, key) == known.end())
            refuse(key, "not known");
    }
}

std::string StrictJson::text(const char *key, const std::optional<std::string> &absent)
{
    const PlainJson *value =
        wanted(key, absent.has_value(), &PlainJson::is_string, "a text is wanted");
    return value ? value->get<std::string>() : absent.value_or("");
}

int StrictJson::whole(const char *key, std::optional<int> absent)
{
    const PlainJson *value =
        wanted(key, absent.has_value(), &PlainJson::is_number_integer, "a whole number is wanted");
    return value ? smallNumberOf(*value) : absent.value_or(0);
}

std::optional<std::int64_t> StrictJson::pence(const char *key)
{
    const PlainJson *there = find(key);
    if (!there || there->is_null())
        return std::nullopt;
    const PlainJson *value =
        wanted(key, true, &PlainJson::is_number_integer, "whole pence are wanted");
    return value ? std::optional(numberOf(*value)) : std::nullopt;
}

bool StrictJson::yes(const char *key)
{
    const PlainJson *value = wanted(key, true, &PlainJson::is_boolean, "true or false is wanted");
    return value && value->get<bool>();
}

std::vector<std::pair<const PlainJson *, std::string>> StrictJson::list(const char *key)
{
    std::vector<std::pair<const PlainJson *, std::string>> values;
    const PlainJson *list = wanted(key, true, &PlainJson::is_array, "a list is wanted");
    for (std::size_t i = 0; list && i < list->size(); ++i)
        values.emplace_back(&(*list)[i], pathOf(key) + "." + std::to_string(i));
    return values;
}

std::map<std::string, int> StrictJson::counts(const char *key)
{
    std::map<std::string, int> counts;
    const PlainJson *object = wanted(key, true, &PlainJson::is_object, "an object is wanted");
    if (!object)
        return counts;
    for (const auto &[name, value] : object->items()) {
        if (!value.is_number_integer())
            refuse(std::string(key) + "." + name, "a whole number is wanted");
        else
            counts[name] = smallNumberOf(value);
    }
    return counts;
}

std::map<std::string, std::string> StrictJson::names(const char *key)
{
    std::map<std::string, std::string> names;
    const PlainJson *object = wanted(key, true, &PlainJson::is_object, "an object is wanted");
    if (!object)
        return names;
    for (const auto &[name, value] : object->items()) {
        if (!value.is_string())
            refuse(std::string(key) + "." + name, "a text is wanted");
        else
            names[name] = value.get<std::string>();
    }
    return names;
}

void StrictJson::refuse(const std::string &key, const std::string &reason)
{
    if (!m_error)
        m_error = Error{ErrorCode::Invalid, pathOf(key) + ": " + reason};
}

const PlainJson *StrictJson::find(const char *key) const
{
    const auto found = m_object->find(key);
    return found == m_object->end() ? nullptr : &*found;
}

std::string StrictJson::pathOf(const std::string &key) const
{
    return m_path.empty() ? key : m_path + "." + key;
}

const PlainJson *StrictJson::wanted(const char *key, bool mayBeAbsent,
                                    bool (PlainJson::*fits)() const noexcept, const char *form)
{
    const PlainJson *value = find(key);
    if (!value && mayBeAbsent)
        return nullptr;
    if (value && (value->*fits)())
        return value;
    refuse(key, value ? form : "missing");
    return nullptr;
}

} // namespace lidlark::cli

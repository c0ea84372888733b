#pragma once

#include <nlohmann/json.hpp>

#include <string_view>

namespace lidlark::journal {

/// Lists and objects inside each other at most (FORMAT.md, 1). What we write has five; a few bytes
/// for each more, and whoever copies or writes them would run out of stack.
inline constexpr int jsonLevels = 32;

/// @p text as JSON, read without ever throwing: discarded where it is none. What lies deeper than
/// jsonLevels is left out.
inline nlohmann::json readJson(std::string_view text)
{
    const auto isShallow = [](int depth, nlohmann::json::parse_event_t /*event*/,
                              const nlohmann::json & /*value*/) { return depth < jsonLevels; };
    return nlohmann::json::parse(text, isShallow, false);
}

} // namespace lidlark::journal

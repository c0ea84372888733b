#include "core/sync/lines.h"

#include "core/base/hex.h"

#include <nlohmann/json.hpp>

namespace lidlark::sync {

namespace {

using journal::Event;
using journal::Gone;

constexpr std::size_t identityDigits = 64;

std::string lineOf(const Gone &gone)
{
    return nlohmann::json{{"counter", gone.counter}, {"gone", gone.identity}}.dump();
}

std::optional<Gone> goneFrom(const std::string &line)
{
    const auto json = nlohmann::json::parse(line, nullptr, false);
    if (!json.is_object() || !json.contains("gone") || !json["gone"].is_string() ||
        !json.contains("counter") || !json["counter"].is_number_unsigned())
        return std::nullopt;
    Gone gone{json["counter"].get<std::uint64_t>(), json["gone"].get<std::string>()};
    const bool identity = gone.identity.size() == identityDigits && bytesFromHex(gone.identity);
    return identity && gone.counter > 0 && lineOf(gone) == line ? std::optional(gone)
                                                                : std::nullopt;
}

bool take(const std::string &line, Lines &lines)
{
    if (auto gone = goneFrom(line)) {
        lines.counters.push_back(gone->counter);
        lines.gone.push_back(*std::move(gone));
        return true;
    }
    auto event = journal::eventFromText(line);
    if (!event || journal::canonicalText(*event) != line)
        return false;
    lines.counters.push_back(event->counter);
    lines.events.push_back(*std::move(event));
    return true;
}

} // namespace

std::string textOf(std::span<const Event> events, std::span<const Gone> gone)
{
    std::string text;
    while (!events.empty() || !gone.empty()) {
        const bool isGone =
            events.empty() || (!gone.empty() && gone.front().counter < events.front().counter);
        text.append(isGone ? lineOf(gone.front()) : journal::canonicalText(events.front()));
        text.push_back('\n');
        if (isGone)
            gone = gone.subspan(1);
        else
            events = events.subspan(1);
    }
    return text;
}

std::optional<Lines> linesIn(std::string_view text)
{
    Lines lines;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        if (end == std::string_view::npos || !take(std::string(text.substr(0, end)), lines))
            return std::nullopt;
        text.remove_prefix(end + 1);
    }
    return lines;
}

} // namespace lidlark::sync

#include "tests/fuzz/made_events.h"

#include <nlohmann/json.hpp>

#include <set>

namespace lidlark::fuzz {

namespace {

using journal::Event;

constexpr std::size_t mostEvents = 16;
constexpr std::size_t headSize = 5;
constexpr int devices = 4;
constexpr int counters = 32;
constexpr int days = 4;

int numberAt(std::string_view line, std::size_t at, char zero, int count)
{
    const int number = static_cast<unsigned char>(line[at]) - zero;
    return (number % count + count) % count;
}

std::optional<Event> eventOf(std::string_view line)
{
    if (line.size() <= headSize)
        return std::nullopt;
    const auto fields = canonicalFields(line.substr(headSize));
    const int kind = static_cast<unsigned char>(line[0]) - 'A';
    if (!fields || kind < 0 || kind >= static_cast<int>(journal::kindNames.names.size()))
        return std::nullopt;
    Event event;
    event.lane = {journal::LaneKind::Box, "b-fin"};
    event.device = {std::string("d-") + static_cast<char>('a' + numberAt(line, 1, 'a', devices))};
    event.author = event.device.value;
    event.counter = static_cast<std::uint64_t>(1 + numberAt(line, 2, '1', counters));
    event.instant = {1'800'000'000'000 + numberAt(line, 3, '0', 256) * msPerHour, 0};
    event.when.day = *dayFromText("2027-01-15") + numberAt(line, 4, '0', days);
    event.kind = static_cast<journal::Kind>(kind);
    event.fields = *fields;
    return event;
}

} // namespace

std::optional<std::string> canonicalFields(std::string_view text)
{
    using Json = nlohmann::json;
    const Json fields = Json::parse(text, nullptr, false);
    if (!fields.is_object())
        return std::nullopt;
    return fields.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::vector<Event> madeEvents(std::string_view lines)
{
    std::vector<Event> events;
    std::set<std::pair<DeviceId, std::uint64_t>> taken;
    while (!lines.empty() && events.size() < mostEvents) {
        const std::string_view line = lines.substr(0, lines.find('\n'));
        lines.remove_prefix(std::min(line.size() + 1, lines.size()));
        auto event = eventOf(line);
        if (event && taken.insert({event->device, event->counter}).second)
            events.push_back(*std::move(event));
    }
    return events;
}

} // namespace lidlark::fuzz

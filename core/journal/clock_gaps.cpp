#include "core/journal/clock_gaps.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace lidlark::journal {

namespace {

using Json = nlohmann::json;

/// A whole number of an object's member, or nothing.
template <class Number> std::optional<Number> numberAt(const Json &object, const std::string &key)
{
    const auto found = object.find(key);
    if (found == object.end() || !found->is_number_unsigned())
        return std::nullopt;
    return found->get<Number>();
}

} // namespace

ClockGaps::ClockGaps(std::span<const Event> events)
{
    for (const Event &event : events) {
        if (event.kind != Kind::Met)
            continue;
        const Json fields = Json::parse(event.fields, nullptr, false);
        if (!fields.is_object() || !fields.contains("ahead") || !fields["ahead"].is_object() ||
            !fields.contains("covered") || !fields["covered"].is_object())
            continue;
        for (const auto &[device, gap] : fields["ahead"].items()) {
            const auto upTo = numberAt<std::uint64_t>(fields["covered"], device);
            const auto ms = numberAt<std::int64_t>(fields["ahead"], device);
            if (upTo && ms && *ms >= 0)
                m_records[device].push_back({event.device.value, *upTo, *ms});
        }
    }
}

std::int64_t ClockGaps::aheadOf(const Event &ahead, const std::string &other) const
{
    const auto records = m_records.find(ahead.device.value);
    if (records == m_records.end())
        return 0;
    std::int64_t theirs = 0;
    std::int64_t anybodys = 0;
    std::set<std::string> recorders;
    for (const Record &record : records->second) {
        if (ahead.counter > record.upTo)
            continue;
        recorders.insert(record.by);
        anybodys = std::max(anybodys, record.ms);
        if (record.by == other)
            theirs = std::max(theirs, record.ms);
    }
    return recorders.size() > 1 ? anybodys : theirs;
}

std::int64_t ClockGaps::between(const Event &a, const Event &b) const
{
    return std::max(aheadOf(a, b.device.value), aheadOf(b, a.device.value));
}

} // namespace lidlark::journal

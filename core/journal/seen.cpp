#include "core/journal/seen.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace lidlark::journal {

std::map<std::string, std::uint64_t> coveredBy(const Event &met)
{
    std::map<std::string, std::uint64_t> covered;
    const auto fields = nlohmann::json::parse(met.fields, nullptr, false);
    if (!fields.is_object() || !fields.contains("covered") || !fields["covered"].is_object())
        return covered;
    for (const auto &[device, counter] : fields["covered"].items()) {
        if (counter.is_number_unsigned())
            covered[device] = counter.get<std::uint64_t>();
    }
    return covered;
}

std::string metFields(const std::map<std::string, std::uint64_t> &covered,
                      const std::map<std::string, std::int64_t> &ahead)
{
    nlohmann::json fields{{"covered", covered}};
    if (!ahead.empty())
        fields["ahead"] = ahead;
    return fields.dump();
}

Seen::Seen(std::span<const Event> events)
{
    std::vector<const Event *> mets;
    for (const Event &event : events) {
        if (event.kind == Kind::Met)
            mets.push_back(&event);
    }
    std::sort(mets.begin(), mets.end(), [](const Event *a, const Event *b) {
        return std::pair(a->device, a->counter) < std::pair(b->device, b->counter);
    });
    for (const Event *met : mets)
        m_mets[met->device.value].push_back({met->counter, coveredBy(*met)});

    // Closing under chains: a met also covers what the events it covers had seen. Each pass can
    // only raise counters that are bounded by what was written, so this ends.
    for (bool grew = true; grew;) {
        grew = false;
        for (auto &[device, list] : m_mets) {
            for (Met &met : list) {
                Covered more = met.covered;
                for (const auto &[other, upTo] : met.covered) {
                    const auto theirs = m_mets.find(other);
                    if (theirs == m_mets.end())
                        continue;
                    for (const Met &earlier : theirs->second) {
                        if (earlier.counter > upTo)
                            continue;
                        for (const auto &[third, counter] : earlier.covered)
                            more[third] = std::max(more[third], counter);
                    }
                }
                if (more != met.covered) {
                    met.covered = std::move(more);
                    grew = true;
                }
            }
        }
    }
}

std::uint64_t Seen::knownUpTo(const std::string &device, std::uint64_t before,
                              const std::string &of) const
{
    std::uint64_t known = 0;
    const auto list = m_mets.find(device);
    if (list == m_mets.end())
        return known;
    for (const Met &met : list->second) {
        const auto covered = met.covered.find(of);
        if (met.counter < before && covered != met.covered.end())
            known = std::max(known, covered->second);
    }
    return known;
}

bool Seen::saw(const Event &later, const Event &earlier) const
{
    if (later.device == earlier.device)
        return earlier.counter < later.counter;
    const auto says = [this](const Event &one, const Event &other) {
        return other.counter <= knownUpTo(one.device.value, one.counter, other.device.value);
    };
    // Where each says to have seen the other's (a copied phone, or a lie), neither has.
    return says(later, earlier) && !says(earlier, later);
}

} // namespace lidlark::journal

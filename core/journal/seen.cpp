#include "core/journal/seen.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <tuple>

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
        return std::tie(a->device, a->counter) < std::tie(b->device, b->counter);
    });
    for (const Event *met : mets)
        m_mets[met->device.value].push_back({met->counter, met->instant, coveredBy(*met)});
    closeUnderChains();
}

/// A met also covers what the events it covers had seen. Where clocks go as they should, causes
/// come first and one pass does it; in any case each pass can only raise counters that are bounded
/// by what was written, so this ends.
void Seen::closeUnderChains()
{
    std::vector<std::pair<Met *, const Met *>> inTime; // each with the one before on its device
    for (auto &[device, list] : m_mets) {
        for (std::size_t i = 0; i < list.size(); ++i)
            inTime.emplace_back(&list[i], i > 0 ? &list[i - 1] : nullptr);
    }
    std::stable_sort(inTime.begin(), inTime.end(), [](const auto &a, const auto &b) {
        return a.first->instant < b.first->instant;
    });
    for (bool grew = true; grew;) {
        grew = false;
        for (const auto &[met, before] : inTime) {
            if (before != nullptr)
                grew = raise(met->covered, before->covered) || grew;
            for (const auto &[other, upTo] : met->covered) {
                const Met *theirs = lastUpTo(other, upTo);
                if (theirs != nullptr && theirs != met)
                    grew = raise(met->covered, theirs->covered) || grew;
            }
        }
    }
}

bool Seen::raise(Covered &covered, const Covered &more)
{
    bool grew = false;
    for (const auto &[device, counter] : more) {
        std::uint64_t &known = covered[device]; // what is being walked through stays where it is
        grew = grew || counter > known;
        known = std::max(known, counter);
    }
    return grew;
}

const Seen::Met *Seen::lastUpTo(const std::string &device, std::uint64_t counter) const
{
    const auto list = m_mets.find(device);
    if (list == m_mets.end())
        return nullptr;
    const auto after = std::ranges::upper_bound(list->second, counter, {}, &Met::counter);
    return after == list->second.begin() ? nullptr : &*std::prev(after);
}

std::uint64_t Seen::knownUpTo(const std::string &device, std::uint64_t before,
                              const std::string &of) const
{
    const Met *last = before > 0 ? lastUpTo(device, before - 1) : nullptr;
    if (last == nullptr)
        return 0;
    const auto covered = last->covered.find(of);
    return covered != last->covered.end() ? covered->second : 0;
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

#include "core/rotation/gain_bound.h"

#include "core/rotation/best_sums.h"

#include <algorithm>

namespace lidlark::rotation {

namespace {

/// The largest gains of which at most so many come from entries with the trait.
std::optional<int> withAtMost(const PartialMenu &menu, std::span<const Scored> open,
                              const AtMost &limit)
{
    std::size_t slots = menu.slotsLeft();
    int left = limit.left;
    int sum = 0;
    for (const Scored &scored : open) {
        if (slots == 0)
            break;
        const bool has = menu.entry(scored.entry).*limit.trait;
        if (has && left == 0)
            continue;
        left -= has ? 1 : 0;
        sum += scored.gain;
        --slots;
    }
    return slots == 0 ? std::optional(sum) : std::nullopt;
}

/// The largest gains, one from each family.
std::optional<int> withFamiliesApart(const PartialMenu &menu, std::span<const Scored> open)
{
    std::vector<int> families;
    int sum = 0;
    for (const Scored &scored : open) {
        if (families.size() == menu.slotsLeft())
            break;
        const int family = menu.entry(scored.entry).family;
        if (family != noFamily && std::ranges::count(families, family) > 0)
            continue;
        families.push_back(family);
        sum += scored.gain;
    }
    return families.size() == menu.slotsLeft() ? std::optional(sum) : std::nullopt;
}

/// The largest gains of which at least one comes from an entry with the trait.
std::optional<int> withAtLeastOne(const PartialMenu &menu, std::span<const Scored> open,
                                  const AtLeastOne &need)
{
    const auto has = [&](const Scored &scored) { return menu.entry(scored.entry).*need.trait; };
    const auto first = std::ranges::find_if(open, has);
    const auto others = largestGains(open, {}, menu.slotsLeft() - 1);
    if (first == open.end() || !others)
        return std::nullopt;
    const auto position = static_cast<std::size_t>(first - open.begin());
    if (position < menu.slotsLeft())
        return largestGains(open, {}, menu.slotsLeft());
    return *others + first->gain;
}

/// The largest gains within the minutes that are left, mess counted too.
std::optional<int> withinMinutes(const PartialMenu &menu, std::span<const Scored> open)
{
    std::vector<Priced> priced;
    priced.reserve(open.size());
    for (const Scored &scored : open) {
        const Entry &entry = menu.entry(scored.entry);
        priced.push_back({scored.gain, entry.minutes, entry.isMessy});
    }
    const Room room{menu.slotsLeft(), menu.minutesLeft(), menu.atMost()[messyLimit].left};
    const auto sum = BestSums(priced, room).best(room);
    return sum ? std::optional(static_cast<int>(*sum)) : std::nullopt;
}

/// Whether the minutes can bind at all: they do not where even the longest fit in together.
bool minutesBind(const PartialMenu &menu, std::span<const Scored> open)
{
    if (menu.minutesLeft() > mostMinutesSummed)
        return false;
    int longest = 0;
    for (const Scored &scored : open)
        longest = std::max(longest, menu.entry(scored.entry).minutes);
    return static_cast<std::int64_t>(longest) * static_cast<std::int64_t>(menu.slotsLeft()) >
           menu.minutesLeft();
}

} // namespace

std::optional<int> largestGains(std::span<const Scored> one, std::span<const Scored> other,
                                std::size_t slots)
{
    if (one.size() + other.size() < slots)
        return std::nullopt;
    int sum = 0;
    for (; slots > 0; --slots) {
        const bool fromOne =
            other.empty() || (!one.empty() && one.front().gain >= other.front().gain);
        std::span<const Scored> &from = fromOne ? one : other;
        sum += from.front().gain;
        from = from.subspan(1);
    }
    return sum;
}

std::optional<int> gainBound(const PartialMenu &menu, std::span<const Scored> open, int beyond)
{
    std::optional<int> bound = largestGains(open, {}, menu.slotsLeft());
    const auto tighten = [&](std::optional<int> other) {
        bound = bound && other ? std::optional(std::min(*bound, *other)) : std::nullopt;
    };
    for (const AtMost &limit : menu.atMost())
        tighten(withAtMost(menu, open, limit));
    for (const AtLeastOne &need : menu.atLeastOne()) {
        if (need.found == 0)
            tighten(withAtLeastOne(menu, open, need));
    }
    if (menu.familiesDiffer())
        tighten(withFamiliesApart(menu, open));
    if (bound && *bound > beyond && minutesBind(menu, open))
        tighten(withinMinutes(menu, open));
    return bound;
}

} // namespace lidlark::rotation

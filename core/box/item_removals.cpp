#include "core/box/item_removals.h"

#include <algorithm>

namespace lidlark::box {

using journal::Event;
using journal::Seen;

std::vector<const Event *> takenOutOf(std::span<const Event> events)
{
    std::vector<const Event *> removals;
    for (const Event &event : events) {
        if (readTakenOut(event))
            removals.push_back(&event);
    }
    return removals;
}

int cameSince(const std::vector<Change> &changes, const Reading &reading, const Seen &seen)
{
    int pieces = 0;
    const auto &removals = reading.removalsAfter;
    for (std::size_t i = 0; i < changes.size(); ++i) {
        if (reading.basis != nullptr && !reading.after[i])
            continue;
        const Event &coming = *changes[i].first;
        const bool takenToo =
            std::any_of(removals.begin(), removals.end(), [&](const Event *removal) {
                return reading.hopeful ? seen.saw(*removal, coming) : !seen.saw(coming, *removal);
            });
        if (!takenToo)
            pieces += reading.values[i].brought();
    }
    return pieces;
}

} // namespace lidlark::box

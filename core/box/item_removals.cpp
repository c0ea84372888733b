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

int foundSince(const std::vector<const Event *> &removals, const std::vector<Change> &changes,
               const Seen &seen, bool hopeful)
{
    int pieces = 0;
    for (const Change &change : changes) {
        const Event &find = *change.first;
        const bool takenToo =
            std::any_of(removals.begin(), removals.end(), [&](const Event *removal) {
                return hopeful ? seen.saw(*removal, find) : !seen.saw(find, *removal);
            });
        if (!takenToo)
            pieces += change.found;
    }
    return pieces;
}

} // namespace lidlark::box

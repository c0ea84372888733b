#include "core/sync/close_lanes.h"

#include "core/crew/rights.h"
#include "core/store/coverage.h"

namespace lidlark::sync {

using journal::Lane;

Result<crew::Accepted> acceptedNow(Post &post, const CrewBook &book, const DeviceId &device)
{
    crew::Accepted accepted;
    for (const Lane &lane : book.lanes()) {
        const auto covered = store::coverageOf(post.database, lane);
        if (!covered)
            return covered.error();
        const auto upTo = covered->find(device.value);
        if (book.holdsAllOf(lane) && book.me() != nullptr && crew::mayRead(*book.me(), lane))
            accepted[lane] = upTo == covered->end() ? 0 : upTo->second;
    }
    return accepted;
}

Outcome closeLanes(Post &post, const CrewBook &book, store::Recording &recording)
{
    const crew::Member *me = book.me();
    for (const auto &[device, named] : book.crew().gone()) {
        const crew::Member *member = book.crew().member(device);
        if (me == nullptr || member == nullptr || !crew::mayRemove(*me, *member))
            continue;
        auto open = acceptedNow(post, book, device);
        if (!open)
            return open.error();
        std::erase_if(*open, [&](const auto &entry) {
            const Lane &lane = entry.first;
            return named.contains(lane) ||
                   !crew::mayWrite(*member, lane, journal::Kind::PlayStarted, true);
        });
        if (open->empty())
            continue;
        Outcome done =
            recording.say({journal::LaneKind::Box, book.box()}, journal::Kind::MemberRemoved,
                          crew::fieldsOf(crew::Removal{device, *std::move(open)}));
        if (!done)
            return done;
    }
    return Done{};
}

} // namespace lidlark::sync

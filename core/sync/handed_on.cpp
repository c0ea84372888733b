#include "core/sync/handed_on.h"

#include "core/store/event_repository.h"
#include "core/store/segment_repository.h"
#include "core/sync/segment.h"

#include <algorithm>
#include <map>

namespace lidlark::sync {

namespace {

using journal::Event;

/// The events of each device in a lane that are here and not erased, read once.
class HereNow
{
public:
    HereNow(Post &post, journal::Lane lane) : m_events(post.database), m_lane(std::move(lane)) {}

    Result<bool> has(const Event &event)
    {
        if (!m_runs.contains(event.device)) {
            auto run = m_events.ofDeviceAfter(m_lane, event.device, 0);
            if (!run)
                return run.error();
            m_runs.emplace(event.device, std::move(run->events));
        }
        const auto &run = m_runs[event.device];
        const auto [first, last] =
            std::ranges::equal_range(run, event.counter, {}, &Event::counter);
        const std::string text = journal::canonicalText(event);
        return std::any_of(first, last, [&text](const Event &other) {
            return journal::canonicalText(other) == text;
        });
    }

private:
    store::EventRepository m_events;
    journal::Lane m_lane;
    std::map<DeviceId, std::vector<Event>> m_runs;
};

} // namespace

Result<HandedOn> handedOnIn(Post &post, const CrewBook &book, const journal::Lane &lane)
{
    HandedOn handed;
    const crypto::PublicKey signer = memberOf(post.device, post.secret).signer;
    const auto rows =
        store::SegmentRepository(post.database).sealedOf(book.box(), lane, post.device.id);
    if (!rows)
        return rows.error();
    HereNow here(post, lane);
    for (const store::SegmentRow &row : *rows) {
        const HeldEpoch *held = book.held(row.epoch);
        if (held == nullptr || held->isCopy() || row.bytes.empty())
            continue;
        const auto opened = openSegment(row.bytes, held->epoch, post.device.id, signer);
        const auto *segment = std::get_if<Segment>(&opened);
        if (segment == nullptr || segment->header.content != handedOnEvents)
            continue;
        for (const Event &event : segment->events) {
            const auto is = here.has(event);
            if (!is)
                return is.error();
            if (*is)
                handed.still.push_back(event);
            handed.somethingWent = handed.somethingWent || !*is;
        }
    }
    return handed;
}

} // namespace lidlark::sync

#include "core/store/event_repository.h"

#include <algorithm>
#include <limits>

namespace lidlark::store {

Result<bool> EventRepository::hasGap(const journal::Lane &lane, const DeviceId &device,
                                     std::uint64_t upTo)
{
    constexpr std::uint64_t most = std::numeric_limits<std::int64_t>::max();
    Result<Statement> query =
        m_database.prepare("SELECT coalesce(max(counter), 0) > count(DISTINCT counter) FROM event "
                           "WHERE lane = ?1 AND device = ?2 AND counter <= ?3");
    if (!query)
        return query.error();
    query->bind(1, journal::toText(lane))
        .bind(2, device.value)
        .bind(3, static_cast<std::int64_t>(std::min(upTo, most)));
    if (const Result<bool> row = query->step(); !row)
        return row.error();
    return query->number(0) != 0;
}

Result<bool> EventRepository::isTakenByOther(const journal::Event &event)
{
    Result<Statement> query =
        m_database.prepare("SELECT count(*) > 0 AND sum(identity = ?4) = 0 FROM event "
                           "WHERE lane = ?1 AND device = ?2 AND counter = ?3");
    if (!query)
        return query.error();
    query->bind(1, journal::toText(event.lane))
        .bind(2, event.device.value)
        .bind(3, static_cast<std::int64_t>(event.counter))
        .bind(4, journal::identityOf(event));
    if (const Result<bool> row = query->step(); !row)
        return row.error();
    return query->number(0) != 0;
}

} // namespace lidlark::store

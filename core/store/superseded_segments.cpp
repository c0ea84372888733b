#include "core/store/segment_repository.h"

#include "core/store/rows.h"

namespace lidlark::store {

Outcome SegmentRepository::supersede(const std::string &box, const journal::Lane &lane,
                                     const DeviceId &device)
{
    Result<Statement> query = m_database.prepare(
        "UPDATE segment SET superseded = 1 WHERE box = ?1 AND lane = ?2 AND device = ?3 AND "
        "length(bytes) > 0");
    if (!query)
        return query.error();
    return query->bind(1, box).bind(2, toText(lane)).bind(3, device.value).run();
}

Outcome SegmentRepository::supersede(const Digest &epoch, const DeviceId &device)
{
    Result<Statement> query = m_database.prepare(
        "UPDATE segment SET superseded = 1 WHERE epoch = ?1 AND device = ?2 AND length(bytes) > 0");
    if (!query)
        return query.error();
    return query->bind(1, hexOf(epoch)).bind(2, device.value).run();
}

Result<std::vector<Digest>> SegmentRepository::epochsOf(const std::string &box,
                                                        const journal::Lane &lane,
                                                        const DeviceId &device)
{
    Result<Statement> query =
        m_database.prepare("SELECT DISTINCT epoch FROM segment WHERE box = ?1 AND lane = ?2 AND "
                           "device = ?3 AND superseded = 0 AND length(bytes) > 0 ORDER BY epoch");
    if (!query)
        return query.error();
    query->bind(1, box).bind(2, toText(lane)).bind(3, device.value);
    return collectRows<Digest>(*query, [](const Statement &row) {
        return arrayFromHex<32>(row.text(0)).value_or(Digest{});
    });
}

Result<std::vector<SegmentRow>> SegmentRepository::toTakeOff(const std::string &box,
                                                             const DeviceId &device)
{
    Result<Statement> query =
        m_database.prepare(std::string(columns) + "x'' FROM segment WHERE box = ?1 AND device = ?2 "
                                                  "AND superseded = 1 ORDER BY epoch, sequence");
    if (!query)
        return query.error();
    query->bind(1, box).bind(2, device.value);
    return collectRows<SegmentRow>(*query, readRow);
}

Result<std::vector<SegmentRow>> SegmentRepository::onStorage(const Digest &epoch,
                                                             const DeviceId &device)
{
    Result<Statement> query = m_database.prepare(
        std::string(columns) + "x'' FROM segment WHERE epoch = ?1 AND device = ?2 AND "
                               "shared_ms IS NOT NULL AND superseded = 0 AND length(bytes) > 0 "
                               "ORDER BY sequence");
    if (!query)
        return query.error();
    query->bind(1, hexOf(epoch)).bind(2, device.value);
    return collectRows<SegmentRow>(*query, readRow);
}

Outcome SegmentRepository::takenOff(const SegmentRow &row)
{
    return change(row, "bytes = x'', superseded = ?1", 0);
}

Outcome SegmentRepository::forgetBytes(const std::string &box, const journal::Lane &lane,
                                       const DeviceId &but)
{
    Result<Statement> query = m_database.prepare(
        "UPDATE segment SET bytes = x'' WHERE box = ?1 AND lane = ?2 AND device <> ?3");
    if (!query)
        return query.error();
    return query->bind(1, box).bind(2, toText(lane)).bind(3, but.value).run();
}

} // namespace lidlark::store

#include "core/store/segment_repository.h"

#include "core/store/rows.h"

namespace lidlark::store {

SegmentRow SegmentRepository::readRow(const Statement &row)
{
    SegmentRow segment;
    segment.epoch = arrayFromHex<32>(row.text(0)).value_or(Digest{});
    segment.device = {row.text(1)};
    segment.sequence = static_cast<std::uint64_t>(row.number(2));
    segment.box = row.text(3);
    segment.lane = journal::laneFromText(row.text(4)).value_or(journal::Lane{});
    segment.hash = arrayFromHex<32>(row.text(5)).value_or(Digest{});
    segment.lastCounter = static_cast<std::uint64_t>(row.number(6));
    if (!row.isNull(7))
        segment.sharedMs = row.number(7);
    segment.bytes = row.bytes(8);
    return segment;
}

Outcome SegmentRepository::keep(const SegmentRow &row)
{
    Result<Statement> query = m_database.prepare(
        "INSERT INTO segment (epoch, device, sequence, box, lane, hash, last_counter, shared_ms, "
        "bytes) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)");
    if (!query)
        return query.error();
    return query->bind(1, hexOf(row.epoch))
        .bind(2, row.device.value)
        .bind(3, static_cast<std::int64_t>(row.sequence))
        .bind(4, row.box)
        .bind(5, toText(row.lane))
        .bind(6, hexOf(row.hash))
        .bind(7, static_cast<std::int64_t>(row.lastCounter))
        .bind(8, row.sharedMs)
        .bindBytes(9, row.bytes)
        .run();
}

Result<std::vector<SegmentRow>> SegmentRepository::chainOf(const Digest &epoch,
                                                           const DeviceId &device)
{
    Result<Statement> query =
        m_database.prepare(std::string(columns) +
                           "x'' FROM segment WHERE epoch = ?1 AND device = ?2 ORDER BY sequence");
    if (!query)
        return query.error();
    query->bind(1, hexOf(epoch)).bind(2, device.value);
    return collectRows<SegmentRow>(*query, readRow);
}

Result<std::vector<SegmentRow>> SegmentRepository::waiting(const std::string &box,
                                                           const DeviceId &device)
{
    Result<Statement> query = m_database.prepare(
        std::string(columns) +
        "bytes FROM segment WHERE box = ?1 AND device = ?2 AND shared_ms IS NULL "
        "ORDER BY lane, last_counter, epoch, sequence");
    if (!query)
        return query.error();
    query->bind(1, box).bind(2, device.value);
    return collectRows<SegmentRow>(*query, readRow);
}

Result<std::vector<SegmentRow>> SegmentRepository::carried(const std::string &box,
                                                           const DeviceId &but)
{
    Result<Statement> query = m_database.prepare(
        std::string(columns) +
        "bytes FROM segment WHERE box = ?1 AND device <> ?2 AND shared_ms IS NULL AND "
        "length(bytes) > 0 ORDER BY lane, device, last_counter, epoch, sequence");
    if (!query)
        return query.error();
    query->bind(1, box).bind(2, but.value);
    return collectRows<SegmentRow>(*query, readRow);
}

Result<std::vector<SegmentRow>> SegmentRepository::sealedOf(const std::string &box,
                                                            const journal::Lane &lane,
                                                            const DeviceId &device)
{
    Result<Statement> query = m_database.prepare(
        std::string(columns) +
        "bytes FROM segment WHERE box = ?1 AND lane = ?2 AND device = ?3 AND superseded = 0 "
        "ORDER BY last_counter, epoch, sequence");
    if (!query)
        return query.error();
    query->bind(1, box).bind(2, toText(lane)).bind(3, device.value);
    return collectRows<SegmentRow>(*query, readRow);
}

Result<std::vector<SegmentRow>> SegmentRepository::all(const std::string &box)
{
    Result<Statement> query = m_database.prepare(
        std::string(columns) + "bytes FROM segment WHERE box = ?1 AND length(bytes) > 0 "
                               "ORDER BY epoch, device, sequence");
    if (!query)
        return query.error();
    query->bind(1, box);
    return collectRows<SegmentRow>(*query, readRow);
}

Outcome SegmentRepository::forgetWaiting(const DeviceId &device)
{
    Result<Statement> query =
        m_database.prepare("DELETE FROM segment WHERE device = ?1 AND shared_ms IS NULL");
    if (!query)
        return query.error();
    return query->bind(1, device.value).run();
}

Outcome SegmentRepository::change(const SegmentRow &row, std::string_view set,
                                  std::optional<std::int64_t> value)
{
    Result<Statement> query =
        m_database.prepare("UPDATE segment SET " + std::string(set) +
                           " WHERE epoch = ?2 AND device = ?3 AND sequence = ?4");
    if (!query)
        return query.error();
    return query->bind(1, value)
        .bind(2, hexOf(row.epoch))
        .bind(3, row.device.value)
        .bind(4, static_cast<std::int64_t>(row.sequence))
        .run();
}

Outcome SegmentRepository::markShared(const SegmentRow &row, std::int64_t ms)
{
    return change(row, "shared_ms = ?1", ms);
}

Outcome SegmentRepository::markWaiting(const SegmentRow &row)
{
    return change(row, "shared_ms = ?1", std::nullopt);
}

Result<std::uint64_t> SegmentRepository::highest(const std::string &box, const journal::Lane &lane,
                                                 const DeviceId &device, std::string_view among)
{
    Result<Statement> query =
        m_database.prepare("SELECT coalesce(max(last_counter), 0) FROM segment "
                           "WHERE box = ?1 AND lane = ?2 AND device = ?3" +
                           std::string(among));
    if (!query)
        return query.error();
    query->bind(1, box).bind(2, toText(lane)).bind(3, device.value);
    if (const Result<bool> row = query->step(); !row)
        return row.error();
    return static_cast<std::uint64_t>(query->number(0));
}

Result<std::uint64_t> SegmentRepository::lastCounter(const std::string &box,
                                                     const journal::Lane &lane,
                                                     const DeviceId &device)
{
    return highest(box, lane, device, "");
}

Result<std::uint64_t> SegmentRepository::lastSharedCounter(const std::string &box,
                                                           const journal::Lane &lane,
                                                           const DeviceId &device)
{
    return highest(box, lane, device, " AND shared_ms IS NOT NULL");
}

Outcome SegmentRepository::keepKey(const HandedKey &key)
{
    Result<Statement> query =
        m_database.prepare("INSERT OR REPLACE INTO handed_key (epoch, box, lane, writer, letter) "
                           "VALUES (?1, ?2, ?3, ?4, ?5)");
    if (!query)
        return query.error();
    return query->bind(1, hexOf(key.epoch))
        .bind(2, key.box)
        .bind(3, toText(key.lane))
        .bind(4, key.writer.value)
        .bindBytes(5, key.letter)
        .run();
}

Result<std::vector<HandedKey>> SegmentRepository::handedKeys()
{
    Result<Statement> query = m_database.prepare(
        "SELECT epoch, box, lane, writer, letter FROM handed_key ORDER BY epoch");
    if (!query)
        return query.error();
    return collectRows<HandedKey>(*query, [](const Statement &row) {
        return HandedKey{arrayFromHex<32>(row.text(0)).value_or(Digest{}),
                         row.text(1),
                         journal::laneFromText(row.text(2)).value_or(journal::Lane{}),
                         {row.text(3)},
                         row.bytes(4)};
    });
}

} // namespace lidlark::store

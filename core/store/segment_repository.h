#pragma once

#include "core/base/digest.h"
#include "core/base/id.h"
#include "core/journal/lane.h"
#include "core/store/database.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::store {

/// A sealed segment as this phone keeps it: taken in, or written here.
struct SegmentRow {
    Digest epoch{};
    DeviceId device;
    std::uint64_t sequence = 0;
    std::string box; ///< Whose crew.
    journal::Lane lane;
    Digest hash{};
    std::uint64_t lastCounter = 0;        ///< Of its events.
    std::optional<std::int64_t> sharedMs; ///< When it was seen on a storage; absent: not yet.
    std::string bytes;
};

/// A key that was handed over when this phone was let in, still closed.
struct HandedKey {
    Digest epoch{};
    std::string box;
    journal::Lane lane;
    DeviceId writer; ///< Empty: all who hold it write.
    std::string letter;
};

/// What lies between this phone and a storage: segments on their way out, those that came in, and
/// the keys that were handed over.
class SegmentRepository
{
public:
    explicit SegmentRepository(Database &database) : m_database(database) {}

    Outcome keep(const SegmentRow &row);
    /// In order of their numbers; without the bytes.
    Result<std::vector<SegmentRow>> chainOf(const Digest &epoch, const DeviceId &device);
    /// Of this device, still to be brought to the storage of a crew, in the order in which they
    /// were sealed: the box's lane first, where who is in it and the keys are.
    Result<std::vector<SegmentRow>> waiting(const std::string &box, const DeviceId &device);
    /// Of others, that came from hand to hand and may not lie on the storage yet: likewise.
    Result<std::vector<SegmentRow>> carried(const std::string &box, const DeviceId &but);
    /// What @p device has sealed of a lane and not superseded, in order of their counters.
    Result<std::vector<SegmentRow>> sealedOf(const std::string &box, const journal::Lane &lane,
                                             const DeviceId &device);
    /// All of a crew that are here whole, with their bytes.
    Result<std::vector<SegmentRow>> all(const std::string &box);
    /// They are to be brought once more: the storage has lost them.
    Outcome markWaiting(const SegmentRow &row);
    /// All that @p device has sealed of a lane so far is told again, or told to nobody any more.
    Outcome supersede(const std::string &box, const journal::Lane &lane, const DeviceId &device);
    Outcome supersede(const Digest &epoch, const DeviceId &device);
    /// Those under which @p device has sealed what is not told again yet.
    Result<std::vector<Digest>> epochsOf(const std::string &box, const journal::Lane &lane,
                                         const DeviceId &device);
    /// Of this device, to be taken off the storage; without the bytes.
    Result<std::vector<SegmentRow>> toTakeOff(const std::string &box, const DeviceId &device);
    /// It is off: what was in it is nowhere any more.
    Outcome takenOff(const SegmentRow &row);
    /// The bytes of what others have sealed of a lane go: something in it was erased.
    Outcome forgetBytes(const std::string &box, const journal::Lane &lane, const DeviceId &but);
    /// Those of @p device that wait go: they are sealed anew, or handed on by another.
    Outcome forgetWaiting(const DeviceId &device);
    /// Of @p device, brought and still to be found on the storage; without the bytes.
    Result<std::vector<SegmentRow>> onStorage(const Digest &epoch, const DeviceId &device);
    Outcome markShared(const SegmentRow &row, std::int64_t ms);
    /// Highest counter of a device's events that lies in a segment of a crew; 0: none.
    Result<std::uint64_t> lastCounter(const std::string &box, const journal::Lane &lane,
                                      const DeviceId &device);
    /// The same, of what was seen on a storage.
    Result<std::uint64_t> lastSharedCounter(const std::string &box, const journal::Lane &lane,
                                            const DeviceId &device);

    Outcome keepKey(const HandedKey &key);
    Result<std::vector<HandedKey>> handedKeys();

private:
    static constexpr std::string_view columns =
        "SELECT epoch, device, sequence, box, lane, hash, last_counter, shared_ms, ";
    static SegmentRow readRow(const Statement &row);
    /// @param set what of the row, to ?1.
    Outcome change(const SegmentRow &row, std::string_view set, std::optional<std::int64_t> value);
    Result<std::uint64_t> highest(const std::string &box, const journal::Lane &lane,
                                  const DeviceId &device, std::string_view among);

    Database &m_database;
};

} // namespace lidlark::store

#pragma once

#include "core/base/digest.h"
#include "core/base/id.h"
#include "core/crypto/bytes.h"
#include "core/journal/lane.h"
#include "core/sync/segment_header.h"

#include <cstdint>
#include <string>

namespace lidlark::sync {

/// One lane of one crew under one key: whoever holds the key reads what was sealed in it, and can
/// work out the names of its files (events.md 10).
struct Epoch {
    std::string crew; ///< The id of the crew.
    journal::Lane lane;
    Digest id{}; ///< The hash of the event that opened it.
    crypto::EpochKey key;
};

Tag crewTag(const Epoch &epoch);
Tag laneTag(const Epoch &epoch);
Tag deviceTag(const Epoch &epoch, const DeviceId &device);
crypto::SealKey sealKeyOf(const Epoch &epoch);

/// The folder of a device within the crew's: 64 hexadecimal digits.
std::string folderName(const Epoch &epoch, const DeviceId &device);
/// The file of a segment in it, likewise: a member works out the next name and asks for it alone
/// (platform.md: polling is one GET per device).
std::string segmentName(const Epoch &epoch, const DeviceId &device, std::uint64_t sequence);

} // namespace lidlark::sync

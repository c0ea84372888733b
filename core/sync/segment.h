#pragma once

#include "core/journal/erasure.h"
#include "core/journal/event.h"
#include "core/sync/epoch.h"

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace lidlark::sync {

/// Bytes of a segment at most: servers refuse larger bodies (platform.md, WebDAV).
inline constexpr std::size_t largestSegment = 1'000'000;
/// Bytes of its events before they are compressed, at most.
inline constexpr std::size_t largestText = 8'000'000;

/// Where a new segment goes in its device's chain.
struct Link {
    std::uint64_t sequence = 1;
    Digest previous{}; ///< Zeros before the first.
};

/// What is wrong with bytes that were to be a segment. Nothing of any of them is applied.
enum class SegmentFault {
    Foreign,        ///< Not a segment of Lidlark, or torn at its beginning.
    Newer,          ///< Written by a later Lidlark.
    TooLarge,       ///< More than a segment may have.
    AnotherCrew,    ///< Of another crew.
    AnotherLane,    ///< Of another lane.
    AnotherEpoch,   ///< Of another epoch.
    AnotherDevice,  ///< Of another device.
    NotSigned,      ///< The signature is not the device's: torn, changed or forged.
    NotSealed,      ///< It cannot be opened with this epoch's key.
    NotCompressed,  ///< What was sealed is not compressed events.
    NotEvents,      ///< A line in it is no event in canonical form.
    OthersEvents,   ///< An event in it is of another device or lane.
    CountersAstray, ///< Its events are not those its header counts.
};

/// A segment that was opened: everything about it holds, but where it stands in the chain.
struct Segment {
    SegmentHeader header;
    Digest hash{}; ///< Of all its bytes: what the next one names as its previous.
    std::vector<journal::Event> events;
    std::vector<journal::Gone> gone; ///< Of its device: what was erased since it was written.
};

/// What one device has written, part by part, in the order of its counters and without a gap.
struct Run {
    DeviceId device;
    std::span<const journal::Event> events;
    std::span<const journal::Gone> gone;
    bool again = false; ///< It was shared before: told anew without what was erased since.
};

/// @p events sealed for @p epoch and signed: the bytes that go to a storage. All are of one device
/// and lane, their counters rising by one.
/// @param nonce chance, never used before: keep the bytes, do not seal the same again.
/// @returns nothing when there are none, or they are too many for one segment.
std::optional<std::string> sealSegment(const Epoch &epoch, const Link &link,
                                       std::span<const journal::Event> events,
                                       const crypto::SigningSeed &seed, const crypto::Nonce &nonce);

std::optional<std::string> sealSegment(const Epoch &epoch, const Link &link, const Run &run,
                                       const crypto::SigningSeed &seed, const crypto::Nonce &nonce);

/// The same for events of anybody in the lane, handed on as they are.
/// @param nextCounter of @p device's own events in segments to come.
std::optional<std::string> sealHandedOn(const Epoch &epoch, const Link &link,
                                        const DeviceId &device, std::uint64_t nextCounter,
                                        std::span<const journal::Event> events,
                                        const crypto::SigningSeed &seed,
                                        const crypto::Nonce &nonce);

/// What @p bytes hold, if they are a segment of @p device in @p epoch, wholly as it was written.
/// @param signer the key the crew knows the device by.
std::variant<Segment, SegmentFault> openSegment(std::string_view bytes, const Epoch &epoch,
                                                const DeviceId &device,
                                                const crypto::PublicKey &signer);

} // namespace lidlark::sync

#pragma once

#include "core/base/digest.h"
#include "core/crypto/bytes.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace lidlark::sync {

/// A name that only members can read: the first half of a keyed hash.
using Tag = std::array<std::uint8_t, 16>;

/// What a segment holds: events of the device that seals it, one run of counters ...
inline constexpr std::uint8_t ownEvents = 1;
/// ... or events of anybody in the lane, handed on as they are: a box as it stands for a guest,
/// what was written before there was a crew, what a copied phone had not shared.
inline constexpr std::uint8_t handedOnEvents = 2;
/// ... or own events once more, from the first on: what was erased since is an empty place, and the
/// segments before may be gone.
inline constexpr std::uint8_t toldAgain = 3;

/// What stands before the sealed events of a segment, in the open. Signed and authenticated with
/// them; it tells a storage no more than that some device went on writing (FORMAT.md, 3).
struct SegmentHeader {
    Tag crew{};
    Tag lane{};
    Digest epoch{}; ///< The hash of the event that opened it.
    Tag device{};
    std::uint64_t sequence = 0; ///< From 1, rising by one per lane, device and epoch.
    /// Of the first event in it; the others follow without a gap. Where they are handed on: of the
    /// next own one.
    std::uint64_t firstCounter = 0;
    Digest previous{}; ///< The hash of the segment before; zeros before the first.
    std::uint32_t events = 0;
    std::uint32_t textSize = 0; ///< Bytes of the events before they were compressed.
    crypto::Nonce nonce{};
    std::uint8_t content = ownEvents;

    bool operator==(const SegmentHeader &) const = default;
};

/// Bytes of a header, magic and format number among them.
inline constexpr std::size_t headerSize = 169;
/// Of this format.
inline constexpr std::uint8_t formatNumber = 1;

/// Numbers big-endian, in the order of the fields.
std::string toBytes(const SegmentHeader &header);

/// How far the beginning of a file can be read.
enum class Beginning {
    Readable,
    Foreign, ///< Not a segment of Lidlark, or its first bytes are torn.
    Newer    ///< Written by a later Lidlark.
};

Beginning beginningOf(std::string_view bytes);
/// @returns nothing unless the beginning is readable.
std::optional<SegmentHeader> headerOf(std::string_view bytes);

} // namespace lidlark::sync

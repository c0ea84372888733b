#pragma once

#include "core/crypto/signature.h"
#include "core/sync/segment.h"

namespace samples {

using namespace lidlark;

inline const journal::Lane boxLane{journal::LaneKind::Box, "b-fin"};
inline const DeviceId gransTablet{"d-gran"};

/// The same byte all along: enough to tell keys apart.
inline std::array<std::uint8_t, 32> filled(std::uint8_t byte)
{
    std::array<std::uint8_t, 32> bytes{};
    bytes.fill(byte);
    return bytes;
}

inline sync::Epoch epoch()
{
    return {"c-fin", boxLane, filled(0x0E), crypto::EpochKey(filled(0x11))};
}

inline crypto::SigningSeed gransSeed()
{
    return crypto::SigningSeed(filled(0x22));
}

inline crypto::Nonce nonce(std::uint8_t byte = 0x33)
{
    crypto::Nonce bytes{};
    bytes.fill(byte);
    return bytes;
}

/// Gran notes that a peg is lost.
inline journal::Event event(std::uint64_t counter)
{
    journal::Event event;
    event.lane = boxLane;
    event.device = gransTablet;
    event.counter = counter;
    event.instant = {1'800'000'000'000 + static_cast<std::int64_t>(counter), 0};
    event.when = {*dayFromText("2027-01-15"), PartOfDay::Evening};
    event.author = "Gran";
    event.kind = journal::Kind::Exception;
    event.fields = R"({"exception":"lost","item":"pegs","pieces":1})";
    return event;
}

inline std::vector<journal::Event> events(std::uint64_t first, std::uint64_t last)
{
    std::vector<journal::Event> run;
    for (std::uint64_t counter = first; counter <= last; ++counter)
        run.push_back(event(counter));
    return run;
}

/// As Gran's tablet writes it.
inline std::string sealed(const sync::Link &link, std::uint64_t first, std::uint64_t last)
{
    return *sync::sealSegment(epoch(), link, events(first, last), gransSeed(), nonce());
}

inline sync::Segment opened(const std::string &bytes)
{
    return std::get<sync::Segment>(
        sync::openSegment(bytes, epoch(), gransTablet, crypto::publicKeyOf(gransSeed())));
}

} // namespace samples

#include "core/sync/segment.h"

#include "core/crypto/seal.h"
#include "core/crypto/signature.h"
#include "core/sync/squeeze.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

using journal::Event;

/// No signature of another use of the same key is one of a segment.
constexpr std::string_view signedUse = "lidlark segment 1\n";
constexpr std::size_t signatureSize = std::tuple_size_v<crypto::Signature>;
constexpr std::size_t smallest = headerSize + crypto::sealGrowth + signatureSize;

bool isOneRun(std::span<const Event> events)
{
    const Event &first = events.front();
    for (std::size_t i = 0; i < events.size(); ++i) {
        if (events[i].device != first.device || events[i].lane != first.lane ||
            events[i].counter != first.counter + i)
            return false;
    }
    return true;
}

std::string linesOf(std::span<const Event> events)
{
    std::string text;
    for (const Event &event : events)
        text.append(journal::canonicalText(event)).push_back('\n');
    return text;
}

std::string signedText(std::string_view headerAndSeal)
{
    return std::string(signedUse).append(headerAndSeal);
}

std::optional<SegmentFault> strangerIn(const SegmentHeader &header, const Epoch &epoch,
                                       const DeviceId &device)
{
    if (header.epoch != epoch.id)
        return SegmentFault::AnotherEpoch;
    if (header.crew != crewTag(epoch))
        return SegmentFault::AnotherCrew;
    if (header.lane != laneTag(epoch))
        return SegmentFault::AnotherLane;
    if (header.device != deviceTag(epoch, device))
        return SegmentFault::AnotherDevice;
    return std::nullopt;
}

/// Each line an event in just the form it was hashed in: another spelling would be another event.
std::variant<std::vector<Event>, SegmentFault> eventsIn(std::string_view text)
{
    std::vector<Event> events;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        if (end == std::string_view::npos)
            return SegmentFault::NotEvents;
        const std::string line(text.substr(0, end));
        auto event = journal::eventFromText(line);
        if (!event || journal::canonicalText(*event) != line)
            return SegmentFault::NotEvents;
        events.push_back(std::move(*event));
        text.remove_prefix(end + 1);
    }
    return events;
}

bool isInLane(const std::vector<Event> &events, const Epoch &epoch)
{
    return std::ranges::all_of(events,
                               [&epoch](const Event &event) { return event.lane == epoch.lane; });
}

std::optional<SegmentFault> astray(const std::vector<Event> &events, const SegmentHeader &header,
                                   const Epoch &epoch, const DeviceId &device)
{
    const bool own = header.content == ownEvents;
    const bool mine = !own || std::ranges::all_of(events, [&device](const Event &event) {
        return event.device == device;
    });
    if (!mine || !isInLane(events, epoch))
        return SegmentFault::OthersEvents;
    const bool counted = !events.empty() && events.size() == header.events;
    const bool inOrder = !own || (counted && events.front().counter == header.firstCounter &&
                                  isOneRun(events));
    return counted && inOrder ? std::nullopt : std::optional(SegmentFault::CountersAstray);
}

std::optional<SegmentFault> unfit(std::string_view bytes)
{
    const Beginning beginning = beginningOf(bytes);
    if (beginning == Beginning::Newer)
        return SegmentFault::Newer;
    if (beginning == Beginning::Foreign || bytes.size() < smallest)
        return SegmentFault::Foreign;
    const std::uint8_t content = headerOf(bytes)->content;
    if (content != ownEvents && content != handedOnEvents)
        return SegmentFault::Foreign;
    if (bytes.size() > largestSegment || headerOf(bytes)->textSize > largestText)
        return SegmentFault::TooLarge;
    return std::nullopt;
}

bool isSigned(std::string_view bytes, const crypto::PublicKey &signer)
{
    crypto::Signature signature{};
    std::copy_n(bytes.end() - signatureSize, signatureSize, signature.begin());
    return crypto::isSignedBy(signer, signedText(bytes.substr(0, bytes.size() - signatureSize)),
                              signature);
}

/// The events of a segment whose signature holds.
std::variant<std::vector<Event>, SegmentFault>
unsealed(std::string_view bytes, const SegmentHeader &header, const Epoch &epoch)
{
    const auto bytesOpened =
        crypto::opened(bytes.substr(headerSize, bytes.size() - headerSize - signatureSize),
                       bytes.substr(0, headerSize), sealKeyOf(epoch), header.nonce);
    if (!bytesOpened)
        return SegmentFault::NotSealed;
    const auto text = unsqueezed(*bytesOpened, header.textSize);
    if (!text)
        return SegmentFault::NotCompressed;
    return eventsIn(*text);
}

/// Whose a segment is, and what.
struct Writing {
    DeviceId device;
    std::uint64_t firstCounter;
    std::uint8_t content;
};

std::optional<std::string> sealed(const Epoch &epoch, const Writing &writing, const Link &link,
                                  std::span<const Event> events, const crypto::SigningSeed &seed,
                                  const crypto::Nonce &nonce)
{
    const std::string text = linesOf(events);
    if (text.size() > largestText)
        return std::nullopt;
    const SegmentHeader header{crewTag(epoch),
                               laneTag(epoch),
                               epoch.id,
                               deviceTag(epoch, writing.device),
                               link.sequence,
                               writing.firstCounter,
                               link.previous,
                               static_cast<std::uint32_t>(events.size()),
                               static_cast<std::uint32_t>(text.size()),
                               nonce,
                               writing.content};
    std::string bytes = toBytes(header);
    bytes += crypto::sealed(squeezed(text), bytes, sealKeyOf(epoch), nonce);
    bytes += crypto::textOf(crypto::signatureOf(signedText(bytes), seed));
    return bytes.size() <= largestSegment ? std::optional(std::move(bytes)) : std::nullopt;
}

} // namespace

std::optional<std::string> sealSegment(const Epoch &epoch, const Link &link,
                                       std::span<const Event> events,
                                       const crypto::SigningSeed &seed, const crypto::Nonce &nonce)
{
    if (events.empty() || !isOneRun(events) || events.front().lane != epoch.lane)
        return std::nullopt;
    const Event &first = events.front();
    return sealed(epoch, {first.device, first.counter, ownEvents}, link, events, seed, nonce);
}

std::optional<std::string> sealHandedOn(const Epoch &epoch, const Link &link,
                                        const DeviceId &device, std::uint64_t nextCounter,
                                        std::span<const Event> events,
                                        const crypto::SigningSeed &seed, const crypto::Nonce &nonce)
{
    const bool inLane = std::ranges::all_of(
        events, [&epoch](const Event &event) { return event.lane == epoch.lane; });
    if (events.empty() || !inLane || nextCounter == 0)
        return std::nullopt;
    return sealed(epoch, {device, nextCounter, handedOnEvents}, link, events, seed, nonce);
}

std::variant<Segment, SegmentFault> openSegment(std::string_view bytes, const Epoch &epoch,
                                                const DeviceId &device,
                                                const crypto::PublicKey &signer)
{
    if (const auto fault = unfit(bytes))
        return *fault;
    const SegmentHeader header = *headerOf(bytes);
    if (const auto fault = strangerIn(header, epoch, device))
        return *fault;
    if (!isSigned(bytes, signer))
        return SegmentFault::NotSigned;
    auto events = unsealed(bytes, header, epoch);
    if (const auto *fault = std::get_if<SegmentFault>(&events))
        return *fault;
    auto &read = std::get<std::vector<Event>>(events);
    if (const auto fault = astray(read, header, epoch, device))
        return *fault;
    return Segment{header, blake2b(bytes), std::move(read)};
}

} // namespace lidlark::sync

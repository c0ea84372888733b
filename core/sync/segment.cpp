#include "core/sync/segment.h"

#include "core/crypto/seal.h"
#include "core/crypto/signature.h"
#include "core/sync/lines.h"
#include "core/sync/squeeze.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

using journal::Event;

/// No signature of another use of the same key is one of a segment.
constexpr std::string_view signedUse = "lidlark segment 1\n";
constexpr std::size_t signatureSize = std::tuple_size_v<crypto::Signature>;
constexpr std::size_t smallest = headerSize + crypto::sealGrowth + signatureSize;

/// Rising by one.
bool isOneRun(std::span<const std::uint64_t> counters)
{
    for (std::size_t i = 0; i < counters.size(); ++i) {
        if (counters[i] != counters.front() + i)
            return false;
    }
    return true;
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

bool isInLane(std::span<const Event> events, const Epoch &epoch)
{
    return std::ranges::all_of(events,
                               [&epoch](const Event &event) { return event.lane == epoch.lane; });
}

std::optional<SegmentFault> astray(const Lines &lines, const SegmentHeader &header,
                                   const Epoch &epoch, const DeviceId &device)
{
    const bool handedOn = header.content == handedOnEvents;
    const bool mine = handedOn || std::ranges::all_of(lines.events, [&device](const Event &event) {
                          return event.device == device;
                      });
    if (!mine || !isInLane(lines.events, epoch))
        return SegmentFault::OthersEvents;
    const bool counted = !lines.counters.empty() && lines.counters.size() == header.events;
    const bool inOrder = handedOn ? lines.gone.empty()
                                  : counted && lines.counters.front() == header.firstCounter &&
                                        isOneRun(lines.counters);
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
    if (content < ownEvents || content > toldAgain)
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

/// The lines of a segment whose signature holds.
std::variant<Lines, SegmentFault> unsealed(std::string_view bytes, const SegmentHeader &header,
                                           const Epoch &epoch)
{
    const auto bytesOpened =
        crypto::opened(bytes.substr(headerSize, bytes.size() - headerSize - signatureSize),
                       bytes.substr(0, headerSize), sealKeyOf(epoch), header.nonce);
    if (!bytesOpened)
        return SegmentFault::NotSealed;
    const auto text = unsqueezed(*bytesOpened, header.textSize);
    if (!text)
        return SegmentFault::NotCompressed;
    auto lines = linesIn(*text);
    if (!lines)
        return SegmentFault::NotEvents;
    return *std::move(lines);
}

/// Whose a segment is, and what.
struct Writing {
    DeviceId device;
    std::uint64_t firstCounter;
    std::size_t lines;
    std::uint8_t content;
};

std::optional<std::string> sealed(const Epoch &epoch, const Writing &writing, const Link &link,
                                  const std::string &text, const crypto::SigningSeed &seed,
                                  const crypto::Nonce &nonce)
{
    if (text.size() > largestText)
        return std::nullopt;
    const SegmentHeader header{crewTag(epoch),
                               laneTag(epoch),
                               epoch.id,
                               deviceTag(epoch, writing.device),
                               link.sequence,
                               writing.firstCounter,
                               link.previous,
                               static_cast<std::uint32_t>(writing.lines),
                               static_cast<std::uint32_t>(text.size()),
                               nonce,
                               writing.content};
    std::string bytes = toBytes(header);
    bytes += crypto::sealed(squeezed(text), bytes, sealKeyOf(epoch), nonce);
    bytes += crypto::textOf(crypto::signatureOf(signedText(bytes), seed));
    return bytes.size() <= largestSegment ? std::optional(std::move(bytes)) : std::nullopt;
}

} // namespace

std::optional<std::string> sealSegment(const Epoch &epoch, const Link &link, const Run &run,
                                       const crypto::SigningSeed &seed, const crypto::Nonce &nonce)
{
    std::vector<std::uint64_t> counters;
    for (const Event &event : run.events)
        counters.push_back(event.counter);
    for (const journal::Gone &gone : run.gone)
        counters.push_back(gone.counter);
    std::ranges::sort(counters);
    const bool mine = std::ranges::all_of(
        run.events, [&run](const Event &event) { return event.device == run.device; });
    if (counters.empty() || !isOneRun(counters) || !mine || !isInLane(run.events, epoch))
        return std::nullopt;
    const Writing writing{run.device, counters.front(), counters.size(),
                          run.again ? toldAgain : ownEvents};
    return sealed(epoch, writing, link, textOf(run.events, run.gone), seed, nonce);
}

std::optional<std::string> sealSegment(const Epoch &epoch, const Link &link,
                                       std::span<const Event> events,
                                       const crypto::SigningSeed &seed, const crypto::Nonce &nonce)
{
    if (events.empty())
        return std::nullopt;
    return sealSegment(epoch, link, Run{events.front().device, events, {}, false}, seed, nonce);
}

std::optional<std::string> sealHandedOn(const Epoch &epoch, const Link &link,
                                        const DeviceId &device, std::uint64_t nextCounter,
                                        std::span<const Event> events,
                                        const crypto::SigningSeed &seed, const crypto::Nonce &nonce)
{
    if (events.empty() || !isInLane(events, epoch) || nextCounter == 0)
        return std::nullopt;
    std::string text;
    for (const Event &event : events)
        text.append(journal::canonicalText(event)).push_back('\n');
    return sealed(epoch, {device, nextCounter, events.size(), handedOnEvents}, link, text, seed,
                  nonce);
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
    auto text = unsealed(bytes, header, epoch);
    if (const auto *fault = std::get_if<SegmentFault>(&text))
        return *fault;
    auto &lines = std::get<Lines>(text);
    if (const auto fault = astray(lines, header, epoch, device))
        return *fault;
    return Segment{header, blake2b(bytes), std::move(lines.events), std::move(lines.gone)};
}

} // namespace lidlark::sync

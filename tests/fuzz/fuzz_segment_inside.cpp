#include "tests/core/sync/segment_samples.h"
#include "tests/fuzz/target.h"

#include "core/crypto/seal.h"
#include "core/sync/lines.h"
#include "core/sync/squeeze.h"

namespace lidlark::fuzz {

namespace {

using sync::Lines;
using sync::SegmentFault;

/// Longer texts say nothing new and are slow to seal.
constexpr std::size_t longestSealed = 20'000;

/// Whether each line is just what is written for the event or the empty place read from it.
bool isWrittenAlike(const Lines &lines, std::string_view text)
{
    std::span<const journal::Event> events(lines.events);
    std::span<const journal::Gone> gone(lines.gone);
    while (!events.empty() || !gone.empty()) {
        const std::string event = events.empty() ? "" : sync::textOf(events.first(1), {});
        const bool isEvent = !event.empty() && text.starts_with(event);
        const std::string line = isEvent         ? event
                                 : !gone.empty() ? sync::textOf({}, gone.first(1))
                                                 : std::string();
        if (line.empty() || !text.starts_with(line))
            return false;
        text.remove_prefix(line.size());
        if (isEvent)
            events = events.subspan(1);
        else
            gone = gone.subspan(1);
    }
    return text.empty();
}

/// Sealed and signed by one who may, whatever stands in it.
std::string sealedAsIs(std::string_view text, const Lines &lines, std::uint8_t content)
{
    const sync::Epoch epoch = samples::epoch();
    const sync::SegmentHeader header{crewTag(epoch),
                                     laneTag(epoch),
                                     epoch.id,
                                     deviceTag(epoch, samples::gransTablet),
                                     1,
                                     lines.counters.empty() ? 1 : lines.counters.front(),
                                     {},
                                     static_cast<std::uint32_t>(lines.counters.size()),
                                     static_cast<std::uint32_t>(text.size()),
                                     samples::nonce(),
                                     content};
    std::string bytes = sync::toBytes(header);
    bytes += crypto::sealed(sync::squeezed(text), bytes, sealKeyOf(epoch), header.nonce);
    return bytes +
           crypto::textOf(crypto::signatureOf("lidlark segment 1\n" + bytes, samples::gransSeed()));
}

std::variant<sync::Segment, SegmentFault> opened(const std::string &bytes)
{
    static const crypto::PublicKey signer = crypto::publicKeyOf(samples::gransSeed());
    return sync::openSegment(bytes, samples::epoch(), samples::gransTablet, signer);
}

void sealAgain(const sync::Segment &segment)
{
    const sync::Run run{samples::gransTablet, segment.events, segment.gone,
                        segment.header.content == sync::toldAgain};
    const auto bytes =
        segment.header.content == sync::handedOnEvents
            ? sync::sealHandedOn(samples::epoch(), {}, samples::gransTablet,
                                 std::max<std::uint64_t>(segment.header.firstCounter, 1),
                                 segment.events, samples::gransSeed(), samples::nonce())
            : sync::sealSegment(samples::epoch(), {}, run, samples::gransSeed(), samples::nonce());
    must(bytes.has_value(), "what was read can be told again");
    const auto again = opened(*bytes);
    const auto *read = std::get_if<sync::Segment>(&again);
    must(read != nullptr && read->events == segment.events && read->gone == segment.gone,
         "what is told again is the same");
}

} // namespace

void segmentInside(std::string_view bytes)
{
    if (bytes.empty())
        return;
    const auto content = static_cast<std::uint8_t>(
        sync::ownEvents + static_cast<unsigned char>(bytes.front()) % sync::toldAgain);
    const std::string_view text = bytes.substr(1);
    const auto lines = sync::linesIn(text);
    if (!lines)
        return;
    must(isWrittenAlike(*lines, text), "a line is written as it was read");
    if (text.size() > longestSealed)
        return;
    const auto read = opened(sealedAsIs(text, *lines, content));
    if (const auto *fault = std::get_if<SegmentFault>(&read))
        must(*fault == SegmentFault::OthersEvents || *fault == SegmentFault::CountersAstray,
             "only whose events they are can still be wrong");
    else
        sealAgain(std::get<sync::Segment>(read));
}

} // namespace lidlark::fuzz

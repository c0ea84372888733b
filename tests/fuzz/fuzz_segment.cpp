#include "tests/core/sync/segment_samples.h"
#include "tests/fuzz/target.h"

#include "core/sync/squeeze.h"

namespace lidlark::fuzz {

namespace {

constexpr std::size_t sizeBytes = 4;

/// The first bytes are the size that is said, the rest is the compression.
void unsqueeze(std::string_view bytes)
{
    std::size_t size = 0;
    for (const char byte : bytes.substr(0, sizeBytes))
        size = size << 8U | static_cast<unsigned char>(byte);
    if (bytes.size() < sizeBytes || size > sync::largestText)
        return;
    const auto text = sync::unsqueezed(bytes.substr(sizeBytes), size);
    if (!text)
        return;
    must(text->size() == size, "a text has the size that was said");
    must(sync::unsqueezed(sync::squeezed(*text), size) == text, "what is squeezed comes back");
}

} // namespace

void segment(std::string_view bytes)
{
    static const crypto::PublicKey signer = crypto::publicKeyOf(samples::gransSeed());
    if (const auto header = sync::headerOf(bytes))
        must(sync::toBytes(*header) == bytes.substr(0, sync::headerSize),
             "a header is written as it was read");
    const auto read = sync::openSegment(bytes, samples::epoch(), samples::gransTablet, signer);
    if (const auto *whole = std::get_if<sync::Segment>(&read))
        must(whole->hash == blake2b(bytes), "a segment is known by the hash of its bytes");
    unsqueeze(bytes);
}

} // namespace lidlark::fuzz

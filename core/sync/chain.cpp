#include "core/sync/chain.h"

namespace lidlark::sync {

Standing standingOf(const Segment &segment, const Chain &chain)
{
    const std::uint64_t sequence = segment.header.sequence;
    if (sequence == 0)
        return Standing::Broken;
    if (sequence <= chain.hashes.size())
        return chain.hashes[sequence - 1] == segment.hash ? Standing::Known : Standing::Forked;
    if (sequence > chain.hashes.size() + 1)
        return Standing::NotYet;
    const Digest before = chain.hashes.empty() ? Digest{} : chain.hashes.back();
    if (segment.header.previous != before)
        return Standing::Broken;
    if (segment.header.content == handedOnEvents)
        return Standing::Next; // what others wrote has counters of its own
    return segment.header.firstCounter == chain.lastCounter + 1 ? Standing::Next
                                                                : Standing::CounterGap;
}

void extend(Chain &chain, const Segment &segment)
{
    chain.hashes.push_back(segment.hash);
    if (segment.header.content == ownEvents)
        chain.lastCounter = segment.header.firstCounter + segment.header.events - 1;
}

} // namespace lidlark::sync

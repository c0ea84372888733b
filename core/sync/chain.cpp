#include "core/sync/chain.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

/// A chain may begin where its device has told everything again.
bool begins(const Segment &segment, const Chain &chain)
{
    return chain.hashes.empty() && chain.before == 0 && segment.header.content == toldAgain &&
           segment.header.firstCounter == 1;
}

} // namespace

Standing standingOf(const Segment &segment, const Chain &chain)
{
    const std::uint64_t sequence = segment.header.sequence;
    if (sequence == 0)
        return Standing::Broken;
    if (begins(segment, chain))
        return Standing::Next;
    const std::uint64_t last = chain.before + chain.hashes.size();
    if (sequence <= chain.before)
        return Standing::Known;
    if (sequence <= last)
        return chain.hashes[sequence - chain.before - 1] == segment.hash ? Standing::Known
                                                                         : Standing::Forked;
    if (sequence > last + 1)
        return Standing::NotYet;
    const Digest previous = chain.hashes.empty() ? Digest{} : chain.hashes.back();
    if (segment.header.previous != previous)
        return Standing::Broken;
    if (segment.header.content == handedOnEvents)
        return Standing::Next; // what others wrote has counters of its own
    const std::uint64_t next = chain.lastCounter + 1;
    const bool follows = segment.header.content == toldAgain ? segment.header.firstCounter <= next
                                                             : segment.header.firstCounter == next;
    return follows ? Standing::Next : Standing::CounterGap;
}

void extend(Chain &chain, const Segment &segment)
{
    if (chain.hashes.empty())
        chain.before = segment.header.sequence - 1;
    chain.hashes.push_back(segment.hash);
    if (segment.header.content != handedOnEvents)
        chain.lastCounter =
            std::max(chain.lastCounter, segment.header.firstCounter + segment.header.events - 1);
}

} // namespace lidlark::sync

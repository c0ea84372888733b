#include "core/sync/another_look.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

/// What CrewBook is read from.
bool isOfTheCrew(const journal::Event &event)
{
    using enum journal::Kind;
    return event.kind == Member || event.kind == MemberRemoved || event.kind == Epoch;
}

} // namespace

bool needsAnotherLook(const Catch &caught)
{
    return caught.more || !caught.findings.empty() ||
           std::ranges::any_of(caught.segments, [](const Fetched &fetched) {
               return std::ranges::any_of(fetched.segment.events, isOfTheCrew);
           });
}

} // namespace lidlark::sync

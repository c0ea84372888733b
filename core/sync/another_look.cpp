#include "core/sync/another_look.h"

#include "core/crew/crew_event.h"

#include <algorithm>

namespace lidlark::sync {

bool needsAnotherLook(const Catch &caught)
{
    return caught.more || !caught.findings.empty() ||
           std::ranges::any_of(caught.segments, [](const Fetched &fetched) {
               return std::ranges::any_of(fetched.segment.events, crew::isOfTheCrew);
           });
}

} // namespace lidlark::sync

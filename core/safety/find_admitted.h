#pragma once

#include "core/safety/admit.h"

#include <algorithm>
#include <span>

namespace lidlark::safety {

/// The admitted form of one activity; null where the gate holds it back.
inline const Admitted *findAdmitted(std::span<const Admitted> admitted, const ActivityId &id)
{
    const auto found = std::ranges::find_if(
        admitted, [&](const Admitted &one) { return one.activity().id == id; });
    return found == admitted.end() ? nullptr : &*found;
}

} // namespace lidlark::safety

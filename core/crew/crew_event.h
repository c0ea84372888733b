#pragma once

#include "core/journal/event.h"

namespace lidlark::crew {

/// Whether an event tells who is in a crew or which keys there are: what all that is told of one is
/// folded from.
constexpr bool isOfTheCrew(const journal::Event &event)
{
    using enum journal::Kind;
    return event.kind == Member || event.kind == MemberRemoved || event.kind == Epoch;
}

} // namespace lidlark::crew

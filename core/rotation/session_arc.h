#pragma once

#include "core/rotation/menu.h"

#include <optional>
#include <span>
#include <vector>

namespace lidlark::rotation {

/// The arc of a session: something easy to arrive with, what the session is for, something settling
/// to part with. Common practice, no source.
enum class ArcPlace { SettleIn, Work, SettleOut };
inline constexpr EnumNames<ArcPlace, 3> arcPlaceNames{{"settle-in", "work", "settle-out"}};

/// Whether an entry may stand there.
/// - everywhere: meant for a camera; for a child who tires fast none of high energy;
/// - settling in: not alerting, few words, no washing afterwards;
/// - work: not merely settling;
/// - settling out: settling, low in energy, no washing afterwards.
bool mayStandAt(ArcPlace place, const safety::Admitted &admitted, const child::Child &child);

struct ArcPart {
    ArcPlace place = ArcPlace::Work;
    Offer offer; ///< Proven best for its place among what the places filled before it leave.
};

struct SessionArc {
    std::vector<ArcPart>
        parts; ///< In the order of the session; a place that nothing fits is left out.
    /// Plays on where a thing is missing: it shares no thing of the box with the parts, where
    /// anything such is left.
    std::optional<Offer> spare;
};

/// The menu's own solver, place by place: work first, since the session is for it (linked to a goal
/// where anything is), then the end, then the beginning, then the spare; no two of one family where
/// that can be, no activity twice, and what is used up in one is not there for the next.
/// @param question as for a menu of that day; its number of offers is not read.
SessionArc chooseArc(std::span<const safety::Admitted> admitted, Question question);

} // namespace lidlark::rotation

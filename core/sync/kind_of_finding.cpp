#include "core/sync/kind_of_finding.h"

namespace lidlark::sync {

FindingKind kindOf(SegmentFault fault)
{
    return fault == SegmentFault::Newer ? FindingKind::Newer : FindingKind::Damaged;
}

std::optional<FindingKind> kindOf(Standing standing)
{
    switch (standing) {
    case Standing::Next:
    case Standing::Known:
        break;
    case Standing::Forked:
        return FindingKind::Forked;
    case Standing::Broken:
        return FindingKind::Broken;
    case Standing::NotYet:
    case Standing::CounterGap:
        return FindingKind::Missing;
    }
    return std::nullopt;
}

} // namespace lidlark::sync

#include "core/sync/crew_lanes.h"

#include "core/crew/clinic_crew.h"

namespace lidlark::sync {

std::set<journal::Lane> lanesOf(const std::string &box, const crew::Crew &crew)
{
    using journal::LaneKind;
    if (box == crew::clinicCrew)
        return {{LaneKind::Box, box}, {LaneKind::Clinic, box}};
    std::set<journal::Lane> lanes{{LaneKind::Box, box}, {LaneKind::Goals, box}};
    for (const auto &[device, member] : crew.everMembers()) {
        if (member.home.empty())
            continue;
        for (const LaneKind kind : {LaneKind::Safety, LaneKind::Home, LaneKind::CheckIns})
            lanes.insert({kind, member.home.value});
    }
    return lanes;
}

} // namespace lidlark::sync

#include "core/usecase/packs_for_another.h"

#include "core/crew/clinic_crew.h"
#include "core/store/event_repository.h"

#include <set>

namespace lidlark::usecase {

Result<bool> packsForAnother(Workplace &workplace)
{
    const journal::Lane lane{journal::LaneKind::Box, std::string(crew::clinicCrew)};
    const auto events = store::EventRepository(workplace.database).ofSubject({lane, "members"});
    if (!events)
        return events.error();
    std::set<std::string> founders;
    std::set<std::string> mine; // names under which this phone was let in
    for (const journal::Event &event : *events) {
        const auto member = crew::readMember(event);
        if (member && member->device == event.device)
            founders.insert(member->person);
        if (member && member->device == workplace.device.id)
            mine.insert(member->person);
    }
    std::erase_if(mine, [&founders](const std::string &name) { return founders.contains(name); });
    return !mine.empty();
}

} // namespace lidlark::usecase

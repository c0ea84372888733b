#include "core/store/crew_rows.h"

namespace lidlark::store {

Outcome writeMembers(Database &database, const journal::Lane &lane)
{
    EventRepository repository(database);
    const auto events = repository.ofSubject({lane, std::string(membersSubject)});
    const auto mets = repository.ofSubject({lane, "met"});
    if (!events || !mets)
        return events ? mets.error() : events.error();
    return CrewRepository(database).write(lane.scope,
                                          crew::Crew::fold(*events, journal::Seen(*mets)));
}

Result<std::set<journal::Lane>> lanesAbout(Database &database, const std::string &box)
{
    const auto crew = CrewRepository(database).crewOf(box);
    const auto subjects = EventRepository(database).subjects();
    if (!crew || !subjects)
        return crew ? subjects.error() : crew.error();
    std::set<std::string> scopes{box};
    for (const auto &[device, member] : crew->everMembers())
        scopes.insert(member.home.value);
    std::set<journal::Lane> lanes;
    for (const LaneSubject &subject : *subjects) {
        if (scopes.contains(subject.lane.scope))
            lanes.insert(subject.lane);
    }
    return lanes;
}

} // namespace lidlark::store

#include "core/store/crew_repository.h"

#include "core/crew/rights.h"

namespace lidlark::store {

Result<std::map<std::string, crew::Crew>> CrewRepository::all()
{
    Result<Statement> query =
        m_database.prepare("SELECT box, fields, accepted FROM crew_member ORDER BY box");
    if (!query)
        return query.error();
    std::map<std::string, crew::Crew> crews;
    Result<bool> row = query->step();
    for (; row && *row; row = query->step()) {
        auto member = crew::memberFrom(query->text(1)); // a row holds what the event held
        if (!member)
            return Error{ErrorCode::Unreadable, "crew"};
        crew::Crew &crew = crews[query->text(0)];
        if (!query->isNull(2)) {
            const auto removal = crew::removalFrom(query->text(2));
            crew.put(member->device, removal ? removal->accepted : crew::Accepted());
        }
        crew.put(std::move(*member));
    }
    if (!row)
        return row.error();
    return crews;
}

Result<crew::Crew> CrewRepository::crewOf(const std::string &box)
{
    auto crews = all();
    if (!crews)
        return crews.error();
    return (*crews)[box];
}

Outcome CrewRepository::write(const std::string &box, const crew::Crew &crew)
{
    Result<Statement> emptied = m_database.prepare("DELETE FROM crew_member WHERE box = ?1");
    if (!emptied)
        return emptied.error();
    if (Outcome done = emptied->bind(1, box).run(); !done)
        return done;
    for (const auto &[device, member] : crew.everMembers()) {
        Result<Statement> query = m_database.prepare(
            "INSERT INTO crew_member (box, device, fields, accepted) VALUES (?1, ?2, ?3, ?4)");
        if (!query)
            return query.error();
        std::optional<std::string> accepted;
        if (const auto gone = crew.gone().find(device); gone != crew.gone().end())
            accepted = crew::fieldsOf(crew::Removal{device, gone->second});
        query->bind(1, box).bind(2, device.value).bind(3, crew::fieldsOf(member));
        if (Outcome done = query->bindText(4, accepted).run(); !done)
            return done;
    }
    return Done{};
}

bool countsInAny(const std::map<std::string, crew::Crew> &crews, const journal::Event &event)
{
    bool asked = false;
    for (const auto &[box, crew] : crews) {
        if (!crew::isAbout(box, crew, event.lane))
            continue;
        if (crew::counts(crew, event))
            return true;
        asked = true;
    }
    return !asked;
}

} // namespace lidlark::store

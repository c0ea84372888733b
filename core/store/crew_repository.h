#pragma once

#include "core/crew/crew.h"
#include "core/store/database.h"

#include <map>
#include <string>

namespace lidlark::store {

/// Who is in which crew: rows folded from the box lanes.
class CrewRepository
{
public:
    explicit CrewRepository(Database &database) : m_database(database) {}

    /// @returns an empty one where nobody was ever let in.
    Result<crew::Crew> crewOf(const std::string &box);
    /// By box.
    Result<std::map<std::string, crew::Crew>> all();
    Outcome write(const std::string &box, const crew::Crew &crew);

private:
    Database &m_database;
};

/// Whether @p event counts by any of @p crews that its lane is about: the box's own, or those in
/// which somebody of that home is (core/crew/rights.h).
bool countsInAny(const std::map<std::string, crew::Crew> &crews, const journal::Event &event);

} // namespace lidlark::store

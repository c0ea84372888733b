#pragma once

#include "core/journal/seen.h"
#include "core/store/event_repository.h"

#include <set>
#include <span>

#include <string>

namespace lidlark::store {

/// Keeps the projection rows equal to the fold of the events (events.md 1). A row is always
/// written by refolding its whole subject, so keeping up and refolding are the same code.
class Projector
{
public:
    explicit Projector(Database &database) : m_database(database), m_events(database) {}

    /// Brings the rows of these subjects up to date. A new lid list brings every item of the box
    /// with it, and a `met` changes who had seen what: then the whole lane is folded again, once.
    Outcome project(const std::set<LaneSubject> &changed);

    /// Drops and refolds everything, in a transaction that is rolled back, and compares.
    Result<bool> matchesRefold();

private:
    Outcome projectOne(const LaneSubject &subject, const journal::Seen &seen);
    Outcome projectLane(const journal::Lane &lane);
    Outcome projectSome(const journal::Lane &lane, const std::set<LaneSubject> &changed);
    Outcome projectUntouchedItems(const journal::Lane &lane, const journal::Seen &seen);
    Outcome projectItem(const LaneSubject &subject, std::span<const journal::Event> events,
                        const journal::Seen &seen);
    Result<journal::Seen> seenOf(const journal::Lane &lane);
    Result<std::string> dump();

    Database &m_database;
    EventRepository m_events;
};

} // namespace lidlark::store

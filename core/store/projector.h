#pragma once

#include "core/journal/meetings.h"
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

    /// Drops all rows and folds them anew, inside a transaction of the caller's.
    Outcome refold();
    /// Refolds in a transaction that is rolled back, and compares.
    Result<bool> matchesRefold();

private:
    /// Who is in the crew decides what counts: then all that the crew can say is folded again.
    Outcome projectCrews(const std::set<LaneSubject> &changed, std::set<journal::Lane> &whole);
    Outcome projectOne(const LaneSubject &subject, const journal::Meetings &meetings);
    /// @param changed also those of which nothing is left.
    Outcome projectLane(const journal::Lane &lane, const std::set<LaneSubject> &changed);
    Outcome projectSome(const journal::Lane &lane, const std::set<LaneSubject> &changed);
    Outcome projectUntouchedItems(const journal::Lane &lane, const journal::Meetings &meetings);
    Outcome projectItem(const LaneSubject &subject, std::span<const journal::Event> events,
                        const journal::Meetings &meetings);
    Result<journal::Meetings> meetingsOf(const journal::Lane &lane);
    Result<std::string> dump();

    Database &m_database;
    EventRepository m_events;
};

} // namespace lidlark::store

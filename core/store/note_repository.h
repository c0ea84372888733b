#pragma once

#include "core/play/our_way.h"
#include "core/play/own_note.h"
#include "core/store/database.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lidlark::store {

/// What adults write down themselves: a family's own ways, and notes to oneself.
class NoteRepository
{
public:
    explicit NoteRepository(Database &database) : m_database(database) {}

    Result<std::optional<play::OurWay>> ourWay(const HomeId &home, const ChildId &child,
                                               const ActivityId &activity);
    /// Those that stand, newest first. @param owner the scope of the notes lane.
    Result<std::vector<play::OwnNote>> notes(const std::string &owner, const ChildId &child);
    /// The ids of notes that were taken off before @p day.
    Result<std::vector<std::string>> removedBefore(const std::string &owner, Day day);

private:
    Database &m_database;
};

} // namespace lidlark::store

#pragma once

#include "core/base/part_of_day.h"
#include "core/checkin/checkin_events.h"
#include "core/child/goal_events.h"
#include "core/child/home_sheet.h"
#include "core/play/play_events.h"
#include "core/store/database.h"

#include <map>
#include <optional>
#include <vector>

namespace lidlark::store {

/// What homes know: their sheets, plays, check-ins and goals.
class HomeRepository
{
public:
    explicit HomeRepository(Database &database) : m_database(database) {}

    /// Homes about which anything was said, by id.
    Result<std::vector<HomeId>> homes();
    /// Those on whose sheet the child stands as living there, by id.
    Result<std::vector<HomeId>> homesOf(const ChildId &child);
    /// @returns nothing when nobody has said anything about that home.
    Result<std::optional<child::HomeSheet>> sheet(const HomeId &home);
    /// One fact as it stands, or nothing.
    Result<std::optional<std::string>> fact(const HomeId &home, const std::string &person,
                                            const std::string &name);

    /// Plays of a child in that home, newest first. @param since first day.
    Result<std::vector<play::Play>> plays(const HomeId &home, const ChildId &child, Day since);
    Result<std::optional<play::Play>> play(const PlayId &id);
    /// Whether anybody in this store has played on @p day.
    Result<bool> playedOn(Day day);
    /// When each entry last stood in a menu.
    Result<std::map<ActivityId, play::Offered>> offered(const HomeId &home, const ChildId &child);
    Result<std::vector<checkin::CheckIn>> checkIns(const HomeId &home, const ChildId &child,
                                                   Day since);
    Result<std::vector<child::Goal>> goals(const ChildId &child);
    /// "ur"; nothing when that person has not said.
    Result<std::optional<std::string>> readingLanguage(const HomeId &home,
                                                       const std::string &person);

private:
    Database &m_database;
};

} // namespace lidlark::store

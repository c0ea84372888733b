#pragma once

#include "core/child/home_sheet.h"
#include "core/play/play_events.h"
#include "core/store/box_repository.h"
#include "core/store/event_repository.h"
#include "core/usecase/workplace.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::usecase {

/// A play that this phone holds, and the home it was in.
struct PlayHere {
    HomeId home;
    play::Play play;
};

/// Whose record is exported, and what everything in it is called.
struct ExportSource {
    Workplace &workplace;
    std::vector<store::BoxRow> boxes;          ///< By alias.
    std::vector<child::HomeSheet> homes;       ///< In which one of these children lives or visits.
    std::vector<PlayHere> plays;               ///< Of these children, by day.
    std::vector<journal::Event> events;        ///< All that was said and not erased, in no order.
    std::map<PlayId, std::size_t> placeOfPlay; ///< In `plays`.
    /// What ids are called that stand in events: of children, people, homes, boxes, items,
    /// activities.
    std::map<std::string, std::string, std::less<>> names;

    [[nodiscard]] std::string item(const ItemId &id) const;
    [[nodiscard]] std::string activity(const ActivityId &id) const;
    [[nodiscard]] std::string named(const std::string &id) const; ///< The id itself: unknown.
    [[nodiscard]] const play::Play *play(const PlayId &id) const; ///< Null: not here.
};

/// @param child alias; empty: every child with a box in this store. Errors: NotFound (child).
Result<ExportSource> exportSource(Workplace &workplace, const std::string &child);

} // namespace lidlark::usecase

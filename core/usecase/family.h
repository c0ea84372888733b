#pragma once

#include "core/child/child.h"
#include "core/rotation/menu.h"
#include "core/safety/admit.h"
#include "core/store/box_repository.h"
#include "core/store/home_repository.h"
#include "core/store/plan_repository.h"
#include "core/usecase/workplace.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lidlark::usecase {

/// Everything this phone knows about one child on one day, read once for a menu or a screen.
struct Family {
    store::BoxRow box;
    std::optional<store::RevisionRow> revision;
    std::vector<store::ItemRow> items;
    std::vector<store::LossRow> losses; ///< Open ones.
    std::vector<store::OutcomeRow> outcomes;
    std::optional<box::Place> place;
    HomeId home; ///< The home whose sheet counts here.
    std::optional<child::HomeSheet> sheet;
    child::Child child;
    std::vector<play::Play> plays; ///< In that home, newest first, at most 12 months.
    std::map<ActivityId, play::Offered> offered;
    std::vector<checkin::CheckIn> checkIns;
    std::map<ActivityId, play::GradingUsed> gradings; ///< How each was played last, in that home.
    std::map<ActivityId, play::GradingUsed> gradingPins; ///< What the therapist has pinned.
    std::map<Day, play::DayWish> dayWishes;              ///< For today and the days to come.
};

/// Errors: NotFound when no box belongs to a child of that alias; ClockUnset; BeforeBirth when
/// today lies before the child's birth.
Result<Family> loadFamily(Workplace &workplace, const std::string &childAlias);

/// By the lid list in force: there is nothing to play with it any more.
bool isToTakeOut(const Family &family, const ItemId &item);

/// The box as the gate reads it on @p today.
safety::BoxState boxStateOf(const Family &family, const catalogue::Catalogue &catalogue, Day today);

/// The gate over a whole catalogue for this child, with @p room and as the box stands on @p today.
/// @param boxNotHere somebody has just looked: it is not at hand.
safety::Gated gatedFor(const Family &family, const catalogue::Catalogue &catalogue,
                       const safety::Room &room, Day today, bool boxNotHere = false);

/// What the child's past says about each activity (activities.md 2.2).
std::map<ActivityId, rotation::Record> recordsOf(const Family &family, Day today);

/// Minutes practised of each skill in the last seven days, today included.
std::array<int, catalogue::skillCount>
minutesThisWeek(const Family &family, const catalogue::Catalogue &catalogue, Day today);

} // namespace lidlark::usecase

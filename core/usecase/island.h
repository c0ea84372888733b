#pragma once

#include "core/base/day.h"
#include "core/child/goal_events.h"
#include "core/child/home_facts.h"
#include "core/store/device_repository.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lidlark::usecase {

/// The demo: ten invented families on the invented Isle of Hallasay (job.md 4). Day 1 is Monday
/// 11 January 2027; all boxes were issued on Monday 4 January.
namespace island {

struct Resident {
    std::string alias;
    child::PersonKind kind = child::PersonKind::Adult;
    int monthsOnDayOne = 0; ///< Children: completed months by the careful reading.
    child::Answer mouths = child::Answer::Unanswered;
    bool visits = false;
};

struct Phone {
    std::string person;
    store::Role role = store::Role::Parent;
    std::string reads = {}; ///< Language; empty: they have not said.
};

struct Home {
    std::string id;
    std::string name;                ///< "Mum's, Port Sheal".
    std::vector<Resident> residents; ///< Besides the playing child.
    std::vector<child::Fact> facts;  ///< About the home: allergies answered, pets ...
    std::vector<child::Permission> permissions;
    std::vector<Phone> phones;
};

struct Family {
    std::string child; ///< Alias; ids are made from it.
    int monthsOnDayOne = 0;
    bool energyLimited = false;
    std::vector<Home> homes; ///< The box starts in the first.
    std::map<ItemId, int> packed;
    std::vector<child::Goal> goals;
};

Day dayOne();
Day issueDay();
std::vector<Family> families();

/// The standard lid list (job.md 2.8): pieces by item.
std::map<ItemId, int> standardBox();

} // namespace island

} // namespace lidlark::usecase

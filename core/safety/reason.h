#pragma once

#include "core/base/id.h"
#include "core/catalogue/activity.h"

#include <optional>
#include <string>

namespace lidlark::safety {

/// Why an activity is not offered now. Turned into a sentence in `core/wording`.
enum class ReasonCode {
    AgeUnknown,        ///< No age: only a few entries.
    AllergyUnanswered, ///< The allergy question is open.
    NotPublished,      ///< Draft or withdrawn.
    NotReviewed,       ///< The therapist shows reviewed entries only.
    BelowFloor,        ///< number = floor in months.
    BelowTagFloor,     ///< tag, number = floor in months.
    UnderThreeInRoom,  ///< tag, name = who.
    MoutherInRoom,     ///< tag, name = who.
    SmallChildInHome,  ///< tag (BALLOON), name = who: present or not.
    LatexInHome,       ///< Somebody at home must avoid latex; item.
    WheatInHome,       ///< Wheat allergy or coeliac disease at home; item.
    MilkInHome,
    NeedsCloserAdult, ///< supervision.
    ItemMissing,      ///< item: not in this box.
    ItemUsedUp,       ///< item, number = how many are needed.
    ItemPastDate,     ///< item: opened too long ago, or dried out.
    BoxElsewhere,     ///< name = where the box is.
    HomeLacksExtra,   ///< item.
    FloorNoteOpen,    ///< Something small may lie on the floor.
    TouchNotLiked,    ///< The home has not said "likes it".
    NeedsTherapist,   ///< tag: a medical flag asks for the therapist's yes.
    QuietNow,
    WaterUnderThree, ///< WATER: needs "beside now".
    StiffCups ///< HM-01: only crushable paper cups where an under-three plays (a notice in the
              ///< swap, not a refusal, when paper cups are said to be there).
};

struct Reason {
    ReasonCode code;
    std::optional<catalogue::Tag> tag;
    std::optional<ItemId> item;
    int number = 0;
    std::string name;
    std::optional<catalogue::Supervision> supervision;
    bool operator==(const Reason &) const = default;
};

} // namespace lidlark::safety

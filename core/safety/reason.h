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
    UnderThreeInRoom,  ///< tag, name = who; empty when nobody can be named.
    MoutherInRoom,     ///< tag, name = who; empty when nobody can be named.
    SmallChildInHome,  ///< tag (BALLOON), name = who: present or not.
    LatexInHome,       ///< Somebody at home must avoid latex; item.
    WheatInHome,       ///< Wheat allergy or coeliac disease at home; item.
    MilkInHome,        ///< Somebody at home avoids milk, or nobody has said; item.
    NeedsCloserAdult,  ///< supervision.
    ItemMissing,       ///< item: not in this box.
    ItemUsedUp,        ///< item, number = how many are needed.
    ItemPastDate,      ///< item: opened too long ago, or dried out.
    ItemToWash,        ///< item: it was in a mouth, and waits for a washing.
    BoxElsewhere,      ///< name = where the box is.
    HomeLacksExtra,    ///< item.
    FloorNoteOpen,     ///< tag: something small (SMALL, COIN, BALLOON) may lie on the floor.
    TouchNotLiked,     ///< The home has not said "likes it".
    NeedsTherapist,    ///< tag: a medical flag asks for the therapist's yes.
    BrokenSkin,        ///< FOAM: not with broken skin.
    ScentAvoided,      ///< SCENT: eczema, asthma or a scent dislike.
    QuietNow,          ///< NOISE: a sleeping baby, or a sound-sensitive child.
    WaterUnderThree,   ///< WATER: needs "beside now".
    StiffHollow,       ///< item: may stick over a small face; name = who.
    SmallInHome,       ///< tag: a small child lives here; the therapist has noted no condition.
    NoHighPlace,       ///< tag: a small child lives here, and there is no high place for the box.
    AllergenInHome,    ///< item, name = allergen: somebody avoids it, or nobody has said.
    PermissionOutdated ///< The therapist's yes was for an earlier version.
};

struct Reason {
    ReasonCode code;
    std::optional<catalogue::Tag> tag = std::nullopt;
    std::optional<ItemId> item = std::nullopt;
    int number = 0;
    std::string name = {};
    std::optional<catalogue::Supervision> supervision = std::nullopt;
    bool operator==(const Reason &) const = default;
};

} // namespace lidlark::safety

#pragma once

#include "core/base/id.h"
#include "core/catalogue/activity.h"
#include "core/child/home_sheet.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::safety {

/// Who is in the room, as an adult has just said. Not asked: everyone on the home sheet; without a
/// home sheet an under-three who mouths (activities.md 2.1).
struct Room {
    /// People of the home sheet who are here; absent: not answered.
    std::optional<std::vector<PersonId>> present;
    bool visitorUnderThree = false;
    bool visitorMouther = false;
    /// The closest an adult can be now.
    catalogue::Supervision adultCanBe = catalogue::Supervision::Beside;
    /// An adult has said "beside now" for this play (WATER under 36 months).
    bool besideSaid = false;
    bool quietNow = false; ///< A sleeping baby, or a sound-sensitive moment.
};

/// The two facts everything else reads (activities.md 1.4).
struct Company {
    bool underThree = false;
    bool mouther = false;
    std::vector<std::string>
        because; ///< Aliases that make it so, for the reason text; may be empty.
    bool operator==(const Company &) const = default;
};

/// Whether @p person counts as under three, or as a mouther, on @p today.
bool isUnderThree(const child::Person &person, Day today);
bool isMouther(const child::Person &person, Day today);

/// Everyone who will be in the room, the playing child included.
/// @param home null: no home sheet.
Company companyIn(const Room &room, const child::HomeSheet *home, const ChildId &playing,
                  Day today);

/// Everyone who lives in the home or visits it, present or not (BALLOON).
Company companyOfHome(const child::HomeSheet *home, Day today);

} // namespace lidlark::safety

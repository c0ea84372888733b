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

/// The two facts everything else reads (activities.md 1.4), and whom they come from.
struct Company {
    bool underThree = false;
    bool mouther = false;
    std::vector<std::string> underThreeNames; ///< Aliases; empty when nobody can be named.
    std::vector<std::string> moutherNames;    ///< Aliases; empty when nobody can be named.
    bool operator==(const Company &) const = default;
};

/// Any child under 36 months; a child whose age nobody has said counts as one.
bool isUnderThree(const child::Person &person, Day today);
/// Any child under 24 months; of 24 to 35 months, or of an age nobody has said, unless an adult has
/// answered "no longer"; anybody at all who still does, or with pica.
bool isMouther(const child::Person &person, Day today);

/// Everyone who will be in the room, the playing child included. Not answered: everyone on the home
/// sheet; without a home sheet an under-three who mouths. A person who is said to be here but
/// stands on no sheet counts as both.
/// @param home null: no home sheet.
Company companyIn(const Room &room, const child::HomeSheet *home, const child::Child &playing,
                  Day today);

/// Everyone who lives in the home, in the room or not; visitors count only while they are here.
/// @param home null: nothing is known, so an under-three who mouths.
Company companyOfHome(const child::HomeSheet *home, const child::Child &playing, Day today);

} // namespace lidlark::safety

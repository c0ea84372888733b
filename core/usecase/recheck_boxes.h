#pragma once

#include "core/catalogue/catalogue.h"
#include "core/safety/reason.h"
#include "core/usecase/family.h"

#include <string>
#include <vector>

namespace lidlark::usecase {

/// What a change of the catalogue (an item's measure or tag, an activity) does to one box.
struct BoxRecheck {
    struct Hidden {
        ActivityId activity;
        /// Empty: the changed catalogue has no such entry any more, for example because its
        /// cautions leave out a tag that an item now carries.
        std::vector<safety::Reason> reasons;
        /// Where it has none: what the gate would say against it that it did not say before, with
        /// everyone of the home in the room, if its cautions named every tag of its things.
        std::vector<safety::Reason> withEveryTag = {};
    };
    std::string child;               ///< Alias.
    std::vector<Hidden> hidden;      ///< Could be offered before, no longer now.
    std::vector<ActivityId> opened;  ///< The other way round.
    std::vector<ActivityId> changed; ///< Still offered, with other cautions, swaps or supervision.

    [[nodiscard]] bool affected() const
    {
        return !hidden.empty() || !opened.empty() || !changed.empty();
    }
};

/// The gate over both catalogues for one box, today, once with everyone of the home in the room and
/// once with the playing child alone beside an adult: what differs in either is listed.
BoxRecheck recheckBox(const Family &family, const catalogue::Catalogue &before,
                      const catalogue::Catalogue &after, Day today);

/// The gate over both catalogues for every box of this store, today, once with everyone of the home
/// in the room and once with the playing child alone beside an adult: what differs in either is
/// listed. Changes nothing. Errors: those of `loadFamily`.
Result<std::vector<BoxRecheck>> recheckBoxes(Workplace &workplace,
                                             const catalogue::Catalogue &edited);

} // namespace lidlark::usecase

#pragma once

#include "core/usecase/revision_state.h"
#include "core/usecase/take_out.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::usecase {

/// A goal's review is shown this many days before it is due. [P]
inline constexpr int reviewNoticeDays = 14;

/// What one box needs of the one who packs it (job.md T16). Box health alone: nothing here says
/// when, how often or whether anybody played, counted or answered.
struct BoxHealth {
    std::string child; ///< Alias.
    /// Why nothing else is known of it; the other boxes are told all the same.
    std::optional<Error> problem;

    std::vector<ItemId> asked;                ///< Asked for, and not packed yet.
    std::vector<ItemId> low;                  ///< Running low or gone, and not asked for.
    std::vector<TakeOut> mustAvoid;           ///< With things that have not left the house.
    int onTheFloor = 0;                       ///< Small pieces lost and not found.
    std::optional<RevisionState> unconfirmed; ///< A changed list whose removals are not all out.
    std::optional<Day> reviewOn;              ///< The earliest goal review, due or nearly so.

    [[nodiscard]] bool needsStock() const { return !asked.empty() || !low.empty(); }
    [[nodiscard]] bool hasSafetyNote() const { return !mustAvoid.empty() || onTheFloor > 0; }
    [[nodiscard]] bool awaitsConfirmation() const { return unconfirmed.has_value(); }
    [[nodiscard]] bool reviewDue() const { return reviewOn.has_value(); }
    /// Nothing waits.
    [[nodiscard]] bool isWell() const
    {
        return !problem && !needsStock() && !hasSafetyNote() && !awaitsConfirmation() &&
               !reviewDue();
    }
};

/// How one box stands on @p today. A pure reading of what the store holds.
Result<BoxHealth> boxHealthOf(Workplace &workplace, const Family &family, Day today);

/// Every box of this store, in the order of the children's aliases. Errors: ClockUnset; those of
/// the store.
Result<std::vector<BoxHealth>> caseload(Workplace &workplace);

} // namespace lidlark::usecase

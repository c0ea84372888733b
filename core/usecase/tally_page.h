#pragma once

#include "core/usecase/lid_list_page.h"

namespace lidlark::usecase {

/// One item of a week's tally.
struct TallyLine {
    LidPart part;
    bool mayDryOut = false; ///< Only then "dried out" can be said of it.
    bool operator==(const TallyLine &) const = default;
};

/// A week of a box in a home without a phone: what was used up, lost, broken or dried out, and what
/// was counted at its end, to be typed in at the next visit. There are no days on it: what was
/// played, and when, is nobody's to ask (job.md 1.4, "Share").
struct TallyPage {
    std::string child; ///< Alias.
    std::string code;
    int revision = 0;
    Day issued;
    Day monday; ///< First day of the week.
    std::vector<TallyLine> lines;
    bool smallPieces = false; ///< A lost one has to be looked for at once.
    std::string emergencyNumber;
    std::string poisonLine;
};

/// @param weeksOn 0: the week of @p today, 1: the next one ... Errors: those of lidListPageOf.
Result<TallyPage> tallyPageOf(const Family &family, const catalogue::Catalogue &catalogue,
                              const std::set<child::Avoided> &avoided, Day today, int weeksOn);

/// The Monday of that day's week.
Day mondayOf(Day day);

} // namespace lidlark::usecase

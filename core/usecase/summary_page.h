#pragma once

#include "core/usecase/family.h"

#include <string>
#include <vector>

namespace lidlark::usecase {

/// One activity that was played, and what adults noticed in it: no count, no dates.
struct PlayedActivity {
    ActivityId activity;
    std::vector<play::Phrase> noticed; ///< Each once.
    bool operator==(const PlayedActivity &) const = default;
};

/// How the box is: its things, never its people.
struct BoxTold {
    int kinds = 0;                   ///< Kinds of thing on the lid list.
    std::vector<ItemId> low;         ///< Half or less of what belongs there.
    std::vector<ItemId> none;        ///< Nothing usable left.
    std::vector<ItemId> asked;       ///< More of it is asked for or on its way.
    std::vector<ItemId> open;        ///< Nobody knows how many: a question is open.
    bool pieceMissing = false;       ///< Something lost has not been looked for.
    std::optional<Day> wholeCounted; ///< Since then all were counted at least once.

    [[nodiscard]] bool isComplete() const { return low.empty() && none.empty() && open.empty(); }
};

/// What a family may hand on of a child's play and box (job.md T12): one page, nothing scored. A
/// check-in has no place in it (events.md 4: it stays in its home).
struct SummaryPage {
    std::string child; ///< Alias.
    std::string code;
    int revision = 0;
    Day day;
    Day since; ///< Nothing from before is told.
    bool playsTold = false;
    std::vector<PlayedActivity> played; ///< Latest first, at most mostPlayed.
    bool morePlayed = false;            ///< Others were, too, that did not find room.
    std::vector<child::Goal> goals;     ///< At most mostGoals, as agreed.
    BoxTold box;
};

inline constexpr int mostPlayed = 12;
inline constexpr std::size_t mostGoals = 3; // what families agree on (job.md 1.2)
/// A block of eight weeks and no more (job.md 1.2).
inline constexpr int summaryDays = 56;

/// @param family its plays are those that may be told: on a therapist's phone what its homes share
/// (core/store/shared_copies.h), since a home's own lane is not open to her.
/// @param tellPlays an adult of the home has said, for this page or once for all, that what was
/// played may be told.
SummaryPage summaryPageOf(const Family &family, const catalogue::Catalogue &catalogue, Day today,
                          bool tellPlays);

} // namespace lidlark::usecase

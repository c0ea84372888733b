#pragma once

#include "core/base/part_of_day.h"
#include "core/checkin/kite.h"
#include "core/checkin/pair_counts.h"
#include "core/child/child.h"
#include "core/safety/admit.h"

#include <array>
#include <map>
#include <optional>
#include <set>
#include <span>
#include <vector>

namespace lidlark::rotation {

/// What one child's past says about one activity. Days are whole days before today.
struct Record {
    int plays = 0; ///< Ever, by this child.
    std::optional<int> daysSincePlayed;
    std::optional<int> daysSinceOffered; ///< Absent: never offered; then the box's age counts.
    int askedAgain = 0;                  ///< Plays after which it was asked for again.
    /// Plays about which an adult noticed something ("What did you notice?"), and those of them
    /// with a liking in it: asked for again, or found an own way. "Needed help" is no dislike.
    int noticed = 0;
    int liked = 0;
    checkin::PairCounts pairs; ///< What the child told before and after (checkin.md 7).
    bool favourite = false;
};

/// Life-word filters an adult has put on for today (job.md F6).
struct Filters {
    bool noTable = false;
    bool noMess = false;
    bool quiet = false;
    bool oneHand = false;
    bool tiredAdult = false;
    bool awayFromHome = false; ///< Only entries that need nothing from the box, quiet first.
    bool someoneIsIll = false; ///< No breath or mouth play, nothing that is shared (HY-02, HY-03).
};

/// The question the menu answers.
struct Question {
    const child::Child &child;
    Day today;
    PartOfDay part = PartOfDay::Evening;
    bool pastBedtimeHour = false;        ///< After 18:30 or the home's own hour (checkin.md 4).
    std::optional<checkin::Kite> kite{}; ///< Absent or Bag: no check-in.
    std::optional<int> minutes{};        ///< What the family has, for each offer by itself.
    Filters filters{};
    int offers = 3;         ///< 1 to 5.
    int daysSinceIssue = 0; ///< Since the box was issued.
    std::map<ActivityId, Record> records{};
    std::set<ActivityId> playedToday{};
    std::array<int, catalogue::skillCount> minutesThisWeek{}; ///< Practised in the last seven days.
    std::map<ItemId, int> stock{}; ///< Box items, low end: all offers together stay within it. An
                                   ///< item that is not named has none.
    std::map<ItemId, bool> useSoon{}; ///< Perishables near their date without a hazard note.
    std::set<ActivityId> without{};   ///< "Three others": not these.
};

/// Parts of a worth (activities.md 2.2), in tenths of a point so that coverage can be finer.
enum class Part {
    GoalLink,
    CheckinFit,
    OwnRecord,
    Freshness,
    KnownFriend,
    UseSoon,
    SpareTheStock,
    Waiting,
    PutBackCost
};
inline constexpr std::size_t partCount = 9;

struct Worth {
    std::array<int, partCount> parts{};
    [[nodiscard]] int total() const;
    [[nodiscard]] int of(Part part) const { return parts[static_cast<std::size_t>(part)]; }
};

/// Side conditions in the order in which they give way (design.md 5).
enum class SideCondition { OneNew, KnownFriend, WithoutTable, Family, OneMess };
inline constexpr std::size_t sideConditionCount = 5;

/// One line of why, chosen from the parts that put the offer there.
enum class WhyCode {
    Goal,
    KnownFriend,
    New,
    Freshness,
    UseSoon,
    CheckinResting,
    CheckinSteady,
    CheckinWhirling,
    CheckinClouds,
    Coverage,
    Waiting,
    NoTable,
    Quiet,
    AllHere ///< Nothing else speaks for it: all it needs is here.
};
inline constexpr EnumNames<WhyCode, 14> whyNames{
    {"goal", "known-friend", "new", "not-for-a-while", "use-soon", "kite-resting", "kite-steady",
     "kite-whirling", "kite-clouds", "week-lacks", "waiting", "no-table", "quiet", "all-here"}};

/// What the menu knows of one offer, apart from the admitted activity itself.
struct OfferFacts {
    Worth worth;
    int coverage = 0;         ///< Tenths it adds to the week's coverage beside the offers above it.
    int roleBonus = 0;        ///< Tenths for kite roles that none of the offers above it fills.
    std::vector<WhyCode> why; ///< One to three, strongest first.
    std::optional<catalogue::Skill> coverageSkill; ///< For Coverage: the skill it adds most to.
    std::string goal;                              ///< shortWords of the goal, for Goal.
    bool isNew = false;
    bool isKnownFriend = false;
};

struct Offer : OfferFacts {
    safety::Admitted admitted;
};

struct Menu {
    std::vector<Offer> offers; ///< In the order in which they are shown; fewer than asked for when
                               ///< even then no choice satisfies what never gives way.
    int value = 0;             ///< Tenths: the sum of worth, coverage and role bonus of the offers.
    bool proven = true;
    std::vector<SideCondition> gaveWay; ///< Only those that the chosen set breaks.
    std::int64_t nodes = 0;             ///< Search nodes visited.
};

/// The rank of an activity for this child, day and part: ties are broken by it (design.md 5).
std::uint64_t rankOf(const ChildId &child, Day day, PartOfDay part, const ActivityId &activity);

/// The exact optimum of the score over the admitted activities. Deterministic: the same question
/// gives the same menu on every device.
Menu chooseMenu(std::span<const safety::Admitted> admitted, const Question &question);

} // namespace lidlark::rotation

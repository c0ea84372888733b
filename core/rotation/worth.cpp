#include "core/rotation/worth.h"

#include "core/rotation/familiarity.h"
#include "core/rotation/goal_link.h"

#include <algorithm>
#include <numeric>

// Why nothing starves (the bound stated in worth.h).
//
// Take an entry a that is feasible on every day: some choice F_t of day t that satisfies all that
// is in force then holds a, and differs from the day's menu S_t in at most r entries. Suppose that
// a is not offered on the n days t0 ... t0 + n - 1, and that on day t0 it has waited d >= r (R + n)
// days.
//
// 1. S_t is optimal, so value(S_t) >= value(F_t). What the two share cancels, but for coverage and
//    role bonus, where sharing only lowers what the others add (concave); so all but waiting
//    differs by at most r R points, and the waiting of the at most r entries of S_t outside F_t is
//    together at least waiting(a) - r R. One of them, b_t, has waiting(b_t) >= waiting(a) / r - R.
// 2. Waiting is days less q, with q = n_t / k <= n / k the free days of that day, never below 0.
// Here
//    waiting(a) / r - R >= (d - q) / r - R >= n - q / r > 0, so b_t has waited
//    q + (d - q) / r - R >= d / r - R >= n days or more.
// 3. So b_t was in no menu of the n days before t: b_t0 ... b_(t0 + n - 1) are n different entries,
//    and none of them is a. There are only n - 1 such. Contradiction.
//
// Hence a is offered on a day when it has waited at most r (R + n) + n - 1 days.

namespace lidlark::rotation {

namespace {

constexpr int point = 10;
/// An own record needs three plays before it counts (activities.md 2.2).
constexpr int recordFloor = 3;
/// Observations of "as expected" that stand beside the child's own: few pull little.
constexpr int shrinking = 4;
constexpr int justPlayedDays = 2;
constexpr int longAgoDays = 10;

int ownRecordOf(const Record &record)
{
    if (record.plays < recordFloor)
        return 0;
    const int net = record.pairs.towards - record.pairs.away + record.liked;
    return 2 * point * net / (record.pairs.total() + record.noticed + shrinking);
}

int freshnessOf(const Record &record, const Question &question)
{
    if (record.daysSincePlayed && *record.daysSincePlayed <= justPlayedDays)
        return -3 * point;
    return record.daysSincePlayed.value_or(question.daysSinceIssue) >= longAgoDays ? 2 * point : 0;
}

bool usesSoon(const catalogue::ItemUse &use, const Question &question)
{
    const auto found = question.useSoon.find(use.item);
    return use.source == catalogue::Source::Box && found != question.useSoon.end() && found->second;
}

bool usesUpTheLast(const catalogue::ItemUse &use, const Question &question)
{
    if (use.source != catalogue::Source::Box || use.fate != catalogue::Fate::UsedUp)
        return false;
    const auto found = question.stock.find(use.item);
    return found == question.stock.end() || found->second <= use.quantity;
}

int waitingOf(const Record &record, const Question &question, std::size_t admitted)
{
    const int freeDays = static_cast<int>(admitted) / question.offers;
    const int days = record.daysSinceOffered.value_or(question.daysSinceIssue);
    return point * std::max(days - freeDays, 0);
}

bool costsPutBack(const catalogue::Activity &activity, const Question &question)
{
    return activity.mess == 2 &&
           (question.part == PartOfDay::Evening || question.filters.tiredAdult);
}

} // namespace

int Worth::total() const
{
    return std::accumulate(parts.begin(), parts.end(), 0);
}

Worth worthOf(const Candidate &candidate, const Question &question, std::size_t admitted)
{
    const catalogue::Activity &activity = *candidate.activity;
    const Record &record = recordOf(question, activity.id);
    Worth worth;
    const auto put = [&](Part part, int tenths) {
        worth.parts[static_cast<std::size_t>(part)] = tenths;
    };
    const auto anyUse = [&](auto rule) {
        return std::ranges::any_of(candidate.items,
                                   [&](const auto &use) { return rule(use, question); });
    };
    put(Part::GoalLink, goalLinkOf(activity, question.child).points * point);
    put(Part::CheckinFit, kiteFitOf(kiteRolesOf(candidate, question)));
    put(Part::OwnRecord, ownRecordOf(record));
    put(Part::Freshness, freshnessOf(record, question));
    put(Part::KnownFriend, isKnownFriend(record) ? 2 * point : 0);
    put(Part::UseSoon, anyUse(usesSoon) ? point : 0);
    put(Part::SpareTheStock, anyUse(usesUpTheLast) ? -2 * point : 0);
    put(Part::Waiting, waitingOf(record, question, admitted));
    put(Part::PutBackCost, costsPutBack(activity, question) ? -point : 0);
    return worth;
}

} // namespace lidlark::rotation

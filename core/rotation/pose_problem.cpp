#include "core/rotation/pose_problem.h"

#include "core/rotation/familiarity.h"
#include "core/rotation/filters.h"
#include "core/rotation/kite_rules.h"
#include "core/rotation/worth.h"

#include <algorithm>
#include <tuple>

namespace lidlark::rotation {

namespace {

bool mayStand(const Candidate &candidate, const Question &question)
{
    const catalogue::Activity &activity = *candidate.activity;
    return !question.playedToday.contains(activity.id) && !question.without.contains(activity.id) &&
           fitsIn(activity.minutes, question.minutes) && staysWith(candidate, question.filters) &&
           kitePlaceOf(candidate, question) != KitePlace::Never;
}

/// The places of the candidates that may stand in the menu, in the order of rank, then id.
std::vector<std::size_t> inOrderOfRank(std::span<const Candidate> candidates,
                                       const Question &question)
{
    using Placed = std::tuple<std::uint64_t, std::string_view, std::size_t>;
    std::vector<Placed> placed;
    for (std::size_t i = 0; i < candidates.size(); ++i) {
        const ActivityId &id = candidates[i].activity->id;
        if (mayStand(candidates[i], question))
            placed.emplace_back(rankOf(question.child.id, question.today, question.part, id),
                                id.value, i);
    }
    std::ranges::sort(placed);
    std::vector<std::size_t> places;
    places.reserve(placed.size());
    for (const Placed &one : placed)
        places.push_back(std::get<2>(one));
    return places;
}

std::vector<Amount> amountsOf(const Candidate &candidate, const Question &question)
{
    std::vector<Amount> amounts;
    for (const Practice &practice : practiceOf(*candidate.activity))
        amounts.push_back({static_cast<int>(practice.skill), practice.minutes});
    const KiteRoles roles = kiteRolesOf(candidate, question);
    for (std::size_t i = 0; i < roles.size(); ++i) {
        if (roles[i])
            amounts.push_back({static_cast<int>(firstRoleCurve + i), 1});
    }
    return amounts;
}

/// Box items it cannot do without; household extras are not counted.
std::map<ItemId, int> boxNeeds(const Candidate &candidate)
{
    std::map<ItemId, int> needs;
    for (const catalogue::ItemUse &use : candidate.items) {
        if (use.source == catalogue::Source::Box && use.role != catalogue::Role::Nice)
            needs[use.item] += use.quantity;
    }
    return needs;
}

Entry entryOf(const Candidate &candidate, const Question &question, int worth)
{
    const catalogue::Activity &activity = *candidate.activity;
    const Record &record = recordOf(question, activity.id);
    const bool strayNoise = question.filters.awayFromHome && !isQuiet(candidate);
    Entry entry;
    entry.worth = worth;
    entry.amounts = amountsOf(candidate, question);
    entry.family = static_cast<int>(activity.family());
    entry.isNew = isNew(record);
    entry.isKnownFriend = isKnownFriend(record);
    entry.isWithoutTable = activity.space != catalogue::Space::Table;
    entry.isMessy = activity.mess == 2;
    entry.isHeldBack = strayNoise || kitePlaceOf(candidate, question) == KitePlace::HeldBack;
    return entry;
}

/// Numbers the items that anything needs, and their stock; an item without a count has none.
class StockNumbers
{
public:
    explicit StockNumbers(const Question &question) : m_question(question) {}

    int numberOf(const ItemId &item)
    {
        const auto [found, isFirst] = m_numbers.try_emplace(item, m_stock.size());
        if (isFirst) {
            const auto count = m_question.stock.find(item);
            m_stock.push_back(count == m_question.stock.end() ? 0 : count->second);
        }
        return static_cast<int>(found->second);
    }
    [[nodiscard]] const std::vector<int> &stock() const { return m_stock; }

private:
    const Question &m_question;
    std::map<ItemId, std::size_t> m_numbers;
    std::vector<int> m_stock;
};

} // namespace

PosedProblem poseProblem(std::span<const Candidate> candidates, const Question &question)
{
    PosedProblem posed;
    posed.problem.curves = weekCurves(question);
    posed.problem.curves.insert(posed.problem.curves.end(), kiteRoleCount, {{1, kiteRoleBonus}});
    posed.candidates = inOrderOfRank(candidates, question);
    StockNumbers numbers(question);
    for (const std::size_t place : posed.candidates) {
        const Candidate &candidate = candidates[place];
        posed.worths.push_back(worthOf(candidate, question, candidates.size()));
        Entry entry = entryOf(candidate, question, posed.worths.back().total());
        for (const auto &[item, pieces] : boxNeeds(candidate))
            entry.needs.push_back({numbers.numberOf(item), pieces});
        posed.problem.entries.push_back(std::move(entry));
    }
    posed.problem.stock = numbers.stock();
    return posed;
}

} // namespace lidlark::rotation

#include "core/rotation/choose_menu.h"

#include "core/rotation/familiarity.h"
#include "core/rotation/give_way.h"
#include "core/rotation/goal_link.h"
#include "core/rotation/kite_roles.h"
#include "core/rotation/order_offers.h"
#include "core/rotation/pose_problem.h"
#include "core/rotation/why.h"

#include <cassert>

namespace lidlark::rotation {

namespace {

/// The chosen entries in the order in which they are shown.
std::vector<std::size_t> shown(const PosedProblem &posed, const Settled &settled,
                               std::span<const Candidate> candidates, const Question &question)
{
    std::vector<ToOrder> chosen;
    chosen.reserve(settled.entries.size());
    for (const std::size_t entry : settled.entries)
        chosen.push_back({posed.worths[entry].total(),
                          kiteRolesOf(candidates[posed.candidates[entry]], question),
                          posed.problem.entries[entry].isHeldBack});
    std::vector<std::size_t> entries;
    for (const std::size_t place : orderOffers(chosen))
        entries.push_back(settled.entries[place]);
    return entries;
}

/// Adds the entry's minutes to those of the offers above it, and says what they bring.
void addCoverage(const MenuProblem &problem, const Entry &entry, std::vector<int> &minutes,
                 OfferFacts &facts)
{
    int most = 0;
    for (const Amount &amount : entry.amounts) {
        int &above = minutes[amount.curve];
        const int gain = gainOf(problem.curves[amount.curve], above, amount.minutes);
        above += amount.minutes;
        if (static_cast<std::size_t>(amount.curve) >= firstRoleCurve) {
            facts.roleBonus += gain;
            continue;
        }
        facts.coverage += gain;
        if (gain > most) {
            most = gain;
            facts.coverageSkill = static_cast<catalogue::Skill>(amount.curve);
        }
    }
}

Pick pickOf(const PosedProblem &posed, std::size_t entry, std::span<const Candidate> candidates,
            const Question &question, std::vector<int> &minutes)
{
    Pick pick{posed.candidates[entry], {}};
    const Candidate &candidate = candidates[pick.candidate];
    OfferFacts &facts = pick.facts;
    facts.worth = posed.worths[entry];
    facts.isNew = posed.problem.entries[entry].isNew;
    facts.isKnownFriend = posed.problem.entries[entry].isKnownFriend;
    if (const GoalLink link = goalLinkOf(*candidate.activity, question.child); link.goal)
        facts.goal = link.goal->shortWords;
    addCoverage(posed.problem, posed.problem.entries[entry], minutes, facts);
    facts.why = whyOf(facts, candidate, question);
    return pick;
}

} // namespace

MenuDraft draftMenu(std::span<const Candidate> candidates, const Question &question)
{
    assert(question.offers >= 1 && question.offers <= 5);
    const PosedProblem posed = poseProblem(candidates, question);
    const Settled settled = settle(posed.problem, static_cast<std::size_t>(question.offers));
    MenuDraft draft{{}, settled.value, settled.gaveWay, settled.nodes};
    std::vector<int> minutes(posed.problem.curves.size(), 0);
    for (const std::size_t entry : shown(posed, settled, candidates, question))
        draft.picks.push_back(pickOf(posed, entry, candidates, question, minutes));
    return draft;
}

Menu chooseMenu(std::span<const safety::Admitted> admitted, const Question &question)
{
    std::vector<Candidate> candidates;
    for (const safety::Admitted &one : admitted)
        candidates.push_back(candidateOf(one));
    MenuDraft draft = draftMenu(candidates, question);
    Menu menu;
    for (Pick &pick : draft.picks)
        menu.offers.push_back({std::move(pick.facts), admitted[pick.candidate]});
    menu.value = draft.value;
    menu.gaveWay = std::move(draft.gaveWay);
    menu.nodes = draft.nodes;
    return menu;
}

} // namespace lidlark::rotation

#include "core/rotation/session_arc.h"

#include "core/rotation/goal_link.h"

#include <algorithm>
#include <set>

namespace lidlark::rotation {

namespace {

using catalogue::Effect;
using catalogue::Energy;
using safety::Admitted;

bool usesBoxItemOf(const Admitted &admitted, const std::set<ItemId> &items)
{
    return std::ranges::any_of(admitted.items(), [&items](const catalogue::ItemUse &use) {
        return use.source == catalogue::Source::Box && items.contains(use.item);
    });
}

/// Fills the places one after the other.
class Arc
{
public:
    Arc(std::span<const Admitted> admitted, Question question)
        : m_admitted(admitted), m_question(std::move(question))
    {
        m_question.offers = 1;
    }

    /// The best of those that @p fits and, where any does, that @p rather suits too.
    template <class Fits, class Rather>
    std::optional<Offer> best(const Fits &fits, const Rather &rather)
    {
        std::vector<Admitted> all;
        std::vector<Admitted> wanted;
        for (const Admitted &admitted : m_admitted) {
            if (m_taken.contains(admitted.activity().id) || !fits(admitted))
                continue;
            all.push_back(admitted);
            if (rather(admitted))
                wanted.push_back(admitted);
        }
        Menu menu = chooseMenu(wanted, m_question);
        if (menu.offers.empty())
            menu = chooseMenu(all, m_question);
        if (menu.offers.empty())
            return std::nullopt;
        take(menu.offers.front().admitted);
        return std::move(menu.offers.front());
    }

    [[nodiscard]] bool isNewFamily(const Admitted &admitted) const
    {
        return !m_families.contains(admitted.activity().family());
    }
    [[nodiscard]] bool sharesNothing(const Admitted &admitted) const
    {
        return !usesBoxItemOf(admitted, m_items);
    }
    [[nodiscard]] const child::Child &child() const { return m_question.child; }

private:
    void take(const Admitted &admitted)
    {
        m_taken.insert(admitted.activity().id);
        m_families.insert(admitted.activity().family());
        for (const catalogue::ItemUse &use : admitted.items()) {
            if (use.source != catalogue::Source::Box)
                continue;
            m_items.insert(use.item);
            if (use.fate == catalogue::Fate::UsedUp)
                m_question.stock[use.item] -= use.quantity;
        }
    }

    std::span<const Admitted> m_admitted;
    Question m_question;
    std::set<ActivityId> m_taken;
    std::set<catalogue::Skill> m_families;
    std::set<ItemId> m_items;
};

} // namespace

bool mayStandAt(ArcPlace place, const Admitted &admitted, const child::Child &child)
{
    const catalogue::Activity &activity = admitted.activity();
    if (!activity.videoOk || (child.energyLimited && activity.energy == Energy::High))
        return false;
    const bool noWashing = activity.mess < 2;
    switch (place) {
    case ArcPlace::SettleIn:
        return activity.effect != Effect::Alerting &&
               activity.wordsNeeded != catalogue::Words::Many && noWashing;
    case ArcPlace::Work:
        return activity.effect != Effect::Settling;
    case ArcPlace::SettleOut:
        return activity.effect == Effect::Settling && activity.energy == Energy::Low && noWashing;
    }
    return false;
}

SessionArc chooseArc(std::span<const Admitted> admitted, Question question)
{
    Arc arc(admitted, std::move(question));
    const auto at = [&arc](ArcPlace place) {
        return
            [&arc, place](const Admitted &entry) { return mayStandAt(place, entry, arc.child()); };
    };
    const auto newFamily = [&arc](const Admitted &entry) { return arc.isNewFamily(entry); };
    auto work = arc.best(at(ArcPlace::Work), [&arc](const Admitted &entry) {
        return goalLinkOf(entry.activity(), arc.child()).points > 0;
    });
    auto out = arc.best(at(ArcPlace::SettleOut), newFamily);
    auto in = arc.best(at(ArcPlace::SettleIn), newFamily);
    SessionArc chosen;
    if (in)
        chosen.parts.push_back({ArcPlace::SettleIn, *std::move(in)});
    if (work)
        chosen.parts.push_back({ArcPlace::Work, *std::move(work)});
    if (out)
        chosen.parts.push_back({ArcPlace::SettleOut, *std::move(out)});
    chosen.spare = arc.best(
        [&arc](const Admitted &entry) {
            return mayStandAt(ArcPlace::SettleIn, entry, arc.child()) ||
                   mayStandAt(ArcPlace::Work, entry, arc.child());
        },
        [&arc](const Admitted &entry) { return arc.sharesNothing(entry); });
    return chosen;
}

} // namespace lidlark::rotation

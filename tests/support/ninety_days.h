#pragma once

#include "core/rotation/coverage.h"
#include "core/rotation/goal_link.h"
#include "core/usecase/play_activity.h"
#include "tests/support/phone.h"

#include <array>
#include <map>
#include <random>
#include <set>

namespace lidlark::test {

/// How ninety evenings of one island child went: a menu an evening, and one of its offers played,
/// drawn by chance.
struct NinetyDays {
    static constexpr int days = 90;

    std::array<int, catalogue::skillCount> minutes{}; ///< Practised, main and further skills.
    std::array<int, catalogue::skillCount> bouts{};   ///< Plays that trained it, first or second.
    std::array<int, catalogue::skillCount> offers{};  ///< Offers that train it at all.
    /// Evenings on which something that trains the skill first or second fitted at all.
    std::array<int, catalogue::skillCount> possible{};
    std::map<ActivityId, int> offered;
    std::map<ActivityId, int> feasible;   ///< Evenings on which the gate let it through.
    std::map<ActivityId, int> longestGap; ///< Evenings between two offers, or to either end.
    std::array<bool, catalogue::skillCount> isGoal{};
    int shortMenus = 0; ///< Fewer than three offers.
};

class NinetyDaysOf
{
public:
    NinetyDaysOf(const std::string &child, std::uint32_t seed) : m_child(child), m_source(seed)
    {
        auto morven = therapistWith({child});
        m_phone =
            std::make_unique<Phone>("First", store::Role::Parent, familyOf(child).homes.front().id);
        m_phone->meet(*morven);
    }

    NinetyDays run()
    {
        for (int day = 0; day < NinetyDays::days; ++day) {
            m_phone->clock.moveTo(islandTime(5 + day, 16, 30)); // an afternoon: before bedtime
            liveADay(day);
        }
        for (const auto &[id, evenings] : m_lived.feasible) {
            const auto last = m_last.find(id);
            const int since = NinetyDays::days - (last == m_last.end() ? 0 : last->second + 1);
            m_lived.longestGap[id] = std::max(m_lived.longestGap[id], since);
        }
        return m_lived;
    }

private:
    void liveADay(int day)
    {
        usecase::Workplace workplace = m_phone->workplace();
        usecase::MenuRequest request;
        request.child = m_child;
        request.room.present.emplace(); // the little ones are asleep
        const auto today = usecase::suggestToday(workplace, request);
        if (!today)
            return;
        note(*today, day);
        (void)usecase::markOffered(workplace, *today);
        const auto &offers = today->menu.offers;
        if (offers.empty())
            return;
        const catalogue::Activity &played = offers[m_source() % offers.size()].admitted.activity();
        usecase::CountedHome all;
        for (const catalogue::ItemUse &use : played.items)
            all[use.item] = box::mostPieces;
        const auto play = usecase::startPlay(workplace, {m_child, played.id, {}, std::nullopt});
        if (play)
            (void)usecase::putBack(workplace, *play, {}, {}, all);
        for (const catalogue::Skill skill : played.skillsMain)
            ++m_lived.bouts[static_cast<std::size_t>(skill)];
        for (const rotation::Practice &practice : rotation::practiceOf(played))
            m_lived.minutes[static_cast<std::size_t>(practice.skill)] += practice.minutes;
    }

    void note(const usecase::TodayMenu &today, int day)
    {
        std::set<catalogue::Skill> possible;
        for (const safety::Admitted &admitted : today.gated.admitted) {
            const catalogue::Activity &activity = admitted.activity();
            ++m_lived.feasible[activity.id];
            possible.insert(activity.skillsMain.begin(), activity.skillsMain.end());
        }
        for (const catalogue::Skill skill : possible)
            ++m_lived.possible[static_cast<std::size_t>(skill)];
        for (const rotation::Offer &offer : today.menu.offers) {
            const ActivityId &id = offer.admitted.activity().id;
            ++m_lived.offered[id];
            for (const rotation::Practice &practice :
                 rotation::practiceOf(offer.admitted.activity()))
                ++m_lived.offers[static_cast<std::size_t>(practice.skill)];
            const auto last = m_last.find(id);
            const int gap = day - (last == m_last.end() ? 0 : last->second + 1);
            m_lived.longestGap[id] = std::max(m_lived.longestGap[id], gap);
            m_last[id] = day;
        }
        m_lived.shortMenus += today.menu.offers.size() < 3 ? 1 : 0;
        for (std::size_t i = 0; i < catalogue::skillCount; ++i)
            m_lived.isGoal[i] =
                rotation::isGoalSkill(static_cast<catalogue::Skill>(i), today.family.child);
    }

    std::string m_child;
    std::mt19937 m_source;
    std::unique_ptr<Phone> m_phone;
    NinetyDays m_lived;
    std::map<ActivityId, int> m_last; ///< The last day on which it was offered.
};

} // namespace lidlark::test

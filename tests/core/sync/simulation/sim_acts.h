#pragma once

#include "sim_phone.h"

#include "core/usecase/box_questions.h"
#include "core/usecase/check_in.h"
#include "core/usecase/erase.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/restock.h"
#include "core/usecase/set_up_home.h"
#include "core/usecase/take_back.h"
#include "core/usecase/tend_item.h"

#include <random>

namespace lidlark::test {

inline const std::string effie = "Effie";
inline const std::string effiesBox = "b-effie";

/// Chance with a seed.
class SimDice
{
public:
    explicit SimDice(unsigned seed) : m_source(seed) {}
    int below(int limit)
    {
        return static_cast<int>(m_source() % static_cast<unsigned>(std::max(1, limit)));
    }
    bool oneIn(int times) { return below(times) == 0; }
    template <class List> const auto &oneOf(const List &list)
    {
        return list[static_cast<std::size_t>(below(static_cast<int>(list.size())))];
    }

private:
    std::mt19937 m_source;
};

/// What one person does by chance, through the use cases of the app.
class SimActs
{
public:
    SimActs(SimPhone &phone, SimDice &dice) : m_workplace(phone.workplace()), m_dice(dice) {}

    /// @returns whether the app let them.
    bool one()
    {
        switch (m_dice.below(16)) {
        case 0:
        case 1:
        case 2:
        case 3:
            return play();
        case 4:
            return usecase::countBox(m_workplace, effie, {}, {{item(), m_dice.below(8)}}).ok();
        case 5:
            return usecase::noteFound(m_workplace, effie, {}, item(), 1).ok();
        case 6:
            return usecase::checkFloor(m_workplace, effie, {}).ok();
        case 7:
            return usecase::sayPlace(m_workplace, effie, place(), "here").ok();
        case 8:
        case 9:
            return usecase::checkIn(m_workplace, effie, static_cast<checkin::Kite>(m_dice.below(5)),
                                    checkin::ShownBy::Child)
                .ok();
        case 10:
            return request();
        case 11:
            return answer();
        case 12:
            return gone();
        case 13:
            return takeBack();
        case 14:
            return m_dice.oneIn(4) && erase();
        default:
            return fact();
        }
    }

private:
    ItemId item()
    {
        static const std::vector<std::string> items{"eyes", "pegs", "crayons", "pompoms", "dough"};
        return {m_dice.oneOf(items)};
    }
    std::string place()
    {
        static const std::vector<std::string> places{"h-effie-mum", "h-effie-dad", "school"};
        return m_dice.oneOf(places);
    }
    box::ExceptionKind anyKind() { return static_cast<box::ExceptionKind>(m_dice.below(5)); }

    bool play()
    {
        static const std::vector<std::string> activities{"dough-forecast", "two-hand-tides"};
        const auto play =
            usecase::startPlay(m_workplace, {effie, {m_dice.oneOf(activities)}, {}, {}});
        if (!play)
            return false;
        std::vector<usecase::NamedException> named;
        if (m_dice.oneIn(2))
            named.push_back({item(), anyKind(), 1 + m_dice.below(2)});
        if (m_dice.oneIn(8)) // corrected while the play goes on
            (void)usecase::nameExceptions(m_workplace, *play, {}, {{item(), anyKind(), 1}});
        if (m_dice.oneIn(10))
            return true; // and is never put back
        const usecase::CountedHome all{{{"eyes"}, 99}, {{"pegs"}, 99}, {{"crayons"}, 99}};
        const bool done = usecase::putBack(m_workplace, *play, {}, named, all).ok();
        if (done && m_dice.oneIn(3))
            (void)usecase::noticePhrase(m_workplace, *play, play::Phrase{});
        return done;
    }

    bool request()
    {
        const ItemId wanted = item();
        switch (m_dice.below(4)) {
        case 0:
            return usecase::askFor(m_workplace, effie, {}, wanted).ok();
        case 1:
            return usecase::moveRequest(m_workplace, effie, {}, wanted, box::RequestStep::Packed)
                .ok();
        case 2:
            return usecase::countIn(m_workplace, effie, {}, wanted, 1 + m_dice.below(3)).ok();
        default:
            return usecase::correctCountedIn(m_workplace, effie, {}, wanted, 1 + m_dice.below(3))
                .ok();
        }
    }

    bool answer()
    {
        const auto family = usecase::loadFamily(m_workplace, effie);
        if (!family)
            return false;
        for (const store::ItemRow &row : family->items) {
            for (const box::Question &question : row.questions) {
                const auto answers = box::answersOf(question);
                if (question.isOpen() && !answers.empty())
                    return usecase::answerQuestion(m_workplace, effie, {}, question.id,
                                                   m_dice.oneOf(answers))
                        .ok();
            }
        }
        return false;
    }

    bool gone()
    {
        return usecase::noteGone(m_workplace, {effie, {}, item()}, anyKind(), 1 + m_dice.below(2))
            .ok();
    }

    bool takeBack()
    {
        const auto last = usecase::lastNotedBy(m_workplace, effie, m_workplace.device.person);
        return last && usecase::takeBack(m_workplace, {effie, {}, *last}).ok();
    }

    bool erase()
    {
        const auto what = m_dice.oneIn(2) ? usecase::Erasable::CheckIns : usecase::Erasable::Plays;
        const auto today = store::todayOf(m_workplace.clock);
        return today && usecase::erase(m_workplace, what, today->day - 5).ok();
    }

    bool fact()
    {
        static const std::vector<std::string> values{"yes", "no"};
        const bool home =
            !m_workplace.device.home.empty() && m_workplace.device.role != store::Role::Guest;
        return home && usecase::sayFact(m_workplace, m_workplace.device.home,
                                        {"", "pets", m_dice.oneOf(values)})
                           .ok();
    }

    usecase::Workplace m_workplace;
    SimDice &m_dice;
};

} // namespace lidlark::test

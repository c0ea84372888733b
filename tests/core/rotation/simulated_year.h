#pragma once

#include "core/rotation/exact_search.h"
#include "core/rotation/pose_problem.h"
#include "tests/core/rotation/menu_samples.h"

#include <algorithm>
#include <random>

namespace lidlark::rotation::samples {

/// Which of the day's offers the child plays. OnlyFriends: whatever is new stays new, after the
/// first weeks in which friends are made.
enum class Habit { AnyOfThem, TheFirst, OnlyFriends, Nothing };

/// A menu a day for one child who has the same invented entries all the time: what is offered and
/// played today is the past of tomorrow's question.
class SimulatedYear
{
public:
    SimulatedYear(int entries, Habit habit, std::uint32_t seed) : m_habit(habit), m_source(seed)
    {
        child::Goal goal;
        goal.skills = {catalogue::Skill::Bil, catalogue::Skill::Str};
        m_child.goals = {goal};
        for (int i = 0; i < entries; ++i)
            m_shelf.add("entry" + std::to_string(i), [this](catalogue::Activity &a) { draw(a); });
        m_sinceOffered.assign(m_shelf.size(), 0);
        m_lastPlayed.assign(m_shelf.size(), -1);
        for (std::size_t i = 0; i < m_shelf.size(); ++i)
            m_towardsSteady.push_back(below(2) == 0);
    }

    /// @returns the longest that an entry which stayed feasible went without being offered.
    int longestWaitIn(int days)
    {
        int longest = 0;
        for (m_day = 0; m_day < days; ++m_day) {
            const Question question = today();
            const auto candidates = m_shelf.candidates();
            const MenuDraft draft = draftMenu(candidates, question);
            forgetTheInfeasible(candidates, question);
            for (int &wait : m_sinceOffered)
                longest = std::max(longest, ++wait);
            for (const Pick &pick : draft.picks) {
                m_sinceOffered[pick.candidate] = 0;
                m_records[m_shelf.at(pick.candidate).id].daysSinceOffered = 0;
            }
            play(draft);
        }
        return longest;
    }

private:
    int below(int limit)
    {
        return static_cast<int>(m_source() % static_cast<std::uint32_t>(limit));
    }

    /// Traits as common as in the first eighty of activities.md 5.
    void draw(catalogue::Activity &a)
    {
        a.skillsMain = {static_cast<catalogue::Skill>(below(12))};
        a.skillsAlso = {static_cast<catalogue::Skill>(below(21))};
        a.space = below(10) < 6 ? catalogue::Space::Table : catalogue::Space::Mat;
        a.mess = below(20) == 0 ? 2 : 0;
        if (below(4) == 0)
            a.lifeAreas = {catalogue::LifeArea::OpeningThings};
    }

    Question today()
    {
        Question question = questionFor(m_child);
        question.today = firstDay() + m_day;
        question.part = PartOfDay::Evening;
        question.daysSinceIssue = m_day;
        for (std::size_t i = 0; i < m_shelf.size(); ++i) {
            Record &record = m_records[m_shelf.at(i).id];
            if (record.daysSinceOffered)
                ++*record.daysSinceOffered;
            if (m_lastPlayed[i] < 0)
                continue;
            record.daysSincePlayed = m_day - m_lastPlayed[i];
            if (*record.daysSincePlayed <= 6) {
                for (const Practice &practice : practiceOf(m_shelf.at(i)))
                    question.minutesThisWeek[static_cast<std::size_t>(practice.skill)] +=
                        practice.minutes;
            }
        }
        question.records = m_records;
        return question;
    }

    void play(const MenuDraft &draft)
    {
        std::vector<std::size_t> choices;
        for (const Pick &pick : draft.picks) {
            if (m_habit != Habit::OnlyFriends || pick.facts.isKnownFriend || m_day < 20)
                choices.push_back(pick.candidate);
        }
        if (choices.empty() || m_habit == Habit::Nothing)
            return;
        const int pick = m_habit == Habit::AnyOfThem ? below(static_cast<int>(choices.size())) : 0;
        const std::size_t played = choices[static_cast<std::size_t>(pick)];
        Record &record = m_records[m_shelf.at(played).id];
        ++record.plays;
        ++(m_towardsSteady[played] ? record.pairs.towards : record.pairs.away);
        m_lastPlayed[played] = m_day;
    }

    /// Starts the count anew for entries that no choice satisfying what is in force today holds.
    /// Only looked at once they have waited long: before that, counting too much is the safe side.
    void forgetTheInfeasible(std::span<const Candidate> candidates, const Question &question)
    {
        PosedProblem posed = poseProblem(candidates, question);
        const ChoiceRules rules = rulesInForce(posed.problem);
        constexpr int above = 1'000'000;
        for (std::size_t entry = 0; entry < posed.candidates.size(); ++entry) {
            int &wait = m_sinceOffered[posed.candidates[entry]];
            if (wait < static_cast<int>(m_shelf.size()))
                continue;
            posed.problem.entries[entry].worth += above;
            std::int64_t nodes = 0;
            const auto choice = bestChoice(posed.problem, rules, nodes);
            if (!choice || std::ranges::count(choice->entries, entry) == 0)
                wait = 0;
            posed.problem.entries[entry].worth -= above;
        }
    }

    static ChoiceRules rulesInForce(const MenuProblem &problem)
    {
        ChoiceRules rules{3, ConditionsInForce(0), 0};
        std::int64_t nodes = 0;
        for (std::size_t givenWay = 0; !bestChoice(problem, rules, nodes); ++givenWay)
            rules.inForce = ConditionsInForce(givenWay);
        return rules;
    }

    child::Child m_child{{"fin"}, "Fin", std::nullopt, false, {}};
    Shelf m_shelf;
    Habit m_habit;
    std::mt19937 m_source;
    int m_day = 0;
    std::map<ActivityId, Record> m_records;
    std::vector<int> m_sinceOffered;
    std::vector<int> m_lastPlayed;
    std::vector<bool> m_towardsSteady;
};

} // namespace lidlark::rotation::samples

#pragma once

#include "core/rotation/choose_menu.h"

#include <deque>
#include <functional>
#include <string>
#include <vector>

namespace lidlark::rotation::samples {

/// Invented activities for tests: each one plain until told otherwise (known to nobody, without a
/// box, on a mat, five minutes, its own skill as family).
class Shelf
{
public:
    using Change = std::function<void(catalogue::Activity &)>;

    void add(const std::string &id, const Change &change = {})
    {
        catalogue::Activity activity;
        activity.id = {id};
        activity.skillsMain = {catalogue::Skill::Pin};
        activity.space = catalogue::Space::Mat;
        activity.hands = 1;
        activity.positions = {catalogue::Position::Chair};
        activity.noBox = true;
        if (change)
            change(activity);
        m_activities.push_back(activity);
    }

    /// As if the gate had let all of them through unchanged.
    [[nodiscard]] std::vector<Candidate> candidates() const
    {
        std::vector<Candidate> all;
        all.reserve(m_activities.size());
        for (const catalogue::Activity &activity : m_activities)
            all.push_back({&activity, activity.cautions, activity.items});
        return all;
    }

    [[nodiscard]] const catalogue::Activity &at(std::size_t place) const
    {
        return m_activities[place];
    }
    [[nodiscard]] std::size_t size() const { return m_activities.size(); }

private:
    std::deque<catalogue::Activity> m_activities;
};

inline catalogue::ItemUse boxUse(const std::string &item, int pieces,
                                 catalogue::Fate fate = catalogue::Fate::ComesBack)
{
    return {{item}, pieces, catalogue::Source::Box, catalogue::Role::Must, fate, pieces};
}

/// Monday 11 January 2027, the first day of the invented island's calendar.
inline Day firstDay()
{
    return *dayFrom({2027, 1, 11});
}

inline const child::Child &fin()
{
    static const child::Child child{{"fin"}, "Fin", std::nullopt, false, {}};
    return child;
}

inline Question questionFor(const child::Child &child)
{
    Question question{.child = child, .today = firstDay()};
    question.part = PartOfDay::Afternoon;
    return question;
}

/// Played a few times and liked.
inline Record knownFriend()
{
    Record record;
    record.plays = 4;
    record.daysSincePlayed = 5;
    record.daysSinceOffered = 1;
    return record;
}

/// Played once, a week ago: neither new nor a friend.
inline Record playedOnce()
{
    Record record;
    record.plays = 1;
    record.daysSincePlayed = 7;
    record.daysSinceOffered = 1;
    return record;
}

inline std::vector<std::string> idsOf(const MenuDraft &draft, std::span<const Candidate> candidates)
{
    std::vector<std::string> ids;
    ids.reserve(draft.picks.size());
    for (const Pick &pick : draft.picks)
        ids.push_back(candidates[pick.candidate].activity->id.value);
    return ids;
}

} // namespace lidlark::rotation::samples

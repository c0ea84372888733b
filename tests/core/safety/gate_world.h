#pragma once

#include "core/safety/admit.h"

#include <set>
#include <string>
#include <vector>

/// A home with everything answered, a box with everything in it, and a child of ten: nothing holds
/// an activity back until a test changes it.
struct GateWorld {
    lidlark::Day today = *lidlark::dayFrom({2027, 1, 11});
    lidlark::child::Child child{
        {"child"}, "Fin", lidlark::child::ageFromMonths(120, today), false, {}};
    lidlark::child::HomeSheet home;
    bool hasHome = true;
    lidlark::safety::Room room;
    lidlark::safety::BoxState box;
    lidlark::catalogue::Catalogue catalogue;

    explicit GateWorld(std::vector<lidlark::catalogue::ItemKind> items)
        : catalogue(std::move(items), {}, {})
    {
        using lidlark::child::Answer;
        home.avoidances = {Answer::No, Answer::No, Answer::No, Answer::No, {}};
        home.likesTouch = Answer::Yes;
        for (const auto &item : catalogue.items()) {
            if (item.source == lidlark::catalogue::Source::Box)
                box.items[item.id] = {12, false};
        }
    }

    /// The therapist's condition of safety.md SP-01 stands, and there is a high place for the box.
    void mayHoldSmallParts()
    {
        home.permissions.smallWhenAway = "asleep or out, high shelf";
        home.highStorage = true;
    }

    void isMonthsOld(int months) { child.age = lidlark::child::ageFromMonths(months, today); }

    /// Somebody who lives in the home, and is in the room unless the room says otherwise.
    lidlark::child::Person &addChild(const std::string &alias, std::optional<int> months,
                                     lidlark::child::Answer mouths)
    {
        lidlark::child::Person person;
        person.id = {alias};
        person.alias = alias;
        if (months)
            person.age = lidlark::child::ageFromMonths(*months, today);
        person.mouths = mouths;
        home.people.push_back(person);
        return home.people.back();
    }

    [[nodiscard]] lidlark::safety::Admission
    judge(const lidlark::catalogue::Activity &activity) const
    {
        const lidlark::safety::Situation situation{
            child, hasHome ? &home : nullptr, room, box, catalogue, today};
        return lidlark::safety::admit(activity, situation);
    }
};

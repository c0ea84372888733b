#include "core/usecase/island.h"

namespace lidlark::usecase::island {

namespace {

using child::Answer;
using child::PersonKind;
using store::Role;

using Packed = std::map<ItemId, int>;

/// A home with a mouthing child: nothing that fits a small mouth (job.md 2.8).
Packed mouthingHomeBox()
{
    Packed packed = standardBox();
    for (const char *item : {"card", "lace", "pieces", "bands", "pegs", "crayons", "eyes", "ball",
                             "pompoms", "balloon"})
        packed.erase({item});
    packed[{"onepegs"}] = 6;
    packed[{"chunky"}] = 3;
    packed[{"scarf"}] = 1;
    packed[{"lids"}] = 4;
    return packed;
}

/// Lewis: the eyes stay, under a recorded condition (job.md scenario 5).
Packed lewisBox()
{
    Packed packed = mouthingHomeBox();
    packed[{"eyes"}] = 6;
    return packed;
}

/// Answers every home gives at the start: nothing to avoid.
std::vector<child::Fact> nothingToAvoid(std::vector<child::Fact> more = {})
{
    std::vector<child::Fact> facts{
        {"", "latex", "no"}, {"", "wheat", "no"}, {"", "coeliac", "no"}, {"", "milk", "no"}};
    facts.insert(facts.end(), more.begin(), more.end());
    return facts;
}

Resident adult(std::string alias)
{
    return {std::move(alias), PersonKind::Adult, 0, Answer::Unanswered, false};
}

Resident kid(std::string alias, int months, Answer mouths)
{
    return {std::move(alias), PersonKind::Child, months, mouths, false};
}

child::Goal lunchTub()
{
    return {"g-fin-lunch-tub",
            "Opens his lunch tub at school",
            "opening his lunch tub",
            {"An adult opens it.", "Holds it steady with his left forearm. An adult lifts the lid.",
             "Holds it and lifts the lid with his right hand, after one reminder.",
             "Without a reminder, in the noise of the hall.",
             "Opens it and a friend's different tub."},
            -1,
            issueDay(),
            *dayFrom({2027, 3, 29}),
            {catalogue::Skill::Bil, catalogue::Skill::Str},
            {catalogue::LifeArea::OpeningThings}};
}

Family fin()
{
    return {"Fin",
            74,
            false,
            {{"h-fin",
              "Home",
              {adult("Ruth"), adult("Gregor"), adult("Gran Isobel")},
              nothingToAvoid(),
              {},
              {{"Ruth", Role::Parent}, {"Gran", Role::Caregiver}}}},
            standardBox(),
            {lunchTub()}};
}

Family rory()
{
    return {
        "Rory",
        68,
        false,
        {{"h-rory", "Home", {adult("Struan")}, nothingToAvoid(), {}, {{"Struan", Role::Parent}}}},
        standardBox(),
        {}};
}

Family anya()
{
    return {"Anya",
            66,
            false,
            {{"h-anya",
              "Home",
              {kid("Bartek", 66, Answer::No), adult("Marta"), adult("Piotr")},
              nothingToAvoid(),
              {},
              {{"Marta", Role::Parent, "pl"}, {"Piotr", Role::Parent}}}},
            standardBox(),
            {}};
}

Family nuala()
{
    return {"Nuala",
            49,
            false,
            {{"h-nuala",
              "Home",
              {adult("Shona")},
              nothingToAvoid({{"", "pets", "yes"}}),
              {},
              {{"Shona", Role::Parent}}}},
            standardBox(),
            {}};
}

Family lewis()
{
    return {"Lewis",
            52,
            false,
            {{"h-lewis",
              "Home",
              {kid("Mirren", 25, Answer::Yes), adult("Catriona")},
              nothingToAvoid({{"", "high-storage", "yes"}}),
              {{"small-when-away", "Mirren asleep or out; box on the high shelf"}},
              {{"Catriona", Role::Parent}}}},
            lewisBox(),
            {}};
}

Family oona()
{
    return {"Oona",
            106,
            false,
            {{"h-oona",
              "Home",
              {adult("Fionn"), adult("Eoin")},
              nothingToAvoid(),
              {},
              {{"Fionn", Role::Parent}, {"Eoin", Role::Parent}}}},
            standardBox(),
            {}};
}

Family mairead()
{
    return {
        "Mairead",
        113,
        true,
        {{"h-mairead", "Home", {adult("Peigi")}, nothingToAvoid(), {}, {{"Peigi", Role::Parent}}}},
        standardBox(),
        {}};
}

Family zoya()
{
    return {"Zoya",
            54,
            false,
            {{"h-zoya",
              "Home",
              {adult("Sana"), adult("Adeel")},
              nothingToAvoid(),
              {},
              {{"Sana", Role::Parent, "en"}, {"Adeel", Role::Parent, "ur"}}}},
            standardBox(),
            {}};
}

Family skye()
{
    return {"Skye",
            61,
            false,
            {{"h-skye",
              "Home",
              {adult("Lorna"), adult("Grandad Archie")},
              nothingToAvoid({{"", "likes-touch", "yes"}}),
              {},
              {{"Lorna", Role::Parent}, {"Grandad", Role::Guest}}}},
            standardBox(),
            {}};
}

/// One box, two homes; the second has a baby and a dog (scenario 12).
Family effie()
{
    return {"Effie",
            84,
            false,
            {{"h-effie-mum",
              "Mum's, Port Sheal",
              {adult("Kirsty")},
              nothingToAvoid(),
              {},
              {{"Kirsty", Role::Parent}}},
             {"h-effie-dad",
              "Dad's, Balnish",
              {kid("Jamie", 9, Answer::Yes), adult("Aaron")},
              nothingToAvoid({{"", "pets", "yes"}, {"", "high-storage", "yes"}}),
              {},
              {{"Aaron", Role::Parent}}}},
            standardBox(),
            {}};
}

} // namespace

Day dayOne()
{
    return *dayFrom({2027, 1, 11});
}

Day issueDay()
{
    return *dayFrom({2027, 1, 4});
}

std::map<ItemId, int> standardBox()
{
    return {{{"card"}, 1},     {{"lace"}, 1},    {{"pieces"}, 12}, {{"bands"}, 6}, {{"pegs"}, 6},
            {{"scissors"}, 1}, {{"crayons"}, 4}, {{"dough"}, 1},   {{"eyes"}, 6},  {{"ball"}, 1},
            {{"pompoms"}, 8},  {{"balloon"}, 3}, {{"dropper"}, 1}, {{"straw"}, 2}, {{"rband"}, 1}};
}

std::vector<Family> families()
{
    return {fin(), rory(), anya(), nuala(), lewis(), oona(), mairead(), zoya(), skye(), effie()};
}

} // namespace lidlark::usecase::island

#include "core/safety/room.h"

#include "core/safety/playing_child.h"

#include <algorithm>

namespace lidlark::safety {

namespace {

constexpr int underThreeMonths = 36;
constexpr int alwaysMouthsMonths = 24;

void admitTo(Company &company, const child::Person &person, Day today)
{
    const auto note = [&person](bool &fact, std::vector<std::string> &names) {
        fact = true;
        if (!person.alias.empty())
            names.push_back(person.alias);
    };
    if (isUnderThree(person, today))
        note(company.underThree, company.underThreeNames);
    if (isMouther(person, today))
        note(company.mouther, company.moutherNames);
}

bool isHere(const Room &room, const PersonId &person)
{
    return !room.present ||
           std::find(room.present->begin(), room.present->end(), person) != room.present->end();
}

bool isOnSheet(const child::HomeSheet *home, const PersonId &person)
{
    return home && std::any_of(home->people.begin(), home->people.end(),
                               [&person](const child::Person &row) { return row.id == person; });
}

} // namespace

bool isUnderThree(const child::Person &person, Day today)
{
    if (person.kind != child::PersonKind::Child)
        return false;
    return !person.age || person.age->youngestMonths(today) < underThreeMonths;
}

bool isMouther(const child::Person &person, Day today)
{
    if (person.pica || person.mouths == child::Answer::Yes)
        return true;
    if (!isUnderThree(person, today))
        return false;
    if (person.age && person.age->youngestMonths(today) < alwaysMouthsMonths)
        return true;
    return person.mouths != child::Answer::No;
}

Company companyIn(const Room &room, const child::HomeSheet *home, const child::Child &playing,
                  Day today)
{
    Company company;
    company.underThree = room.visitorUnderThree || (!home && !room.present);
    company.mouther = room.visitorMouther || (!home && !room.present);
    const child::Person player = playingChild(home, playing);
    admitTo(company, player, today);
    if (home) {
        for (const child::Person &person : home->people) {
            if (person.id != player.id && isHere(room, person.id))
                admitTo(company, person, today);
        }
    }
    if (room.present) {
        for (const PersonId &person : *room.present) {
            if (person != player.id && !isOnSheet(home, person))
                admitTo(company, child::Person{}, today);
        }
    }
    return company;
}

Company companyOfHome(const child::HomeSheet *home, const child::Child &playing, Day today)
{
    Company company;
    if (!home) {
        company.underThree = true;
        company.mouther = true;
        return company;
    }
    const child::Person player = playingChild(home, playing);
    for (const child::Person &person : home->people) {
        if (!person.visits)
            admitTo(company, person.id == player.id ? player : person, today);
    }
    return company;
}

} // namespace lidlark::safety

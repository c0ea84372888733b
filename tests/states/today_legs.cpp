#include "tests/states/leg.h"

namespace lidlark::test {

namespace {

void lookAtToday(Walk &walk)
{
    walk.see("today");
    walk.tap("Who is here");
    walk.see("room");
    walk.tap("Nobody else");
    walk.tap("A guest under three");
    walk.see("room-guest");
    walk.tap("A guest under three");
    walk.tap("That's");
    walk.see("today-room");
    walk.tap("Three others");
    walk.tap("#filter-quiet");
    walk.see("today-quiet");
    walk.tap("Everything");
    walk.see("everything");
    walk.write("#search", "scissors");
    walk.see("everything-found");
    walk.write("#search", "x");
    walk.see("everything-nothing");
}

void lookAtTheWeek(Walk &walk)
{
    walk.tap("The week ahead");
    walk.see("week");
    walk.tap("Wednesday");
    walk.see("week-day");
    walk.tap("Another one");
    walk.tap("Thursday");
    walk.tap("Leave it free");
    walk.tap("Today: ");
    walk.tap("Keep it here");
    walk.see("week-kept");
    walk.tap("Back to today");
    walk.see("today-planned");
}

void lookAway(Walk &walk)
{
    walk.tap("Away from home");
    walk.see("today-away");
    walk.tap("One hand");
    walk.tap("Someone is ill");
    walk.see("today-few");
}

/// No activity can be read: nothing is offered.
void lookAtNothing(Walk &walk)
{
    walk.see("today-nothing");
}

void lookAtOneBrokenPage(Walk &walk)
{
    walk.see("today-broken-page");
}

void lookElsewhere(Walk &walk)
{
    walk.see("today-box-elsewhere");
    walk.tap("Box");
    walk.see("box-elsewhere");
}

void spoilThePage(const QDir &folder)
{
    QFile page(folder.filePath(QStringLiteral("one-broken/activities/slow-oars.yaml")));
    if (page.open(QIODevice::WriteOnly))
        page.write("name: [Slow Oars\n  broken: {");
}

} // namespace

void addTodayLegs(std::vector<Leg> &legs)
{
    legs.push_back({"Today", "fresh/fin-ruth.lidlark", "today", firstEvening, lookAtToday});
    legs.push_back({"The week", "fresh/skye-lorna.lidlark", "week", firstEvening, lookAtTheWeek});
    legs.push_back({"Away", "fresh/oona-eoin.lidlark", "away", firstEvening, lookAway});
    legs.push_back({"No catalogue", "fresh/fin-ruth.lidlark", "nothing", firstEvening,
                    lookAtNothing, nullptr, false, "nowhere"});
    legs.push_back({"One page broken", "fresh/fin-ruth.lidlark", "broken-page", firstEvening,
                    lookAtOneBrokenPage, spoilThePage, false, "one-broken"});
    legs.push_back({"Another home", "lived/effie-aaron.lidlark", "aaron", "2027-01-20T17:30:00Z",
                    lookElsewhere});
}

} // namespace lidlark::test

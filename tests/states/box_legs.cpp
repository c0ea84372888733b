#include "tests/states/leg.h"

#include "tests/tour/meeting.h"

namespace lidlark::test {

namespace {

void useAnEyeUp(Walk &walk, const char *activity)
{
    walk.tap("Everything");
    walk.tap(activity);
    walk.tap("Stop here");
    walk.tap("Something's different");
    walk.tap("Stick-on eyes: used up");
    walk.tap("The rest is back");
}

void ruthUsesAnEyeUp(Walk &walk)
{
    useAnEyeUp(walk, "Hidden Harbour Lights");
}

void granUsesAnEyeUp(Walk &walk)
{
    useAnEyeUp(walk, "Dough Forecast");
}

void ruthAndGranMeet(const QDir &folder)
{
    letMeet(folder.filePath(QStringLiteral("ruth")), folder.filePath(QStringLiteral("gran")),
            "2027-01-11T20:00:00Z");
}

void readTheQuestion(Walk &walk)
{
    walk.tap("Box");
    walk.see("box-question");
    walk.tap("#well-eyes");
    walk.see("item-question");
}

void tendTheBox(Walk &walk)
{
    walk.tap("Box");
    walk.see("box");
    walk.tap("dough, 1");
    walk.see("item");
    walk.tap("Opened: a week ago");
    walk.see("item-opened");
    walk.tap("Back");
    walk.tap("pegs, 6");
    walk.tap("Something is gone");
    walk.see("item-what-became");
    walk.tap("What became of it?: broken");
    walk.tap("Note it");
    walk.see("item-gone");
    walk.tap("It was in a mouth");
    walk.see("item-mouthed");
    walk.tap("Back");
    walk.see("box-to-wash");
    walk.tap("What to ask for");
    walk.see("requests-nothing");
}

void dryOut(Walk &walk)
{
    walk.tap("Everything");
    walk.tap("Crumb Counter");
    walk.tap("Stop here");
    walk.tap("Something's different");
    walk.tap("Dough: dried out");
    walk.see("dried-out");
    walk.tap("Try to rescue it");
    walk.see("rescue");
    walk.tap("Still hard");
    walk.see("today-thrown-away");
    walk.tap("Box");
    walk.see("box-asked");
    walk.tap("What to ask for");
    walk.see("requests");
    walk.tap("Dough: It has come");
    walk.see("requests-come");
}

void countItAll(Walk &walk)
{
    walk.tap("Box");
    walk.tap("Count it all");
    walk.see("count");
    walk.tap("One by one");
    walk.see("count-one-unsaid");
    walk.tap("One more:");
    walk.tap("One more:");
    walk.see("count-one");
    walk.tap("Back");
    walk.tap("Count it all");
    walk.tap("One less: stick-on eyes");
    walk.tap("That's what is here");
    walk.see("count-result");
}

void seeTheBoxLived(Walk &walk)
{
    walk.tap("Box");
    walk.see("box-lived");
    walk.tap("Not here");
    walk.see("box-not-here");
    walk.tap("Notebook");
    walk.see("notebook-lived");
    walk.tap("Today");
    walk.see("today-box-not-here");
}

} // namespace

void addBoxLegs(std::vector<Leg> &legs)
{
    legs.push_back(
        {"Ruth plays", "fresh/fin-ruth.lidlark", "ruth", "2027-01-11T18:10:00Z", ruthUsesAnEyeUp});
    legs.push_back(
        {"Gran plays", "fresh/fin-gran.lidlark", "gran", "2027-01-11T19:05:00Z", granUsesAnEyeUp});
    legs.push_back({"One question", nullptr, "ruth", "2027-01-11T20:10:00Z", readTheQuestion,
                    ruthAndGranMeet});
    legs.push_back({"The box", "fresh/nuala-shona.lidlark", "box", firstEvening, tendTheBox});
    legs.push_back({"Dried out", "fresh/nuala-shona.lidlark", "dried", firstEvening, dryOut});
    legs.push_back({"A count", "fresh/fin-ruth.lidlark", "count", firstEvening, countItAll});
    legs.push_back({"Nine days on", "lived/fin-ruth.lidlark", "lived", "2027-01-20T17:30:00Z",
                    seeTheBoxLived});
}

} // namespace lidlark::test

#include "tests/states/leg.h"

#include "mobile/bridge/appearance.h"

namespace lidlark::test {

namespace {

void askForTheKite(Walk &walk)
{
    walk.tap("Kite: not asked");
    walk.see("kite");
    walk.tap("Flying steady");
    walk.see("kite-thanks");
    walk.set("everyKite", true);
    walk.see("kite-every");
    walk.hold("adult: hold");
    walk.see("today-steady");
    walk.tap("Fin chooses");
    walk.see("choose");
    walk.tap("#choice-");
    walk.see("choose-picked");
    walk.hold("adult: hold");
    walk.see("play-after-kite");
    walk.tap("Stop here");
    walk.see("putback-after-kite");
    walk.tap("Done");
    walk.see("noticed-kite");
    walk.tap("What is the kite doing now");
    walk.see("kite-after");
    walk.tap("Tugging");
    walk.see("kite-before-and-now");
}

void askAloud(Walk &walk)
{
    walk.graph().appearance().setKiteAloud(true);
    walk.tap("Kite: not asked");
    walk.see("kite-aloud");
    walk.hold("adult: hold");
    walk.tap("Fin chooses");
    walk.see("choose-aloud");
    walk.hold("adult: hold");
    walk.tap("Everything");
    walk.tap("Hidden Harbour Lights");
    walk.see("play-aloud");
    walk.tap("Stop here");
    walk.see("putback-aloud");
}

void askWithOneSwitch(Walk &walk)
{
    walk.graph().appearance().setSwitches(1);
    walk.graph().appearance().setScanSeconds(5);
    walk.tap("Kite: not asked");
    walk.see("kite-one-switch");
}

void showClouds(Walk &walk)
{
    walk.tap("My own guess");
    walk.see("guess");
    walk.tap("Resting");
    Hand::settle(800); // goes on by itself
    walk.see("today-guess");
    walk.tap("Kite: not asked");
    walk.tap("Clouds");
    Hand::settle(700);
    walk.hold("adult: hold");
    walk.see("together");
    walk.tap("And then?");
    walk.tap("And then?");
    walk.tap("And then?");
    walk.see("together-small-skill");
    walk.tap("Four kite breaths");
    walk.see("breaths");
    walk.set("half", 8);
    walk.see("breaths-over");
    walk.tap("Go on");
    walk.tap("Choose something");
    walk.see("today-clouds");
    walk.tap("Clouds");
    walk.tap("I need a grown-up");
    walk.see("grown-up");
}

void notNow(Walk &walk)
{
    walk.tap("Kite: not asked");
    walk.hold("adult: hold");
}

void waitInTheCorner(Walk &walk)
{
    notNow(walk);
    walk.see("today-kite-in-corner");
    walk.tap("Everything");
    walk.tap("Torn-Paper Coast");
    walk.see("play-kite-in-corner");
}

} // namespace

void addKiteLegs(std::vector<Leg> &legs)
{
    legs.push_back({"The kite", "fresh/fin-ruth.lidlark", "kite", firstEvening, askForTheKite});
    legs.push_back({"The kite aloud", "fresh/fin-ruth.lidlark", "aloud", firstEvening, askAloud,
                    nullptr, true});
    legs.push_back(
        {"One switch", "fresh/fin-ruth.lidlark", "switch", firstEvening, askWithOneSwitch});
    legs.push_back({"Clouds", "fresh/fin-ruth.lidlark", "clouds", firstEvening, showClouds});
    legs.push_back({"Not now", "fresh/fin-ruth.lidlark", "corner", firstEvening, notNow});
    legs.push_back({"Not now again", nullptr, "corner", "2027-01-12T18:25:00Z", notNow});
    legs.push_back({"The corner", nullptr, "corner", "2027-01-13T18:25:00Z", waitInTheCorner});
}

} // namespace lidlark::test

#include "tests/states/leg.h"

namespace lidlark::test {

namespace {

void nobodyElse(Walk &walk)
{
    walk.tap("Who is here");
    walk.tap("Nobody else");
    walk.tap("Right beside");
    walk.tap("That's");
}

void playHiddenLights(Walk &walk)
{
    nobodyElse(walk);
    walk.tap("Everything");
    walk.tap("Hidden Harbour Lights");
    walk.see("play");
    walk.tap("More about this");
    walk.see("play-more");
    walk.tap("Next step");
    walk.tap("Easier");
    walk.see("play-easier");
    walk.set("quiet", true);
    walk.see("play-quiet");
    walk.set("quiet", false);
    walk.tap("Next step");
    walk.see("play-later-step");
    walk.tap("Stop here");
    walk.see("putback");
    for (int eye = 0; eye < 5; ++eye)
        walk.tap("Stick-on eyes");
    walk.tap("Dough");
    walk.see("putback-tray");
    walk.tap("Lid");
    walk.see("putback-lid");
    walk.tap("Something's different");
    walk.see("different");
    walk.tap("Stick-on eyes: used up");
    walk.tap("Dough: It was left open");
    walk.tap("Dough: It was in a mouth");
    walk.see("different-said");
    walk.tap("The rest is back");
    walk.see("noticed");
    walk.tap("Found own way");
    walk.see("noticed-phrase");
    walk.tap("Done");
    walk.see("today-after");
    walk.tap("Notebook");
    walk.see("notebook-one");
}

void lookFirst(Walk &walk)
{
    nobodyElse(walk);
    walk.tap("Everything");
    walk.tap("Slow Oars");
    walk.see("play-look-first");
}

/// A guest under three: the eyes are exchanged for something larger.
void playWithASwap(Walk &walk)
{
    walk.tap("Who is here");
    walk.tap("A guest under three");
    walk.tap("That's");
    walk.tap("Everything");
    walk.see("everything-guest");
    walk.tap("Hidden Harbour Lights");
    walk.see("play-swap");
}

void playAway(Walk &walk)
{
    walk.tap("Everything");
    walk.tap("Torn-Paper Coast");
    walk.tap("Stop here");
    walk.see("putback-nothing");
}

void beginAndDie(Walk &walk)
{
    walk.tap("Everything");
    walk.tap("Torn-Paper Coast");
}

void comeBack(Walk &walk)
{
    walk.see("resume");
}

} // namespace

void addPlayLegs(std::vector<Leg> &legs)
{
    legs.push_back({"A play", "fresh/fin-ruth.lidlark", "play", firstEvening, playHiddenLights});
    legs.push_back({"Look first", "fresh/fin-ruth.lidlark", "look", firstEvening, lookFirst});
    legs.push_back({"A swap", "fresh/fin-ruth.lidlark", "swap", firstEvening, playWithASwap});
    legs.push_back(
        {"Nothing of the box", "fresh/fin-ruth.lidlark", "no-box", firstEvening, playAway});
    legs.push_back({"It died", "fresh/oona-eoin.lidlark", "died", firstEvening, beginAndDie});
    legs.push_back({"Come back", nullptr, "died", "2027-01-12T09:00:00Z", comeBack});
}

} // namespace lidlark::test

#include "tests/states/leg.h"

#include "mobile/bridge/play_in_hand.h"

namespace lidlark::test {

namespace {

void loseASmallPart(Walk &walk)
{
    walk.tap("Who is here");
    walk.tap("Nobody else");
    walk.tap("Right beside");
    walk.tap("That's");
    walk.tap("Everything");
    walk.tap("Hidden Harbour Lights");
    walk.see("play-small-child");
    walk.tap("Stop here");
    walk.see("putback-count-first");
    for (int eye = 0; eye < 4; ++eye)
        walk.tap("Stick-on eyes:");
    walk.tap("Something's different");
    walk.see("different-count-first");
    walk.tap("Stick-on eyes: lost");
    walk.tap("2");
    walk.see("different-lost");
    walk.tap("The rest is back");
    walk.see("floor");
    walk.tap("Stick-on eyes: 1 found");
    walk.see("floor-one-found");
    walk.tap("May have swallowed");
    walk.see("emergency");
    walk.tap("Something was swallowed");
    walk.see("emergency-swallowed");
}

void burstABalloon(Walk &walk)
{
    walk.tap("Everything");
    walk.tap("Slow-Sky Taps");
    walk.see("play-balloon");
    walk.tap("It burst");
    walk.see("burst");
    walk.tap("Can't find a piece");
    walk.see("floor-balloon");
    walk.tap("Floor checked");
    walk.see("putback-after-burst");
}

void seeTheFloorNote(Walk &walk)
{
    walk.see("today-floor");
    walk.tap("Box");
    walk.see("box-floor");
}

void clearTheHouseOfLatex(Walk &walk)
{
    walk.tap("Crew");
    walk.tap("Home sheet");
    walk.tap("Yes: Must anyone here avoid latex");
    walk.see("take-out");
    walk.tap("Rubber bands: Taken out");
    walk.see("take-out-one");
    walk.tap("The rest later");
    walk.see("home-sheet-latex");
    walk.tap("Back");
    walk.tap("Today");
    walk.see("today-must-leave");
    walk.tap("Box");
    walk.see("box-must-leave");
}

void readABrokenStore(Walk &walk)
{
    walk.see("problem-store");
    walk.tap("Try again");
    walk.see("problem-again");
}

void readAWrongClock(Walk &walk)
{
    walk.see("problem-clock");
}

void failToKeep(Walk &walk)
{
    walk.tap("Everything");
    walk.tap("Torn-Paper Coast");
    // What a full disk would say (tests/tour/tst_trouble_on_screen.cpp fills one).
    emit walk.graph().playInHand().failed(QCoreApplication::translate(
        "core", "The phone could not save: the storage is full, or may not "
                "be written. Nothing that was kept before is lost. Make "
                "some room, then try again."));
    Hand::settle();
    walk.see("play-failed");
}

void writeABrokenStore(const QDir &folder)
{
    QFile file(folder.filePath(QStringLiteral("broken")));
    if (file.open(QIODevice::WriteOnly))
        file.write(QByteArray("\xff\xd8\xff\xe0 not a store").repeated(500));
}

} // namespace

void addTroubleLegs(std::vector<Leg> &legs)
{
    legs.push_back({"Lost", "fresh/lewis-catriona.lidlark", "lost", firstEvening, loseASmallPart});
    legs.push_back({"Lost still", nullptr, "lost", "2027-01-12T18:25:00Z", seeTheFloorNote});
    legs.push_back({"A burst", "fresh/fin-ruth.lidlark", "burst", firstEvening, burstABalloon});
    legs.push_back(
        {"No latex", "fresh/anya-marta.lidlark", "latex", firstEvening, clearTheHouseOfLatex});
    legs.push_back(
        {"Broken", nullptr, "broken", firstEvening, readABrokenStore, writeABrokenStore});
    legs.push_back(
        {"No clock", "fresh/fin-ruth.lidlark", "clock", "1970-01-01T00:03:00Z", readAWrongClock});
    legs.push_back({"A full disk", "fresh/fin-ruth.lidlark", "full", firstEvening, failToKeep});
}

} // namespace lidlark::test

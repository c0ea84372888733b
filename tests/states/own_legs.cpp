#include "tests/states/leg.h"

#include "mobile/bridge/appearance.h"

namespace lidlark::test {

namespace {

void loseAPeg(Walk &walk)
{
    walk.tap("Box");
    walk.tap("pegs, 6");
    walk.tap("Something is gone");
    walk.tap("What became of it?: lost");
    walk.tap("Note it");
    walk.see("item-just-noted");
    walk.tap("Take back");
    walk.see("item-taken-back");
    walk.tap("Back");
    walk.tap("Noted today");
    walk.see("noted");
}

void writeOurWay(Walk &walk)
{
    walk.tap("Everything");
    walk.tap("Torn-Paper Coast");
    walk.tap("Write down your own way");
    walk.see("play-our-way-asked");
    walk.write("Our way, in one line", "With old newspaper");
    walk.tap("Keep our way");
    walk.see("play-our-way");
}

void keepNotes(Walk &walk)
{
    walk.tap("Notebook");
    walk.tap("Notes of your own");
    walk.see("own-notes-empty");
    walk.write("A note for yourself", "Ask about scissors");
    walk.tap("Keep this note");
    walk.tap("Better in a quieter place");
    walk.see("own-notes");
}

void setAReminder(Walk &walk)
{
    walk.tap("Crew");
    walk.tap("Settings");
    walk.tap("One quiet reminder a day");
    walk.see("settings-reminder");
    walk.tap("Our own words");
    walk.see("settings-reminder-own");
}

void findAThing(Walk &walk)
{
    walk.tap("Everything");
    walk.write("#search", "ball");
    walk.see("everything-things");
}

void writeWithSwitches(Walk &walk)
{
    walk.graph().appearance().setSwitches(2);
    walk.see("today-switches");
    walk.tap("Everything");
    walk.tap("#search");
    walk.see("everything-letters");
}

} // namespace

void addOwnLegs(std::vector<Leg> &legs)
{
    legs.push_back({"Taken back", "fresh/fin-ruth.lidlark", "slip", firstEvening, loseAPeg});
    legs.push_back({"Our way", "fresh/fin-ruth.lidlark", "way", firstEvening, writeOurWay});
    legs.push_back({"Own notes", "fresh/fin-ruth.lidlark", "notes", firstEvening, keepNotes});
    legs.push_back(
        {"A reminder", "fresh/fin-ruth.lidlark", "reminder", firstEvening, setAReminder});
    legs.push_back({"A thing", "fresh/fin-ruth.lidlark", "thing", firstEvening, findAThing});
    legs.push_back(
        {"Two switches", "fresh/fin-ruth.lidlark", "switches", firstEvening, writeWithSwitches});
}

} // namespace lidlark::test

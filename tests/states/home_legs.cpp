#include "tests/states/leg.h"

#include "core/usecase/set_up_home.h"
#include "tests/support/phone.h"

namespace lidlark::test {

namespace {

void setUpHome(Walk &walk)
{
    walk.see("welcome");
    walk.write("#childName", "Kit");
    walk.tap("4");
    walk.see("welcome-age");
    walk.tap("Go on");
    walk.see("welcome-home");
    walk.write("#adultName", "Ada");
    walk.write("#otherName", "Bo");
    walk.see("welcome-another");
    walk.tap("2");
    walk.tap("Yes");
    walk.tap("Add Bo");
    walk.see("welcome-added");
    walk.tap("Go on");
    walk.see("welcome-away");
    walk.tap("Go on");
    walk.see("welcome-box");
    walk.tap("Begin");
    walk.see("today-new-home");
}

/// A home whose lid list says that nothing lies in the box.
void setUpWithNothing(const QDir &folder)
{
    auto database = store::Database::open(folder.filePath(QStringLiteral("new")).toStdString());
    StillClock clock(islandTime(11, 18, 0));
    SeededEntropy entropy("nothing");
    usecase::Workplace workplace{*database, realCatalogue(), clock, entropy, {}};
    usecase::FirstAnswers answers;
    answers.childAlias = "Al";
    answers.adultAlias = "Jo";
    (void)usecase::setUpHome(workplace, answers);
}

void seeTheCrew(Walk &walk)
{
    walk.tap("Crew");
    walk.see("crew");
    walk.tap("Home sheet");
    walk.see("home-sheet");
    walk.write("#emergencyNumber", "112");
    walk.tap("Keep this number: Emergency");
    walk.write("#poisonLine", "x1");
    walk.tap("Keep this number: Poison");
    walk.see("home-sheet-refused");
    walk.tap("Back");
    walk.tap("Settings");
    walk.see("settings");
    walk.tap("Forget every kite");
    walk.see("settings-forget");
    walk.tap("Forget them");
    walk.see("settings-forgotten");
    walk.tap("Back");
    walk.tap("Today");
    walk.tap("Everything");
    walk.tap("Torn-Paper Coast");
    walk.tap("Something is wrong");
    walk.see("emergency-number");
}

void seeAnEmptyBox(Walk &walk)
{
    walk.see("today-empty-box");
    walk.tap("Box");
    walk.see("box-empty");
    walk.tap("Notebook");
    walk.see("notebook-empty");
}

void seeTheVoiceSettings(Walk &walk)
{
    walk.tap("Crew");
    walk.tap("Settings");
    walk.see("settings-aloud");
}

} // namespace

void addHomeLegs(std::vector<Leg> &legs)
{
    legs.push_back({"A new home", nullptr, "welcome", firstEvening, setUpHome});
    legs.push_back(
        {"Nothing in the box", nullptr, "new", firstEvening, seeAnEmptyBox, setUpWithNothing});
    legs.push_back({"The crew", "fresh/rory-struan.lidlark", "crew", firstEvening, seeTheCrew});
    legs.push_back({"Settings with a voice", "fresh/fin-ruth.lidlark", "voice", firstEvening,
                    seeTheVoiceSettings, nullptr, true});
}

std::vector<Leg> everyLeg()
{
    std::vector<Leg> legs;
    addHomeLegs(legs);
    addTodayLegs(legs);
    addKiteLegs(legs);
    addPlayLegs(legs);
    addTroubleLegs(legs);
    addBoxLegs(legs);
    addFamiliesLegs(legs);
    addOwnLegs(legs);
    addCrewLegs(legs);
    addWorkbenchLegs(legs);
    addPackingLegs(legs);
    addBuyingLegs(legs);
    addWritingLegs(legs);
    return legs;
}

} // namespace lidlark::test

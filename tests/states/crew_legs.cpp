#include "tests/states/leg.h"

#include "core/base/instant.h"
#include "core/sync/consent.h"
#include "core/sync/found_crew.h"
#include "core/sync/kept_place.h"
#include "core/sync/leave.h"
#include "core/sync/let_in.h"
#include "core/sync/secret_file.h"
#include "core/sync/share.h"
#include "core/sync/sharing_state.h"
#include "tests/support/phone.h"

namespace lidlark::test {

namespace {

constexpr auto finsBox = "b-fin";

crew::Member newcomer(const std::string &person, crew::Role role, std::optional<Day> until)
{
    SeededEntropy entropy("member " + person);
    return sync::memberOf({{"d-" + person}, person, role, {"h-fin"}, until},
                          sync::freshSecret(entropy));
}

/// Fin's crew: Ruth, whose phone this is, Gran, and for a week Archie. All was shared at tea-time.
void layOutACrew(const QDir &folder)
{
    const std::string store = folder.filePath(QStringLiteral("crewed")).toStdString();
    QFile::remove(QString::fromStdString(store + ".keys"));
    auto database = store::Database::open(store);
    StillClock clock(*msFromText(firstEvening));
    SeededEntropy entropy("crew");
    sync::SecretFile keeper(store + ".keys");
    (void)store::DeviceRepository(*database).setLocalState("crew.keys", "file");
    auto opened = sync::openPost(*database, clock, entropy, keeper);
    (void)sync::foundCrew(opened->post, finsBox);
    const Day today = dayPartAt(clock.nowMs(), 0).day;
    (void)sync::letIn(opened->post, finsBox, newcomer("Gran", crew::Role::Caregiver, std::nullopt));
    (void)sync::letIn(opened->post, finsBox, newcomer("Archie", crew::Role::Guest, today + 6));
    (void)sync::keepPlace(*database, keeper, {"/tmp", "", ""});
    (void)sync::consentToSharing(*database, {"Ruth", today, sync::consentWording});
    (void)sync::noteShared(*database, islandTime(11, 16, 10));
}

/// The same, and Ruth's phone has been taken out since.
void takeRuthOut(const QDir &folder)
{
    layOutACrew(folder);
    const std::string store = folder.filePath(QStringLiteral("crewed")).toStdString();
    auto database = store::Database::open(store);
    StillClock clock(*msFromText(firstEvening));
    SeededEntropy entropy("out");
    sync::SecretFile keeper(store + ".keys");
    auto opened = sync::openPost(*database, clock, entropy, keeper);
    (void)sync::leave(opened->post, finsBox);
}

void seeItIsOut(Walk &walk)
{
    walk.tap("Crew");
    walk.see("crew-outside");
    walk.tap("#comeIn");
    walk.see("join-anew");
}

void seeASharedBox(Walk &walk)
{
    walk.tap("Crew");
    walk.see("crew-shared");
    walk.tap("#remove-Gran");
    walk.see("remove");
    walk.tap("Back to the crew");
    walk.tap("#sharedPlace");
    walk.see("shared-place-agreed");
    walk.tap("Back to the crew");
    walk.tap("#handOver");
    walk.see("hand-over");
    walk.tap("Back to the crew");
    walk.tap("#letIn");
    walk.tap("#part-guest");
    walk.see("let-in-whom");
    walk.tap("Make a code");
    walk.waitFor("#codeSquares");
    walk.see("let-in-code");
}

void letSomebodyIn(Walk &walk)
{
    walk.tap("Crew");
    walk.tap("#letIn");
    walk.see("let-in-no-place");
    walk.tap("#choosePlace");
    walk.see("shared-place");
    walk.write("#placeAddress", "/nowhere");
    walk.tap("Try it out");
    walk.waitFor("#placeBars");
    walk.see("shared-place-bars");
}

void lookAround(Walk &walk)
{
    walk.tap("Crew");
    walk.tap("#sees");
    walk.see("sees");
    walk.tap("Back to the crew");
    walk.tap("#aboutMe");
    walk.see("about-me");
}

void join(Walk &walk)
{
    walk.tap("#haveACode");
    walk.see("join-code");
    walk.write("#codeTyped", "chess bzz polka ");
    walk.see("join-code-help");
    walk.set("looking", true);
    walk.waitFor("#cameraProblem");
    walk.see("join-camera");
}

} // namespace

void addCrewLegs(std::vector<Leg> &legs)
{
    legs.push_back(
        {"Letting somebody in", "fresh/fin-ruth.lidlark", "let-in", firstEvening, letSomebodyIn});
    legs.push_back(
        {"A crew", "fresh/fin-ruth.lidlark", "crewed", firstEvening, seeASharedBox, layOutACrew});
    legs.push_back({"Out of the crew", "fresh/fin-ruth.lidlark", "crewed", firstEvening, seeItIsOut,
                    takeRuthOut});
    legs.push_back({"Who sees what", "fresh/fin-ruth.lidlark", "sees", firstEvening, lookAround,
                    nullptr, true});
    legs.push_back({"Joining", nullptr, "join", firstEvening, join});
}

} // namespace lidlark::test

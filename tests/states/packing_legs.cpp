#include "tests/states/leg.h"

#include "core/usecase/agree_goal.h"
#include "core/usecase/end_goal.h"
#include "core/usecase/issue_box.h"
#include "core/usecase/keep_build.h"
#include "core/usecase/keep_design.h"
#include "core/usecase/keep_supply.h"
#include "core/usecase/pack_box.h"
#include "core/usecase/rate_goal.h"
#include "core/usecase/tend_box.h"
#include "core/usecase/video_session.h"
#include "tests/states/on_phone.h"

namespace lidlark::test {

namespace {

constexpr const char *packingDay = "2027-01-12T09:00:00Z";

workbench::KeptBox boxOf(const char *code, const char *whose, const workbench::Design &design)
{
    return {{code, whose, design.id, design.parts}, {}, false};
}

void buy(usecase::Workplace &morven, const char *item, const char *name, int pieces, int pence)
{
    workbench::KeptSupply kept;
    kept.supply = {{item}, name, {{"Harbour Stores", pieces, pence, ""}}, 0, true};
    kept.lot = "L 2306-a";
    (void)usecase::keepSupply(morven, kept);
}

/// Four boxes: one came back, one is packed, one cuts with the left hand, one is for a home without
/// latex. Shop and prices are invented.
void layOutABuild(usecase::Workplace &morven)
{
    buy(morven, "bands", "rubber bands", 100, 160);
    buy(morven, "loops", "silicone loops", 50, 290);
    buy(morven, "dough", "dough", 12, 600);
    buy(morven, "scissors", "scissors", 12, 960);
    workbench::Design design{
        {}, "Standard", {{{"bands"}, 6, {}}, {{"dough"}, 1, {}}, {{"scissors"}, 1, {}}}};
    design.id = *usecase::keepDesign(morven, design);
    const auto build =
        *usecase::startBuild(morven, {{}, "January boxes", *dayFrom({2027, 1, 12}), "GBP", 10, {}});
    workbench::KeptBox left = boxOf("K3", "Rory", design);
    left.personal.hand = workbench::Hand::Left;
    workbench::KeptBox latexFree = boxOf("K4", "Anya", design);
    latexFree.box.parts[0] = {{"loops"}, 6, {"bands"}};
    latexFree.personal.avoids = {child::Avoided::Latex};
    for (const workbench::KeptBox &box :
         {boxOf("K1", "Oona", design), boxOf("K2", "Skye", design), left, latexFree})
        (void)usecase::keepBox(morven, build, box);
    for (const char *code : {"K1", "K2"}) {
        for (const workbench::BoxPart &part : design.parts)
            (void)usecase::packLine(morven, {build, code, part.item},
                                    part.item == ItemId{"scissors"} ? workbench::Hand::Right
                                                                    : workbench::Hand::Unsaid);
    }
    (void)usecase::packLine(morven, {build, "K4", {"loops"}});
    (void)usecase::issuePackedBox(morven, build, "K1");
    (void)usecase::takeBoxBack(morven, "K1");
}

/// A goal that got other words, and ended.
void endAGoal(usecase::Workplace &morven)
{
    goals::GoalDraft coat;
    coat.words = "Does up his coat before break";
    coat.levels = {"An adult does it up.", "Holds the edges, an adult pulls the zip.",
                   "Pulls the zip up once an adult has joined it.", "Joins and pulls it indoors.",
                   "Joins and pulls it outside, with the others waiting."};
    coat.baseline = -2;
    coat.reviewOn = *dayFrom({2027, 3, 29});
    coat.lifeAreas = {catalogue::LifeArea::Dressing, catalogue::LifeArea::GettingReady};
    const auto goal = usecase::agreeGoal(morven, "Fin", coat);
    (void)usecase::rateGoal(morven, "Fin", {*goal, 0, goals::RatedBy::Together, "", {}});
    coat.levels[4] = "Joins and pulls it outside, and helps a friend.";
    coat.baseline = 1;
    coat.reason = "He does it every day by now, and wants to help.";
    (void)usecase::rewordGoal(morven, "Fin", *goal, coat);
    (void)usecase::endGoal(morven, "Fin", {*goal, goals::Turn::Reached, "All week, at school."});
}

void layOutTheBench(const QDir &folder)
{
    onPhone(
        folder.filePath(QStringLiteral("packing")), islandTime(12, 8, 0),
        [](usecase::Workplace &morven) {
            layOutABuild(morven);
            const char *tub = "g-fin-lunch-tub";
            (void)usecase::rateGoal(morven, "Fin", {tub, 1, goals::RatedBy::Family, "Ruth", {}});
            (void)usecase::rateGoal(morven, "Fin", {tub, 0, goals::RatedBy::Together, "", {}});
            endAGoal(morven);
        });
}

/// What Peigi's phone holds once Morven has planned the session of scenario 7.
void sendPeigiThePlan(const QDir &folder)
{
    const QString morvens = folder.filePath(QStringLiteral("have-ready-morven"));
    QFile::remove(morvens);
    const QDir island(folder.filePath(QStringLiteral("../fresh")));
    QFile::copy(island.filePath(QStringLiteral("morven.lidlark")), morvens);
    onPhone(morvens, islandTime(18, 10, 0), [](usecase::Workplace &morven) {
        const Day monday = *dayFrom({2027, 1, 25});
        const auto choices = usecase::videoChoices(morven, "Mairead", monday);
        workbench::VideoPlan plan;
        plan.day = monday;
        plan.minuteOfDay = 615;
        for (const rotation::ArcPart &part : choices->suggested.parts)
            plan.activities.push_back(part.offer.admitted.activity().id);
        plan.spares = {choices->suggested.spare->admitted.activity().id};
        (void)usecase::planVideo(morven, "Mairead", plan);
    });
    onPhone(folder.filePath(QStringLiteral("have-ready")), islandTime(24, 18, 0),
            [&morvens](usecase::Workplace &peigi) {
                auto source = store::Database::open(morvens.toStdString());
                (void)usecase::takeEventsFrom(*source, peigi, [](const journal::Lane &lane) {
                    return lane.kind == journal::LaneKind::Box && lane.scope == "b-mairead";
                });
            });
}

void lookAtGoalsAndPrints(Walk &walk)
{
    walk.tap("#child-Fin");
    walk.tap("#goals");
    walk.see("goals");
    walk.tap("How is it going?");
    walk.see("goal-rating");
    walk.tap("Back");
    walk.tap("Does up his coat before break");
    walk.see("goal-ended");
    walk.tap("Back");
    walk.tap("The whole goal");
    walk.tap("End this goal");
    walk.see("goal-ending");
    walk.tap("Back");
    walk.tap("Back");
    walk.tap("Numbers, for therapists");
    walk.see("goal-numbers");
    walk.tap("Back");
    walk.tap("Agree on a goal");
    walk.tap("Look it over");
    walk.see("goal-writing-missing");
    walk.tap("Back");
    walk.tap("Back");
    walk.tap("#prints");
    walk.see("prints");
    walk.tap("Back to the box");
    walk.tap("Back to the workbench");
}

void lookAtTheVideoPlan(Walk &walk)
{
    walk.tap("#child-Mairead");
    walk.tap("#video");
    walk.see("video-plan");
    walk.tap("Plan it");
    walk.tap("Open it");
    walk.see("video-session");
    walk.tap("Done");
    walk.tap("Back");
    walk.tap("Back to the workbench");
}

void lookAtTheBench(Walk &walk)
{
    lookAtGoalsAndPrints(walk);
    lookAtTheVideoPlan(walk);
    walk.tap("#packing");
    walk.tap("January boxes");
    walk.see("packing");
    walk.tap("#box-K4");
    walk.see("pack-box-special");
    walk.tap("Back");
    walk.tap("Pack item by item");
    walk.tap("Next thing");
    walk.tap("Next thing");
    walk.see("pack-item");
    walk.tap("Back");
    walk.tap("#print-pack-list");
    walk.see("print-pack-list");
    walk.tap("Back to the packing table");
    walk.tap("#tendWanted");
    walk.see("tend");
    walk.tap("Back");
    walk.tap("#recallWanted");
    walk.write("Lot, as it is printed", "l2306A");
    walk.tap("Look for it");
    walk.see("recall");
}

void lookAtWhatToHaveReady(Walk &walk)
{
    walk.tap("Video session: have ready");
    walk.see("have-ready");
}

} // namespace

void addPackingLegs(std::vector<Leg> &legs)
{
    legs.push_back({"The therapist's own pages", "fresh/morven.lidlark", "packing", packingDay,
                    lookAtTheBench, layOutTheBench});
    legs.push_back({"To have ready", "fresh/mairead-peigi.lidlark", "have-ready",
                    "2027-01-24T18:05:00Z", lookAtWhatToHaveReady, sendPeigiThePlan});
}

} // namespace lidlark::test

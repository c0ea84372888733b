#include "tests/states/leg.h"

#include "core/usecase/own_entries.h"
#include "tests/states/on_phone.h"
#include "tests/support/own_samples.h"

namespace lidlark::test {

namespace {

/// On Morven's desk: a thing that is ready, a play with it, and another of which nobody wrote how
/// it comes home.
void layOnTheDesk(const QDir &folder)
{
    onPhone(folder.filePath(QStringLiteral("writing")), islandTime(12, 10, 0),
            [](usecase::Workplace &morven) {
                (void)usecase::keepOwnItem(morven, "own-bobbins", yamlOf(bobbins()));
                (void)usecase::publishOwnItem(morven, realCatalogue(), "own-bobbins");
                catalogue::Activity road = bobbinRoad();
                catalogue::Activity ferry = road;
                ferry.id = {"own-bobbin-ferry"};
                ferry.entry = ferry.id.value;
                ferry.name = "Bobbin Ferry";
                (void)usecase::keepOwnActivity(morven, ferry.id.value, yamlOf(ferry));
                road.putBack.clear();
                (void)usecase::keepOwnActivity(morven, road.id.value, yamlOf(road));
            });
}

void writeAnActivity(Walk &walk)
{
    walk.tap("#ownActivities");
    walk.see("own-activities");
    walk.tap("Bobbin Road");
    walk.see("own-activity");
    walk.tap("Open: What it is played with");
    walk.see("own-activity-things");
    walk.tap("Open: Easier and harder");
    walk.see("own-activity-gradings");
    walk.tap("Back; it is kept");
    walk.tap("Bobbin Ferry");
    walk.tap("Make it ready for boxes");
    walk.see("own-activity-ready");
}

void beginAWorkbench(Walk &walk)
{
    walk.tap("#packsBoxes");
    walk.see("clinic");
    walk.write("What do families call you?", "Morag");
    walk.tap("Begin");
    walk.see("workbench-first");
}

void lookRound(Walk &walk)
{
    walk.tap("#report");
    walk.see("report");
    walk.tap("Back");
    walk.tap("#packing");
    walk.tap("Somebody packs with you");
    walk.see("packers");
}

} // namespace

void addWritingLegs(std::vector<Leg> &legs)
{
    legs.push_back({"A play of one's own", "fresh/morven.lidlark", "writing",
                    "2027-01-12T19:30:00Z", writeAnActivity, layOnTheDesk});
    legs.push_back({"A workbench begins", nullptr, "first-bench", firstEvening, beginAWorkbench});
    legs.push_back({"A therapist's evening", "lived/morven.lidlark", "bench-evening",
                    "2027-01-20T19:30:00Z", lookRound});
}

} // namespace lidlark::test

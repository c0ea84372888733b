#include "tests/states/leg.h"

#include "core/usecase/issue_box.h"
#include "core/usecase/own_entries.h"
#include "tests/states/on_phone.h"
#include "tests/support/clinic.h"
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

/// A phone that came in by a code, to a box of which no home is known.
void comeInByACode(const QDir &folder)
{
    auto morven = packer("Morven");
    usecase::Workplace hers = morven->workplace();
    const Table table = tableOn(*morven);
    (void)usecase::keepBox(hers, table.build, standardBox("K1", "Oona", table.design));
    (void)packAll(*morven, table, "K1");
    (void)usecase::issuePackedBox(hers, table.build, "K1");
    const QString store = folder.filePath(QStringLiteral("untold"));
    {
        auto database = store::Database::open(store.toStdString());
        (void)store::DeviceRepository(*database).setDevice(
            {{"d-archie"}, "Archie", store::Role::Parent, {"h-archie"}});
    }
    onPhone(store, islandTime(11, 17, 0), [&morven](usecase::Workplace &his) {
        (void)usecase::takeEventsFrom(morven->database, his, [](const journal::Lane &lane) {
            return lane.kind == journal::LaneKind::Box;
        });
    });
}

void tellTheHome(Walk &walk)
{
    walk.tap("Crew");
    walk.tap("#homeSheet");
    walk.see("home-sheet-untold");
    walk.tap("#tellHome");
    walk.see("home-first");
    walk.tap("5: age in years");
    walk.tap("Go on");
    walk.see("home-first-others");
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
    legs.push_back(
        {"A home to be told", nullptr, "untold", firstEvening, tellTheHome, comeInByACode});
    legs.push_back({"A therapist's evening", "lived/morven.lidlark", "bench-evening",
                    "2027-01-20T19:30:00Z", lookRound});
}

} // namespace lidlark::test

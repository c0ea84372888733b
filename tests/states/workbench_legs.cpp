#include "tests/states/leg.h"

#include "core/usecase/restock.h"
#include "core/usecase/revise_box.h"
#include "core/usecase/set_up_home.h"
#include "core/usecase/take_out.h"
#include "tests/states/on_phone.h"

namespace lidlark::test {

namespace {

/// job.md scenario 7: bands and balloons out, loops and scarf in.
void reviseMaireads(usecase::Workplace &morven)
{
    auto packed = usecase::island::standardBox();
    packed.erase({"bands"});
    packed.erase({"balloon"});
    packed[{"loops"}] = 6;
    packed[{"scarf"}] = 1;
    (void)usecase::reviseBox(morven, "Mairead", {}, packed, "Red skin under a rubber band.");
}

/// A week in which something waits in every column of the board.
void layOutABusyWeek(const QDir &folder)
{
    onPhone(folder.filePath(QStringLiteral("workbench")), islandTime(25, 10, 20),
            [](usecase::Workplace &morven) {
                reviseMaireads(morven);
                (void)usecase::askFor(morven, "Rory", "Struan", {"eyes"});
                (void)usecase::askFor(morven, "Fin", "Ruth", {"eyes"});
                (void)usecase::askFor(morven, "Fin", "Gran Isobel", {"crayons"});
                (void)usecase::moveRequest(morven, "Fin", {}, {"crayons"},
                                           box::RequestStep::Packed);
                (void)usecase::sayFact(morven, {"h-anya"}, {"", "latex", "yes"});
            });
}

/// What Peigi's phone holds on Tuesday.
void sendPeigiTheNewList(const QDir &folder)
{
    const QString morvens = folder.filePath(QStringLiteral("new-list-morven"));
    QFile::remove(morvens);
    const QDir island(folder.filePath(QStringLiteral("../fresh")));
    QFile::copy(island.filePath(QStringLiteral("morven.lidlark")), morvens);
    onPhone(morvens, islandTime(25, 10, 20), reviseMaireads);
    onPhone(folder.filePath(QStringLiteral("new-list")), islandTime(26, 9, 0),
            [&morvens](usecase::Workplace &peigi) {
                auto source = store::Database::open(morvens.toStdString());
                (void)usecase::takeEventsFrom(*source, peigi, [](const journal::Lane &lane) {
                    return lane.kind == journal::LaneKind::Box && lane.scope == "b-mairead";
                });
            });
}

void lookAtTheBoard(Walk &walk)
{
    walk.see("workbench-nothing-waits");
    walk.tap("Box");
    walk.tap("What to ask for");
    walk.see("requests-therapist");
}

void lookAtABusyWeek(Walk &walk)
{
    walk.see("workbench");
    walk.tap("#child-Mairead");
    walk.see("box-of-child");
    walk.tap("#coaching");
    walk.tap("#coaching-0");
    walk.see("coaching");
    walk.tap("Back");
    walk.tap("Change the box");
    walk.see("revise");
    walk.tap("Straws: Leave out");
    walk.tap("#putIn");
    walk.see("revise-put-in");
    walk.tap("Back, nothing is changed");
    walk.tap("Change the box");
    walk.tap("Straws: Leave out");
    walk.tap("Send as revision 3");
    walk.see("revise-no-reason");
    walk.tap("Back, nothing is changed");
    walk.tap("Back to the workbench");
    walk.tap("#round");
    walk.see("restock-round");
}

void lookAtTheNewList(Walk &walk)
{
    walk.tap("Box");
    walk.see("box-new-list");
    walk.tap("#mustLeave");
    walk.see("take-out-new-list");
    walk.tap("Rubber bands: Taken out");
    walk.see("take-out-new-list-one-out");
}

} // namespace

void addWorkbenchLegs(std::vector<Leg> &legs)
{
    legs.push_back({"The one who packs", "lived/morven.lidlark", "morven", "2027-01-20T09:00:00Z",
                    lookAtTheBoard});
    legs.push_back({"A busy week", "fresh/morven.lidlark", "workbench", "2027-01-26T12:00:00Z",
                    lookAtABusyWeek, layOutABusyWeek});
    legs.push_back({"A new lid list", "fresh/mairead-peigi.lidlark", "new-list",
                    "2027-01-26T09:05:00Z", lookAtTheNewList, sendPeigiTheNewList});
}

} // namespace lidlark::test

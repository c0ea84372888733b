#include "tests/states/leg.h"

namespace lidlark::test {

namespace {

/// A childminder's phone: beside Fin's family Zoya's and Lewis's.
void layOutFamilies(const QDir &folder)
{
    const QString families = folder.filePath(QStringLiteral("minder.families"));
    (void)folder.mkpath(families);
    const QDir island(folder.filePath(QStringLiteral("../fresh")));
    int number = 2;
    for (const char *store : {"zoya-sana.lidlark", "lewis-catriona.lidlark"}) {
        const QString to = QStringLiteral("%1/family-%2.lidlark").arg(families).arg(number++);
        QFile::remove(to);
        QFile::copy(island.filePath(QString::fromUtf8(store)), to);
    }
}

void lookAtFamilies(Walk &walk)
{
    walk.see("families-today");
    walk.tap("Everything");
    walk.tap("Torn-Paper Coast");
    walk.see("families-play");
    walk.tap("Another child's box");
    walk.see("families-whose");
    walk.tap("Lewis's box");
    walk.tap("Kite: not asked");
    walk.see("families-kite");
    walk.hold("adult: hold");
    walk.tap("Lewis chooses");
    walk.see("families-choose");
    walk.hold("adult: hold");
    walk.tap("Notebook");
    walk.see("families-notebook");
    walk.tap("Crew");
    walk.see("families-crew");
    walk.tap("Another family's box");
    walk.see("families-another");
    walk.tap("Back to the crew");
    walk.tap("Take off this phone: Lewis");
    walk.see("families-take-off");
    walk.tap("Take off");
    walk.see("families-taken-off");
}

void lookAsGuest(Walk &walk)
{
    walk.see("guest-today");
    walk.tap("Box");
    walk.see("guest-box");
    walk.tap("Crew");
    walk.see("guest-crew");
}

void lookAfterTheInvitation(Walk &walk)
{
    walk.see("guest-ended");
}

} // namespace

void addFamiliesLegs(std::vector<Leg> &legs)
{
    legs.push_back({"Several families", "fresh/fin-ruth.lidlark", "minder", firstEvening,
                    lookAtFamilies, layOutFamilies});
    legs.push_back({"A guest", "fresh/skye-grandad.lidlark", "guest", firstEvening, lookAsGuest});
    legs.push_back({"No guest any more", "fresh/skye-grandad.lidlark", "guest-after",
                    "2027-03-20T18:25:00Z", lookAfterTheInvitation});
}

} // namespace lidlark::test

#include "tests/tour/more_ways.h"

#include <QFile>

namespace lidlark::test {

void layOutFamilies(const QDir &island, const QString &store)
{
    const QString folder = store + QStringLiteral(".families");
    island.mkpath(folder);
    const QStringList others{QStringLiteral("zoya-sana.lidlark"),
                             QStringLiteral("lewis-catriona.lidlark")};
    for (int i = 0; i < others.size(); ++i)
        QFile::copy(island.filePath(others[i]),
                    island.filePath(QStringLiteral("%1/family-%2.lidlark").arg(folder).arg(i + 2)));
}

void walkSeveralFamilies(Account &account)
{
    account.show("families-today", "Three families on one phone: one tap each.");
    account.pass("Everything");
    account.tap("Torn-Paper Coast", "families-play", "Whose play it is stands on top.");
    account.tap("Another child's box", "families-whose", "In the middle of it, another child.");
    account.tap("Lewis's box", "families-lewis", "Lewis's home, and nothing of the other.");
    account.tap("Kite: not asked", "families-kite", "Whose kite it is.");
    account.pass("Flying steady");
    Hand::settle(700);
    account.hold("adult: hold", "families-steady", "Lewis's menu.");
    account.tap("Lewis chooses", "families-choose", "Lewis's pictures.");
    account.hold("adult: hold", "families-chosen", "Back with the adult.");
    account.tap("Mairead's box", "families-resume", "The play has waited, and is asked about.");
    account.tap("Go on playing", "families-on", "On where it stood.");
    account.tap("Stop here", "families-put-back", "Whose box it goes into.");
    const bool counted = account.hand().find(QStringLiteral("All back in the box?")) != nullptr;
    account.pass(counted ? "All back in the box?" : "Done");
    account.pass("Done");
    account.tap("Crew", "families-crew", "The families on this phone.");
    account.tap("Another family's box", "families-another", "One more: the same questions.");
    account.pass("Back to the crew");
    account.tap("Take off this phone", "families-take-off", "One less, after one question.");
    account.tap("Take off", "families-taken-off", "It can be brought back.");
    account.pass("Bring it back");
}

void setAReminder(Account &account)
{
    account.pass("Crew");
    account.pass("Settings");
    account.tap("One quiet reminder a day", "reminder", "A moment, a time, and all that it says.");
    account.tap("Our own words", "reminder-own", "A moment of one's own.");
    (void)account.hand().write(QStringLiteral("When?"), QStringLiteral("After the ferry"));
    account.tap("Keep these words", "reminder-kept", "The line as it will stand there.");
}

void findAThing(Account &account)
{
    account.pass("Everything");
    (void)account.hand().write(QStringLiteral("Find by name"), QStringLiteral("ball"));
    account.show("things", "Things, where they are, and what is played with them.");
    account.tap("Slit ball", "thing", "One that lies in the box: its page.");
    account.tap("Back", "things-again", "Back to the same words.");
}

} // namespace lidlark::test

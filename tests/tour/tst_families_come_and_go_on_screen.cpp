#include <QtQml/qqmlextensionplugin.h>

#include "mobile/bridge/appearance.h"
#include "tests/tour/childminder.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards how a family comes on to a phone and leaves it, and that a torn or foreign file hurts
/// nobody else, on the real screens.
class TestFamiliesComeAndGoOnScreen : public Childminder
{
    Q_OBJECT

private slots:
    void aStartOpensWhoWasOnTheTable()
    {
        open();
        look("Lewis");
        open();
        QVERIFY2(hand().reads(text("Play with Lewis")), page().constData());
    }

    /// A phone with one family shows nothing of all this.
    void oneFamilySeesNothingOfIt()
    {
        QVERIFY(QDir(m_fin + text(".families")).removeRecursively());
        open();
        QVERIFY(hand().find(text("Fin's box")) == nullptr);
        QVERIFY(hand().tap(text("Notebook")));
        QVERIFY(whosePage().isEmpty());
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().find(text("Take off this phone")) == nullptr);
    }

    /// From Crew, the same questions as at the first run, and a way back from each.
    void anotherFamilysBox()
    {
        open();
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Another family's box")));
        QVERIFY(hand().tap(text("Back to the crew")));
        QVERIFY(hand().tap(text("Another family's box")));
        QVERIFY(hand().write(text("Whose box is it"), text("Kit")));
        QVERIFY(hand().tap(text("4")));
        QVERIFY(hand().tap(text("Go on")));
        QVERIFY(hand().write(text("What are you called"), text("Ada")));
        QVERIFY(hand().tap(text("One page back")));
        QVERIFY(hand().tap(text("Go on")));
        QVERIFY(hand().tap(text("Go on")));
        QVERIFY(hand().tap(text("Go on")));
        QVERIFY(hand().tap(text("Begin")));
        QVERIFY2(hand().reads(text("Play with Kit")), page().constData());
        QVERIFY(hand().find(text("Fin's box")) != nullptr);
        QCOMPARE(m_app->graph.household().person(), text("Ada"));
        closeApp();
        const QString kits = m_fin + text(".families/family-4.lidlark");
        QVERIFY(QFile::exists(kits));
        QVERIFY(!everythingIn(m_fin).contains(text("Kit")));
        QVERIFY(!everythingIn(kits).contains(text("Fin")));
    }

    /// Off the phone, and back; gone when the app is closed.
    void aFamilyIsTakenOffAndBroughtBack()
    {
        open();
        look("Lewis");
        const auto before = eventsIn(m_lewis);
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Take off this phone: Lewis")));
        QVERIFY(hand().tap(text("Keep")));
        QVERIFY(hand().tap(text("Take off this phone: Lewis")));
        QVERIFY(hand().tap(text("Take off")));
        QVERIFY2(hand().reads(text("Off this phone: Lewis")), page().constData());
        QVERIFY(!QFile::exists(m_lewis));
        QVERIFY(m_app->graph.household().child() != text("Lewis"));
        QVERIFY(hand().tap(text("Bring it back: Lewis")));
        QVERIFY(QFile::exists(m_lewis));
        QVERIFY(eventsIn(m_lewis) == before);
        QVERIFY(hand().tap(text("Today")));
        look("Lewis");
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Take off this phone: Lewis")));
        QVERIFY(hand().tap(text("Take off")));
        closeApp();
        const QStringList left = QDir(m_fin + text(".families")).entryList(QDir::Files);
        QCOMPARE(left, QStringList{text("family-2.lidlark")});
    }

    /// The phone keeps its own: also when the first family leaves it.
    void theFirstFamilyLeavesAndThePhoneStays()
    {
        open();
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Settings")));
        QVERIFY(hand().tap(text("Nothing moves")));
        QVERIFY(hand().tap(text("Back")));
        QVERIFY(hand().tap(text("Take off this phone: Fin")));
        QVERIFY(hand().tap(text("Take off")));
        open();
        QVERIFY2(hand().reads(text("Play with Anya")), page().constData());
        QVERIFY(m_app->graph.appearance().reducedMotion());
        QVERIFY(!everythingIn(m_fin).contains(text("Ruth")));
    }

    /// One plain line, and everybody else's box opens.
    void aForeignFileHurtsNobodyElse()
    {
        QFile photo(m_fin + text(".families/photo.lidlark"));
        QVERIFY(photo.open(QIODevice::WriteOnly));
        photo.write(QByteArray("\xff\xd8 not a store").repeated(300));
        photo.close();
        open();
        QVERIFY(hand().reads(text("Play with Fin")));
        look("Lewis");
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY2(hand().reads(text("One family's file cannot be read: photo.lidlark.")),
                 page().constData());
    }

    /// Torn while the app is open: the box on the table stays there.
    void aFileTornMeanwhileLeavesTheOtherOnTheTable()
    {
        open();
        QFile lewis(m_lewis);
        QVERIFY(lewis.open(QIODevice::WriteOnly));
        lewis.write("torn");
        lewis.close();
        look("Lewis");
        QVERIFY2(hand().reads(text("damaged")), page().constData());
        QVERIFY(hand().reads(text("Play with Fin")));
        QCOMPARE(m_app->graph.household().person(), text("Ruth"));
    }

    /// The first store torn: the others are still there.
    void aTornFirstStoreLeavesTheOthers()
    {
        QFile fin(m_fin);
        QVERIFY(fin.open(QIODevice::WriteOnly));
        fin.write(QByteArray("torn ").repeated(1000));
        fin.close();
        open();
        QVERIFY2(hand().reads(text("Play with Anya")), page().constData());
        look("Lewis");
        QVERIFY(hand().reads(text("Play with Lewis")));
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().reads(text("One family's file cannot be read: home.lidlark.")));
    }
};

QTEST_MAIN(TestFamiliesComeAndGoOnScreen)
#include "tst_families_come_and_go_on_screen.moc"

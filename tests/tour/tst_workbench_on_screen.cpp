#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "core/usecase/set_up_home.h"
#include "tests/tour/item_named.h"
#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards the first place of the one who packs, on screen: the board (job.md T16), the handing over
/// (T17), what may not go into a box (T3), the restock round (T13), and both panes of a wide
/// window.
class TestWorkbenchOnScreen : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_morven;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] QByteArray page() const { return hand().words().join(u'|').toUtf8(); }
    [[nodiscard]] bool reads(const char *words) const { return hand().reads(text(words)); }
    [[nodiscard]] bool tap(const char *name) const { return hand().tap(text(name)); }
    void open(const QString &store, const char *clock)
    {
        m_app.reset();
        m_app = std::make_unique<OpenApp>(store, clock);
    }
    /// Every box of the island's first three children, as handed over; somebody has asked for eyes.
    void writeMorvens()
    {
        auto made = therapistWith({"Fin", "Rory", "Anya"});
        auto database = store::Database::open(m_morven.toStdString());
        const store::Device device{{"d-Morven"}, "Morven", store::Role::Therapist, {}};
        (void)store::DeviceRepository(*database).setDevice(device);
        StillClock clock(islandTime(4, 12, 0));
        SeededEntropy entropy("morven");
        usecase::Workplace workplace{*database, realCatalogue(), clock, entropy, device};
        (void)usecase::takeEventsFrom(made->database, workplace,
                                      [](const journal::Lane &) { return true; });
        clock.moveTo(islandTime(12, 18, 0));
        QVERIFY(usecase::askFor(workplace, "Fin", "Ruth", {"eyes"}).ok());
        QVERIFY(usecase::askFor(workplace, "Rory", "Struan", {"eyes"}).ok());
        QVERIFY(usecase::sayFact(workplace, {"h-anya"}, {"", "latex", "yes"}).ok());
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        m_morven = m_folder->filePath(text("morven"));
        writeMorvens();
    }
    void cleanup() { m_app.reset(); }

    void theWorkbenchIsTheFirstPlaceOfTheOneWhoPacksAlone()
    {
        open(m_morven, "2027-01-13T09:00:00Z");
        QVERIFY2(reads("Workbench") && reads("3 boxes"), page().constData());
        QVERIFY2(reads("Needs stock") && reads("Asked for: stick-on eyes."), page().constData());
        QVERIFY2(reads("Safety note") && reads("Latex must stay away, says Morven, 12 January."),
                 page().constData());
        QVERIFY(!reads("Play with"));
        QVERIFY(tap("Fin") && tap("Back to the workbench"));
        QVERIFY2(reads("3 boxes"), page().constData());

        const QString ruths = m_folder->filePath(text("ruth"));
        writeStore(ruths, "Fin", "Ruth", "h-fin");
        open(ruths, mondayEvening);
        QVERIFY2(reads("Play with Fin") && !reads("Workbench"), page().constData());
    }

    void theHandingOverKeepsItsTicks()
    {
        open(m_morven, "2027-01-13T09:00:00Z");
        QVERIFY(tap("Rory") && tap("Handing over"));
        QVERIFY2(tap("The parent plays it with the child."), page().constData());
        m_app.reset();
        open(m_morven, "2027-01-13T10:00:00Z");
        QVERIFY(tap("Rory") && tap("Handing over"));
        const auto *line = itemOn(m_app->window, "coaching-3");
        QVERIFY(line != nullptr && line->property("checked").toBool());
    }

    /// Nobody overrides an allergy; what stands in for it is named.
    void whatAHomeMustAvoidCannotBePutIn()
    {
        open(m_morven, "2027-01-13T09:00:00Z");
        QVERIFY(tap("Anya") && tap("Change the box"));
        QVERIFY2(tap("Rubber bands: Leave out"), page().constData());
        QVERIFY(hand().write(text("Why, in words"), text("Latex.")));
        QVERIFY2(tap("Send as revision 2"), page().constData());
        QVERIFY2(tap("Change the box"), page().constData());
        QVERIFY(tap("Put something in"));
        const auto *bands = itemOn(m_app->window, "add-bands");
        QVERIFY2(bands != nullptr && bands->isVisible() && !bands->isEnabled(), page().constData());
        QVERIFY(bands->property("notNowReason").toString().contains(text("silicone loops")));
    }

    void aTickOfTheRoundTellsTheFamily()
    {
        open(m_morven, "2027-01-13T09:00:00Z");
        QVERIFY2(tap("Restock round. 5 things to pack."), page().constData());
        QVERIFY2(reads("Stick-on eyes") && reads("asked for by Struan, yesterday"),
                 page().constData());
        QVERIFY2(tap("Rory"), page().constData());
        QVERIFY2(reads("Rory: packed"), page().constData());
        QVERIFY(tap("Rory: On a visit"));
        QVERIFY2(tap("Rory: I have it with me"), page().constData());
        auto &household = m_app->graph.household();
        household.setChild(text("Rory"));
        QVERIFY(household.boxItem({"eyes"})->request->step == box::RequestStep::OnItsWay);
        household.setChild(text("Fin"));
        QVERIFY(household.boxItem({"eyes"})->request->step == box::RequestStep::Asked);
        QVERIFY2(!reads("Struan"), page().constData());
    }

    /// Tablet and laptop: the board stays beside the child's page.
    void aWideWindowHasTheBoardBesideTheChild()
    {
        open(m_morven, "2027-01-13T09:00:00Z");
        m_app->window->resize(1100, 740);
        Hand::settle();
        QVERIFY2(reads("3 boxes") && reads("Change the box"), page().constData());
        QVERIFY(tap("Rory"));
        QVERIFY2(reads("3 boxes") && reads("Rory's box"), page().constData());
        QVERIFY(tap("Change the box"));
        QVERIFY2(reads("3 boxes") && reads("Change Rory's box"), page().constData());
        m_app->window->resize(360, 740);
        Hand::settle();
        QVERIFY2(!reads("3 boxes") && reads("Change Rory's box"), page().constData());
    }
};

QTEST_MAIN(TestWorkbenchOnScreen)
#include "tst_workbench_on_screen.moc"

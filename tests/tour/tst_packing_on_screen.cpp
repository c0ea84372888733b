#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "tests/support/clinic.h"
#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

namespace {

constexpr const char *morning = "2027-01-05T09:00:00Z";

/// Morven's phone with Fin's box, and on it a build: a standard box, one for a left hand, and one
/// for a home without latex. @param another a second standard box, that is nobody's.
Table writeTable(const QString &file, bool another = false)
{
    QFile::remove(file);
    auto morven = packer("Morven");
    morven->database = *store::Database::open(file.toStdString());
    (void)store::DeviceRepository(morven->database).setDevice(morven->device);
    usecase::Workplace workplace = morven->workplace();
    (void)usecase::issueBox(workplace, familyOf("Fin"));
    const Table table = tableOn(*morven);
    workbench::KeptSupply bands;
    bands.supply = {{"bands"}, "rubber bands", {}, 120, true};
    bands.lot = "L 2306-a";
    (void)usecase::keepSupply(workplace, bands);
    workbench::KeptBox left = standardBox("K2", "Rory", table.design);
    left.personal.hand = workbench::Hand::Left;
    workbench::KeptBox latexFree = standardBox("K3", "Anya", table.design);
    latexFree.box.parts[0] = {{"loops"}, 6, {"bands"}};
    latexFree.personal.avoids = {child::Avoided::Latex};
    for (const workbench::KeptBox &box : {standardBox("K1", "Oona", table.design), left, latexFree})
        (void)usecase::keepBox(workplace, table.build, box);
    if (another)
        (void)usecase::keepBox(workplace, table.build, standardBox("K4", "", table.design));
    return table;
}

} // namespace

/// Guards job.md T4, T8 and T15 on the real screens.
class TestPackingOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] QString path() const { return m_folder.filePath(text("morven.lidlark")); }
    [[nodiscard]] QByteArray page() const { return hand().words().join(u'|').toUtf8(); }

    void open()
    {
        m_app.reset();
        m_app = std::make_unique<OpenApp>(path(), morning);
    }
    /// The Workbench leads there; here the page itself is looked at.
    void goTo(const char *route)
    {
        QVERIFY(QMetaObject::invokeMethod(m_app->window->findChild<QObject *>(text("screens")),
                                          "go", Q_ARG(QString, text(route))));
        Hand::settle(300);
    }
    /// Each page as it looks, for eyes: where a folder is named.
    void look(const char *name) const
    {
        const QString folder = qEnvironmentVariable("LIDLARK_LOOK");
        if (folder.isEmpty())
            return;
        QVERIFY(hand().picture(folder + u'/' + text(name) + text(".png")));
    }
    void tap(const char *name) { QVERIFY2(hand().tap(text(name)), page().constData()); }
    void tapAll(std::initializer_list<const char *> names)
    {
        for (const char *name : names)
            tap(name);
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void cleanup() { m_app.reset(); }

    void aStandardBoxIsPackedAndTheTicksSurviveARestart()
    {
        (void)writeTable(path());
        open();
        goTo("packing");
        look("packing");
        QVERIFY2(hand().reads(text("0 of 3 ready")), page().constData());
        tap("K1 for Oona");
        look("box");
        tapAll({"Rubber bands: It is in", "Dough: It is in"});
        open(); // as after an empty battery
        goTo("packing");
        QVERIFY2(hand().reads(text("2 of 3 in.")), page().constData());
        tap("K1 for Oona");
        tap("Scissors: Left"); // read off the wrong pair
        QVERIFY2(hand().reads(text("K1 needs the pair for the right hand. Put these back.")),
                 page().constData());
        look("wrong-hand");
        tap("Scissors: Right");
        QVERIFY2(hand().reads(text("Ready.")), page().constData());
        tap("Back");
        QVERIFY2(hand().reads(text("1 of 3 ready")), page().constData());
    }

    void oneThingOverAllBoxes()
    {
        (void)writeTable(path());
        open();
        goTo("packing");
        tap("Pack item by item");
        QVERIFY2(hand().reads(text("12 in all, 12 still to go in.")), page().constData());
        tapAll({"K1, Rubber bands: It is in", "K2, Rubber bands: It is in"});
        look("item");
        QVERIFY2(hand().reads(text("All of them are in.")), page().constData());
        tapAll({"Next thing", "Next thing"});
        QVERIFY2(hand().reads(text("Left-handed scissors only.")), page().constData());
        look("item-hand");
    }

    /// Fifty boxes: what is the same in all is one tap, and a special box is none of them.
    void whatIsTheSameInAllIsOneTap()
    {
        (void)writeTable(path(), true);
        open();
        goTo("packing");
        tap("Pack item by item");
        QVERIFY2(hand().reads(text("18 in all, 18 still to go in.")), page().constData());
        look("item-plain");
        tap("It is in all 2 boxes that are not special");
        QVERIFY2(hand().reads(text("18 in all, 6 still to go in.")), page().constData());
        QVERIFY(hand().find(text("K2, Rubber bands: It is in")) != nullptr);
        QVERIFY(hand().find(text("It is in all")) == nullptr);
        tapAll({"Back", "K4 for nobody yet", "Say whose it is"});
        tap("Fill it in for Fin");
        tap("Keep this box");
        QVERIFY2(hand().reads(text("K4 for Fin")), page().constData());
        QVERIFY2(hand().reads(text("Hand over to Fin")), page().constData());
    }

    void aSpecialBoxIsCalledOutAndLookedOverBySomebodyElse()
    {
        (void)writeTable(path());
        open();
        goTo("packing");
        tap("K3 for Anya");
        for (const char *words : {"No latex in this box.", "Silicone loops, not rubber bands."})
            QVERIFY2(hand().reads(text(words)), page().constData());
        tapAll({"Silicone loops: It is in", "Dough: It is in", "Scissors: Right"});
        QVERIFY2(hand().reads(text("A second person looks it over: 0 of 3.")), page().constData());
        look("second-look");
        QVERIFY(hand().find(text("Silicone loops: Looked over")) == nullptr);
        QVERIFY2(hand().write(text("Who looks now"), text("Callum")), page().constData());
        tap("That is me");
        tapAll({"Silicone loops: Looked over", "Dough: Looked over", "Scissors: Looked over"});
        QVERIFY2(hand().reads(text("Ready.")), page().constData());
        look("ready");
        tap("Hand over to Anya");
        QVERIFY2(hand().reads(text("Handed over.")), page().constData());
    }

    /// Of the build that is shown, and back to its table.
    void theTableIsOnPaper()
    {
        (void)writeTable(path());
        open();
        goTo("packing");
        tap("Pack list");
        QVERIFY2(hand().reads(text("In which order")), page().constData());
        look("pack-list");
        tapAll({"Item by item", "Back to the packing table", "Build sheet"});
        QVERIFY2(hand().reads(text("As it will come out")), page().constData());
        look("build-sheet");
        tap("Back to the packing table");
        QVERIFY2(hand().reads(text("0 of 3 ready")), page().constData());
    }

    void whatCameBackIsTendedAndALotIsRecalled()
    {
        (void)writeTable(path());
        open();
        goTo("packing");
        tap("K1 for Oona");
        tapAll({"Rubber bands: It is in", "Dough: It is in", "Scissors: Right", "Hand over to Oona",
                "Boxes that came back", "It came back"});
        QVERIFY2(hand().reads(text("clean: rubber bands, scissors. Replace: dough")),
                 page().constData());
        look("tend");
        tapAll({"Rubber bands: Soap and water", "Scissors: Wiped", "Dough: Replaced by a new one"});
        QVERIFY2(hand().reads(text("It can be packed for another child.")), page().constData());
        look("tended");
        tapAll({"Back", "Recall a lot"});
        QVERIFY2(hand().write(text("Lot, as it is printed"), text("l2306A")), page().constData());
        tap("Look for it");
        QVERIFY2(hand().reads(text("K1: Rubber bands")), page().constData());
        look("recall");
    }
};

QTEST_MAIN(TestPackingOnScreen)
#include "tst_packing_on_screen.moc"

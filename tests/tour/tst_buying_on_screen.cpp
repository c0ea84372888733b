#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "core/usecase/set_up_home.h"
#include "tests/support/golden_phone.h"
#include "tests/tour/item_named.h"
#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

namespace {

constexpr const char *morning = "2027-01-05T09:00:00Z";

/// Morven's phone with Fin's and Anya's boxes, and the supplies of reference/job.md 2.8.
void writePhone(const QString &file, bool golden)
{
    QFile::remove(file);
    auto morven = packer("Morven");
    morven->database = *store::Database::open(file.toStdString());
    (void)store::DeviceRepository(morven->database).setDevice(morven->device);
    usecase::Workplace workplace = morven->workplace();
    for (const char *child : {"Fin", "Anya"})
        (void)usecase::issueBox(workplace, familyOf(child));
    (void)usecase::sayFact(workplace, {"h-anya"}, {"", "latex", "yes"});
    GoldenPhone phone(workplace);
    if (golden)
        (void)phone.keepAll();
    else
        (void)phone.keepSupplies();
}

/// The golden build, with pegs nobody knows the price of, and crayons nobody sells.
void takeTwoPricesAway(const QString &file)
{
    auto morven = packer("Morven");
    morven->database = *store::Database::open(file.toStdString());
    usecase::Workplace workplace = morven->workplace();
    auto supplies = *store::ClinicRepository(morven->database).supplies();
    supplies[{"pegs"}].supply.offers.front().pence.reset();
    supplies[{"crayons"}].supply.offers.clear();
    for (const char *item : {"pegs", "crayons"})
        (void)usecase::keepSupply(workplace, supplies[{item}]);
}

} // namespace

/// Guards job.md T2, T3 and T19 on the real screens, and the lists that stay beside a page.
class TestBuyingOnScreen : public QObject
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
        const QByteArray size = qgetenv("LIDLARK_LOOK_SIZE");
        if (const auto sides = size.split('x'); sides.size() == 2)
            m_app->window->resize(sides[0].toInt(), sides[1].toInt());
        Hand::settle(100);
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
    void reads(const char *words) const { QVERIFY2(hand().reads(text(words)), page().constData()); }
    void write(const char *field, const char *words) const
    {
        QVERIFY2(hand().write(text(field), text(words)), page().constData());
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void cleanup() { m_app.reset(); }

    /// An evening from nothing: a kind of box, a build, a child's box, one for nobody.
    void aDesignAndABuildAreWritten()
    {
        writePhone(path(), false);
        open();
        tap("Builds and buying");
        look("builds-empty");
        reads("No build yet");
        tapAll({"Kinds of box", "New kind of box", "Begin with our standard box"});
        reads("Lacing card");
        look("design-ours");
        tapAll({"Back, nothing is changed", "New kind of box"});
        write("What this kind of box is called", "Standard box");
        for (const char *thing :
             {"Put in: Rubber bands", "Put in: Pegs", "Put in: Dropper", "Put in: Sponge"}) {
            tap("Put something in");
            tap(thing);
        }
        reads("This item has nothing to do in this box");
        look("design");
        tap("One more: Rubber bands");
        tap("Keep this kind of box");
        reads("Standard box");
        tapAll({"Back", "New build"});
        look("new-build");
        tap("Begin this build"); // without a name
        reads("name: empty");
        write("Name of the build", "Spring boxes");
        tapAll({"A day later", "Begin this build"});
        reads("Packed on 6 January. Spares: 10 percent. Prices in GBP.");
        look("build-empty");
        tap("A box for each of them");
        reads("Boxes for Anya, Fin");
        reads("As designed: Fin");
        look("build-thought-all");
        tap("Not after all");
        tap("A box for Anya");
        reads("Silicone loops, not rubber bands. Why: For an allergy.");
        look("build-thought");
        tap("Add to this build");
        reads("K1 for Anya");
        tap("A box for Fin");
        tap("Add to this build");
        tap("K2 for Fin");
        look("build-box");
        tap("Pegs: Leave out");
        tap("Keep this box");
        reads("say why it differs");
        tapAll({"Pegs, why: Goal", "Left hand", "Keep this box"});
        reads("No pegs in this box. Why: For a goal.");
        look("build");
    }

    /// The figures: reference/job.md 2.8.
    void theGoldenBuildIsBoughtAndStaysBought()
    {
        writePhone(path(), true);
        open();
        tap("Builds and buying");
        look("builds");
        reads("4 January. Boxes: 25. Ready: 0.");
        tap("Spring boxes");
        look("build-golden");
        tap("What would they cost?");
        reads("One box more: the till asks for £25.50 more. What lies in the box is worth £6.99.");
        reads("Pegs, packs to buy: 7 instead of 6.");
        look("one-more");
        tapAll({"Not after all", "Build sheet"});
        reads("£220.34");
        reads("School Supply: packs of 24, to buy: 6, £9.00");
        reads("In each of them: £6.99");
        look("sheet");
        tapAll({"Bought", "Not yet", "Bought", "Yes, all of it"});
        reads("Bought on 5 January for £220.34.");
        look("sheet-bought");
        open(); // as after an empty battery
        tapAll({"Builds and buying", "Spring boxes", "Build sheet"});
        reads("Bought on 5 January for £220.34.");
        reads("Everything for these boxes is there.");
        m_app.reset();
        auto database = store::Database::open(path().toStdString());
        const auto shelf = store::ClinicRepository(*database).supplies();
        QCOMPARE(shelf->at({"pegs"}).supply.inStock, 4);
        QCOMPARE(shelf->at({"bands"}).supply.inStock, 80);
    }

    /// T2: what keeps a sheet from being reckoned leads to the field in which it is put right, and
    /// from there back to the sheet.
    void aProblemOfTheSheetLeadsToWhereItIsPutRight()
    {
        writePhone(path(), true);
        takeTwoPricesAway(path());
        open();
        tapAll({"Builds and buying", "Spring boxes", "Build sheet"});
        reads("To be put right first");
        look("sheet-problems");
        QVERIFY2(!hand().reads(text("What you spend today")), page().constData());
        tap("Clothes pegs from School Supply: there is no price yet.");
        write("Pack 1: price", "1.50");
        tap("Keep it");
        reads("To be put right first");
        QVERIFY2(!hand().reads(text("there is no price yet")), page().constData());
        tap("Short crayons: more is needed than lies on the shelf, and no shop is named.");
        tap("Back"); // not now: the sheet still says so
        tap("Short crayons: more is needed than lies on the shelf, and no shop is named.");
        tap("Add a pack");
        write("Pack 1: shop", "School Supply");
        write("Pack 1: pieces in it", "64");
        write("Pack 1: price", "5.12");
        tap("Keep it");
        reads("\u00a3220.34"); // as in job.md 2.8
        tap("Back");
        reads("Boxes: 25");
    }

    /// Tablet and laptop: the list that a page is one of stays beside it, and marks it.
    void aWideWindowHasTheListBesideThePage()
    {
        writePhone(path(), true);
        open();
        m_app->window->resize(1280, 800);
        Hand::settle();
        tap("Builds and buying");
        reads("Workbench");
        tap("Spring boxes");
        look("wide-build");
        reads("Boxes: 25");               // the build
        reads("What builds are made of"); // and all builds
        reads("Spring boxes. 4 January. Boxes: 25. Ready: 0. shown");
        QVERIFY2(!hand().reads(text("Packing table")), page().constData());
        tap("K1 for");
        look("wide-build-box");
        reads("Which hand cuts?");
        reads("K1 for nobody yet. Standard box, as designed. shown");
        tap("Back"); // of the list, which stands first: to where the list was come to from
        tap("Shelf and shops");
        reads("What builds are made of");
        tap("Pegs");
        look("wide-supply");
        reads("Where it is bought");
        tap("Stick-on eyes"); // in the list beside it
        const QQuickItem *eyes = itemOn(m_app->window, "supply-eyes");
        const QQuickItem *pegs = itemOn(m_app->window, "supply-pegs");
        QVERIFY(eyes != nullptr && eyes->property("shown").toBool());
        QVERIFY(pegs != nullptr && !pegs->property("shown").toBool());
        m_app->window->resize(360, 740);
        Hand::settle();
        reads("Where it is bought");
        QVERIFY2(!hand().reads(text("Find by name")), page().constData());
    }

    /// With a list beside the page a stray tap is near: it cannot take away what was typed.
    void theListWaitsWhileSomethingIsNotKept()
    {
        writePhone(path(), true);
        open();
        m_app->window->resize(1024, 768);
        Hand::settle();
        tapAll({"Builds and buying", "Shelf and shops", "Pegs"});
        write("A note to yourself", "Ask Callum");
        look("wide-unsaved");
        reads("What you wrote is not kept yet.");
        const QQuickItem *eyes = itemOn(m_app->window, "supply-eyes");
        QVERIFY(eyes != nullptr && !eyes->isEnabled());
        tap("Keep it");
        tap("Pegs");
        QCOMPARE(itemOn(m_app->window, "note")->property("text").toString(), text("Ask Callum"));
        QVERIFY2(!hand().reads(text("is not kept yet")), page().constData());
        tapAll({"Back", "Kinds of box", "Standard box", "One more: Pegs"});
        reads("What you wrote is not kept yet.");
        tap("Keep this kind of box");
        QVERIFY2(!hand().reads(text("is not kept yet")), page().constData());
    }
};

QTEST_MAIN(TestBuyingOnScreen)
#include "tst_buying_on_screen.moc"

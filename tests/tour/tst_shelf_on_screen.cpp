#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "tests/support/clinic.h"
#include "tests/tour/item_named.h"
#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

namespace {

constexpr const char *morning = "2027-01-05T09:00:00Z";

/// Morven's phone with Fin's box, and a box that is packed with dough of a lot.
void writeShelf(const QString &file)
{
    QFile::remove(file);
    auto morven = packer("Morven");
    morven->database = *store::Database::open(file.toStdString());
    (void)store::DeviceRepository(morven->database).setDevice(morven->device);
    usecase::Workplace workplace = morven->workplace();
    (void)usecase::issueBox(workplace, familyOf("Fin"));
    workbench::KeptSupply dough;
    dough.supply = {{"dough"}, "dough", {{"Harbour Stores", 12, 600, ""}}, 3, true};
    dough.lot = "D-7";
    (void)usecase::keepSupply(workplace, dough);
    const Table table = tableOn(*morven);
    (void)usecase::keepBox(workplace, table.build, standardBox("K1", "Oona", table.design));
    (void)packAll(*morven, table, "K1");
}

} // namespace

/// Guards job.md T1 and T15 on the real screens.
class TestShelfOnScreen : public QObject
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
    void openShelf()
    {
        open();
        tap("Builds and buying");
        tap("Shelf and shops");
    }
    /// Each page as it looks, for eyes: where a folder is named.
    void look(const char *name) const
    {
        const QString folder = qEnvironmentVariable("LIDLARK_LOOK");
        if (!folder.isEmpty())
            QVERIFY(hand().picture(folder + u'/' + text(name) + text(".png")));
    }
    void tap(const char *name) { QVERIFY2(hand().tap(text(name)), page().constData()); }
    void sees(const char *words) { QVERIFY2(hand().reads(text(words)), page().constData()); }
    void write(const QString &name, const char *words)
    {
        QVERIFY2(hand().write(name, text(words)), page().constData());
    }
    /// What stands in the first field of that name.
    [[nodiscard]] QString written(const char *field) const
    {
        const QQuickItem *item = itemOn(m_app->window, field);
        return item != nullptr ? item->property("text").toString() : QString();
    }
    [[nodiscard]] workbench::KeptSupply kept(const char *item) const
    {
        auto database = store::Database::open(path().toStdString());
        const auto supplies = store::ClinicRepository(*database).supplies();
        const auto found = supplies->find({item});
        return found == supplies->end() ? workbench::KeptSupply() : found->second;
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
        writeShelf(path());
    }
    void cleanup() { m_app.reset(); }

    void twoPacksAreKeptAndAreStillThereAfterARestart()
    {
        openShelf();
        look("shelf");
        sees("Rubber bands. No price yet. None left");
        tap("Rubber bands");
        look("supply");
        sees("Latex, rubber bands");
        write("On the shelf, pieces", "120");
        write("Lot, as it is printed", "L 2306-a");
        tap("Add a pack");
        write("Pack 1: shop", "Harbour Stores");
        write("Pack 1: pieces in it", "100");
        write("Pack 1: price", "2.49");
        tap("Another pack or shop");
        write("Pack 2: pieces in it", "50");
        write("Pack 2: price", "1,20");
        tap("Move up: Pack 2");
        look("supply-written");
        tap("Keep it");
        sees("Rubber bands. 50 for \u00a31.20. Lot L 2306-a. 120 pieces");
        const QQuickItem *row = itemOn(m_app->window, "supply-bands");
        const qreal y = row->mapToScene(QPointF(0, row->height())).y();
        QVERIFY2(y > 0 && y < m_app->window->height(), "the list begins where it was left");
        open(); // as after an empty battery
        tap("Builds and buying");
        tap("Shelf and shops");
        tap("Rubber bands");
        const workbench::KeptSupply bands = kept("bands");
        QCOMPARE(bands.supply.inStock, 120);
        QVERIFY(bands.supply.offers == std::vector<workbench::PackOffer>(
                                           {{"", 50, 120, ""}, {"Harbour Stores", 100, 249, ""}}));
        QCOMPARE(written("shop"), QString());
        QCOMPARE(written("price"), text("1.20"));
        tap("Take out: Pack 1");
        tap("Back, nothing is changed");
        QCOMPARE(kept("bands").supply.offers.size(), std::size_t{2});
    }

    void aWrongPriceIsRefusedAndNothingTypedIsLost()
    {
        openShelf();
        tap("Pegs");
        write("A note to yourself", "Ask Callum");
        tap("Add a pack");
        write("Pack 1: pieces in it", "24");
        write("Pack 1: price", "1.234");
        tap("Keep it");
        sees("Price: two digits after the dot, such as 1.50.");
        sees("Nothing is kept yet. Put right what is marked, then keep it.");
        look("wrong-price");
        QCOMPARE(written("note"), text("Ask Callum"));
        QCOMPARE(written("pieces"), text("24"));
        QCOMPARE(written("price"), text("1.234"));
        QVERIFY(kept("pegs") == workbench::KeptSupply());
        tap("Back, nothing is changed");
        tap("No price");
        sees("Pegs. No price yet");
        look("no-price");
        QVERIFY2(!hand().reads(text("Dough. 12")), page().constData());
    }

    void theLotOfASupplyLeadsToTheBoxesThatHoldIt()
    {
        openShelf();
        tap("Dough. 12 for \u00a36.00. Lot D-7. 3 pieces");
        tap("Which boxes hold this lot");
        sees("K1: Dough");
        look("recall");
        tap("Back");
        sees("Where it is bought");
        write("A note to yourself", "x"); // what is typed would be lost: first it is kept
        QVERIFY(!hand().find(text("Which boxes hold this lot"))->isEnabled());
    }

    void whatTheCatalogueDoesNotKnowIsAdded()
    {
        openShelf();
        tap("Add a thing");
        tap("Keep it"); // nothing is written: it only says so
        write("On the shelf, pieces", "5");
        tap("Keep it");
        sees("Name: say what it is called.");
        write("Name", "Felt bag");
        tap("Free of latex");
        look("new-thing");
        tap("Keep it");
        sees("Felt bag. No price yet. 5 pieces");
        const workbench::KeptSupply bag = kept("felt-bag");
        QCOMPARE(bag.supply.name, std::string("Felt bag"));
        QVERIFY(bag.freeOf == std::set<child::Avoided>{child::Avoided::Latex});
        QVERIFY2(hand().write(text("Find by name"), text("felt")), page().constData());
        QVERIFY2(!hand().reads(text("Rubber bands")), page().constData());
    }
};

QTEST_MAIN(TestShelfOnScreen)
#include "tst_shelf_on_screen.moc"

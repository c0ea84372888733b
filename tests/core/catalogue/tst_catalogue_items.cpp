#include <QTest>

#include "catalogue_samples.h"

using namespace samples;

// Mistakes in one item file: activities.md 1.3.

class TestCatalogueItems : public QObject
{
    Q_OBJECT

private slots:
    void aMistakeInAnItemIsNamed_data();
    void aMistakeInAnItemIsNamed();
};

void TestCatalogueItems::aMistakeInAnItemIsNamed_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<int>("line");
    QTest::addColumn<QString>("field");
    QTest::addColumn<QString>("reason");
    const auto row = [](const char *name, const std::string &text, int line, const char *field,
                        const char *reason) {
        QTest::newRow(name) << QString::fromStdString(text) << line << field << reason;
    };
    const std::string sound = item("cone", "box", "SMALL");
    row("unknown tag", replaced(sound, "[SMALL]", "[SMALL, WET]"), 8, "tags[2]", "is not one of");
    row("unknown way of coming back", replaced(sound, "\"yes\"", "maybe"), 7, "comes_back",
        "is not one of");
    row("a home item on the lid list", replaced(sound, "source: box", "source: home"), 6,
        "lid_count", "must be 0 for an item of the home");
    row("unknown allergen", replaced(sound, "allergens: []", "allergens: [dust]"), 9, "allergens",
        "\"dust\" is not an allergen known here");
    row("latex without its tag", replaced(sound, "allergens: []", "allergens: [latex]"), 8, "tags",
        "the tag LATEX and the allergen latex go together");
    row("wheat without its tag", replaced(sound, "allergens: []", "allergens: [wheat]"), 8, "tags",
        "the tag WHEAT and the allergen wheat go together");
    const auto sized = [&sound](const std::string &whole) {
        return replaced(sound, "{shape: sphere, mm: [20]}", whole);
    };
    row("a sphere of two measures", sized("{shape: sphere, mm: [10, 5]}"), 10, "measures.whole.mm",
        "a sphere has 1 size");
    row("a measure below zero", sized("{shape: sphere, mm: [-1]}"), 10, "measures.whole.mm",
        "above zero");
    row("a measure of zero", sized("{shape: box, mm: [10, 0, 10]}"), 10, "measures.whole.mm",
        "above zero");
    row("a measure that is no number", sized("{shape: sphere, mm: [wide]}"), 10,
        "measures.whole.mm[1]", "must be a number of millimetres");
    row("a measure that is not a number at all", sized("{shape: sphere, mm: [nan]}"), 10,
        "measures.whole.mm", "above zero");
    row("a measure without end", sized("{shape: sphere, mm: [inf]}"), 10, "measures.whole.mm",
        "above zero");
    row("metres for millimetres", sized("{shape: sphere, mm: [0.02]}"), 10, "measures.whole.mm",
        "millimetres?");
    row("micrometres for millimetres", sized("{shape: box, mm: [3000, 20, 20]}"), 10,
        "measures.whole.mm", "millimetres?");
    row("an unknown shape", sized("{shape: cone, mm: [20, 20]}"), 10, "measures.whole.shape",
        "sphere, disc, cylinder, box or ellipsoid");
    row("a disc the wrong way round", sized("{shape: disc, mm: [5, 30]}"), 10, "measures.whole.mm",
        "swapped");
    row("a swap for itself", sound + "swap: {with: cone, note: x}\n", 17, "swap.with",
        "cannot stand in for itself");
    row("a swap nobody knows", sound + "swap: {with: moon, note: x}\n", 17, "swap.with",
        "there is no sound item \"moon\"");
    row("no drawing", replaced(sound, "drawing: item-cone\n", ""), 1, "drawing", "is missing");
    row("another id", replaced(sound, "id: cone", "id: crown"), 1, "id", "must be the file's name");
}

void TestCatalogueItems::aMistakeInAnItemIsNamed()
{
    QFETCH(QString, text);
    QFETCH(int, line);
    QFETCH(QString, field);
    QFETCH(QString, reason);
    const std::vector<SourceFile> files{itemFile("cone", text.toStdString())};
    const Catalogue catalogue = load(files, {});
    QVERIFY(catalogue.items().empty());
    QVERIFY2(catalogue.problems().size() == 1, qPrintable(shown(catalogue.problems())));
    QCOMPARE(catalogue.problems()[0].file, std::string("items/cone.yaml"));
    QCOMPARE(catalogue.problems()[0].line, line);
    QCOMPARE(QString::fromStdString(catalogue.problems()[0].field), field);
    QVERIFY2(QString::fromStdString(catalogue.problems()[0].reason).contains(reason),
             qPrintable(shown(catalogue.problems())));
}

QTEST_APPLESS_MAIN(TestCatalogueItems)
#include "tst_catalogue_items.moc"

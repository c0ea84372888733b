#include <QTest>

#include "core/measure/solid.h"

#include <limits>

using namespace lidlark;
using namespace lidlark::measure;

using Sizes = std::vector<double>;
Q_DECLARE_METATYPE(Sizes)

/// Guards what may be measured at all: a slip in a size must be refused, since a wrong size that is
/// taken for a right one can call a small part large. Expectations are those of solid.h; the shapes
/// and their sizes those of safety.md 6.
class TestSolid : public QObject
{
    Q_OBJECT

private slots:
    void sizesAreReadInTheOrderOfTheShape();
    void aSlipIsRefusedWithItsReason_data();
    void aSlipIsRefusedWithItsReason();
    void theLimitsThemselvesAreSizes();
};

void TestSolid::sizesAreReadInTheOrderOfTheShape()
{
    using Three = std::array<double, 3>;
    // safety.md 6: sphere = diameter; disc = diameter, thickness; cylinder = diameter, length.
    QCOMPARE(solidFrom("sphere", {24.3})->sizes(), (Three{24.3, 24.3, 24.3}));
    QCOMPARE(solidFrom("disc", {20, 3.2})->sizes(), (Three{20, 20, 3.2}));
    QCOMPARE(solidFrom("cylinder", {3.2, 20})->sizes(), (Three{3.2, 3.2, 20}));
    QCOMPARE(solidFrom("box", {1, 2, 3})->sizes(), (Three{1, 2, 3}));
    QCOMPARE(solidFrom("ellipsoid", {3, 2, 1})->sizes(), (Three{3, 2, 1}));
    QVERIFY(solidFrom("sphere", {24.3})->shape() == Shape::Sphere);
    QVERIFY(solidFrom("ellipsoid", {3, 2, 1})->shape() == Shape::Ellipsoid);
    QVERIFY(solidFrom("box", {3, 2, 1})->shape() == Shape::Box);
    // A disc is a short cylinder (safety.md 0): the same sizes are the same solid.
    QVERIFY(*solidFrom("disc", {20, 3.2}) == *solidFrom("cylinder", {20, 3.2}));
}

void TestSolid::aSlipIsRefusedWithItsReason_data()
{
    QTest::addColumn<QString>("shape");
    QTest::addColumn<Sizes>("mm");
    QTest::addColumn<QString>("word");
    const auto row = [](const char *name, const char *shape, const Sizes &mm, const char *word) {
        QTest::newRow(name) << shape << mm << word;
    };
    row("negative", "sphere", {-5}, "above zero");
    row("zero", "box", {10, 0, 10}, "above zero");
    row("no number", "cylinder", {std::numeric_limits<double>::quiet_NaN(), 10}, "above zero");
    row("infinite", "ellipsoid", {10, 10, std::numeric_limits<double>::infinity()}, "above zero");
    row("metres for millimetres", "sphere", {0.02}, "millimetres");
    row("micrometres for millimetres", "box", {3000, 20, 20}, "millimetres");
    row("a slip in the last size", "ellipsoid", {20, 20, 0.02}, "millimetres");
    row("a sphere of two sizes", "sphere", {20, 20}, "1 size");
    row("a disc of one size", "disc", {20}, "2 sizes");
    row("a cylinder of three sizes", "cylinder", {20, 20, 40}, "2 sizes");
    row("a box of two sizes", "box", {20, 20}, "3 sizes");
    row("an ellipsoid without sizes", "ellipsoid", {}, "3 sizes");
    row("unknown shape", "cone", {20, 20}, "sphere, disc, cylinder, box or ellipsoid");
    row("no shape", "", {20}, "sphere, disc, cylinder, box or ellipsoid");
    row("capitals", "Sphere", {20}, "sphere, disc, cylinder, box or ellipsoid");
}

void TestSolid::aSlipIsRefusedWithItsReason()
{
    QFETCH(QString, shape);
    QFETCH(Sizes, mm);
    QFETCH(QString, word);
    const Result<Solid> solid = solidFrom(shape.toStdString(), mm);
    QVERIFY(!solid);
    QVERIFY(solid.error().code == ErrorCode::Invalid);
    const QString detail = QString::fromStdString(solid.error().detail);
    QVERIFY2(detail.contains(word), qPrintable(detail));
    // result.h: the detail of Invalid is "field: reason".
    QVERIFY2(detail.startsWith("shape: ") || detail.startsWith("mm: "), qPrintable(detail));
}

void TestSolid::theLimitsThemselvesAreSizes()
{
    QVERIFY(solidFrom("sphere", {0.1}).ok());
    QVERIFY(solidFrom("sphere", {2000}).ok());
}

QTEST_APPLESS_MAIN(TestSolid)
#include "tst_solid.moc"

#include <QTest>

#include "core/measure/test_cylinder.h"
#include "tests/core/catalogue/shipped_catalogue.h"

#include <cmath>

using namespace lidlark::measure;

// The cylinder's own figures: 16 CFR 1501.4, figure 1 (1.25 in wide, 45 degrees, 1.00 to 2.25 in
// deep; the 1.00 in from memory), as safety.md 0 has them, at 25.4 mm to the inch.

namespace {

constexpr double wide = 1.25 * 25.4;
constexpr double deep = 2.25 * 25.4;
/// What the solver promises (design.md 4): at most 0.1 % too small, never too large.
constexpr double promise = 1e-3;

double scaleOf(const char *shape, const std::vector<double> &mm)
{
    return largestScaleInTestCylinder(*solidFrom(shape, mm));
}

bool isSmallPart(const char *shape, const std::vector<double> &mm)
{
    const Solid solid = *solidFrom(shape, mm);
    return fitsTestCylinder(solid, largestScaleInTestCylinder(solid));
}

/// What is wrong with @p scale; nothing when it is within the promise of @p truth.
QByteArray complaint(double scale, double truth)
{
    if (scale >= truth * (1 - promise) && scale <= truth * (1 + 1e-6))
        return {};
    return "found " + QByteArray::number(scale, 'f', 7) + ", is " +
           QByteArray::number(truth, 'f', 7);
}

} // namespace

class TestTestCylinder : public QObject
{
    Q_OBJECT

private slots:
    void aSphereIsAsWideAsTheBore();
    void aDiscLiesFlat();
    void anUprightCylinderStandsAtTheDeepSide();
    void aCubeStandsUpright();
    void aThinRodIsTheLongestLine();
    void aCylinderOfTheTableJustFits_data();
    void aCylinderOfTheTableJustFits();
    void doubtCountsAsFitting();
    void thingsAtHandAreJudgedAsInTheTable_data();
    void thingsAtHandAreJudgedAsInTheTable();
    void theSmallBallHole();
};

// Source: safety.md 0, "Sphere: fits if diameter <= 31.75".
void TestTestCylinder::aSphereIsAsWideAsTheBore()
{
    for (const double diameter : {0.1, 5.0, 24.3, 31.75, 40.0, 2000.0})
        QCOMPARE(complaint(scaleOf("sphere", {diameter}), wide / diameter), QByteArray());
    QVERIFY(isSmallPart("sphere", {31.75}));
    QVERIFY(!isSmallPart("sphere", {32.5}));
    QCOMPARE(complaint(scaleOf("ellipsoid", {20, 20, 20}), wide / 20), QByteArray());
}

// Source: safety.md 0, "Disc or short cylinder laid flat: fits if diameter <= 31.75 and thickness
// <= 25.40. A disc wider than 31.75 can never fit, tilted or not."
void TestTestCylinder::aDiscLiesFlat()
{
    for (const double thickness : {0.1, 1.0, 8.0, 20.0, 25.4})
        QCOMPARE(complaint(scaleOf("disc", {wide, thickness}), 1.0), QByteArray());
    for (const double diameter : {12.0, 24.26, 38.61, 90.0})
        QCOMPARE(complaint(scaleOf("disc", {diameter, diameter / 10}), wide / diameter),
                 QByteArray());
    QVERIFY(isSmallPart("disc", {31.75, 25.4}));
    QVERIFY(!isSmallPart("disc", {32.5, 0.5}));
    QVERIFY(!isSmallPart("disc", {31.75, 26.5}));
}

// Source: safety.md 0, "Upright cylinder of diameter d pushed to the deep side: fits if length <=
// 57.15 - d. Tilting helps only below a diameter of about 13 mm".
void TestTestCylinder::anUprightCylinderStandsAtTheDeepSide()
{
    for (int diameter = 14; diameter <= 31; ++diameter) {
        QCOMPARE(complaint(scaleOf("cylinder", {double(diameter), deep - diameter}), 1.0),
                 QByteArray());
        QVERIFY(!isSmallPart("cylinder", {double(diameter), deep - diameter + 1}));
    }
}

// Source: safety.md 0, "A cube fits only up to 31.75/sqrt(2) = 22.45 mm, so a one-inch cube does
// not fit."
void TestTestCylinder::aCubeStandsUpright()
{
    for (const double edge : {8.0, 16.0, 22.45, 25.4})
        QCOMPARE(complaint(scaleOf("box", {edge, edge, edge}), wide / std::sqrt(2) / edge),
                 QByteArray());
    QVERIFY(isSmallPart("box", {22.45, 22.45, 22.45}));
    QVERIFY(!isSmallPart("box", {25.4, 25.4, 25.4}));
}

// Source: safety.md 0, "Longest ideal line: sqrt(31.75^2 + 57.15^2) = 65.4 mm".
void TestTestCylinder::aThinRodIsTheLongestLine()
{
    const double line = std::hypot(wide, deep);
    // Shrunk until it fits, the rod is 0.003 mm thick: that takes next to nothing off the line.
    QCOMPARE(complaint(scaleOf("cylinder", {0.1, 2000}), line / 2000), QByteArray());
    QCOMPARE(complaint(scaleOf("box", {0.1, 2000, 0.1}), line / 2000), QByteArray());
    QCOMPARE(complaint(scaleOf("ellipsoid", {0.1, 0.1, 2000}), line / 2000), QByteArray());
    QVERIFY(!isSmallPart("cylinder", {0.1, 66}));
}

// Source: safety.md 0, the table "cylinder diameter - longest length that fits in any orientation",
// found there by a search of its own, +/-0.2 mm.
void TestTestCylinder::aCylinderOfTheTableJustFits_data()
{
    QTest::addColumn<double>("diameter");
    QTest::addColumn<double>("length");
    const double rows[][2] = {{2, 62.2},   {4, 58.9},   {6, 55.7},   {8, 52.5},
                              {10, 49.3},  {12, 46.1},  {14, 43.15}, {16, 41.15},
                              {20, 37.15}, {24, 33.15}, {28, 29.15}, {31, 26.15}};
    for (const auto &[diameter, length] : rows)
        QTest::addRow("%g mm", diameter) << diameter << length;
}

void TestTestCylinder::aCylinderOfTheTableJustFits()
{
    QFETCH(double, diameter);
    QFETCH(double, length);
    const double scale = scaleOf("cylinder", {diameter, length});
    QVERIFY2(std::abs(scale - 1) <= 0.2 / length, QByteArray::number(scale, 'f', 6).constData());
}

// Source: design.md 4, "Doubt (within 0.2 mm of the limit) counts as fitting".
void TestTestCylinder::doubtCountsAsFitting()
{
    QVERIFY(isSmallPart("sphere", {wide + 0.15}));
    QVERIFY(!isSmallPart("sphere", {wide + 0.45}));
    QVERIFY(isSmallPart("cylinder", {20, deep - 20 + 0.15}));
    QVERIFY(!isSmallPart("cylinder", {20, deep - 20 + 0.8}));
}

void TestTestCylinder::thingsAtHandAreJudgedAsInTheTable_data()
{
    QTest::addColumn<shipped::Row>("row");
    for (const shipped::Row &row : shipped::rowsOf("tests/data/objects.csv"))
        QTest::newRow(qPrintable(row.at("name"))) << row;
}

// Source: tests/data/objects.csv, a copy of the project's reference/objects.csv, which names the
// source of every size (mints, sport rules, IEC 60086-2 ...) and found its answers by a search of
// its own (safety.md 6).
void TestTestCylinder::thingsAtHandAreJudgedAsInTheTable()
{
    QFETCH(shipped::Row, row);
    std::vector<double> mm;
    for (const char *column : {"dim1_mm", "dim2_mm", "dim3_mm"}) {
        if (!row.at(column).isEmpty())
            mm.push_back(row.at(column).toDouble());
    }
    const auto solid = solidFrom(row.at("shape").toStdString(), mm);
    QVERIFY(solid.ok());
    const double scale = largestScaleInTestCylinder(*solid);
    const bool fits = fitsTestCylinder(*solid, scale);
    const bool expected = row.at("expected_fits_small_parts_cylinder") == "yes";
    // A borderline "no" may be called a small part: that is the careful side.
    if (row.at("certainty") == "clear" || expected)
        QVERIFY2(fits == expected, QByteArray::number(scale, 'f', 5).constData());
    const QString ball = row.at("expected_small_ball");
    // 45 mm of rubber may be anything about 45 mm, so both answers are right (its own row says so).
    if (ball != "n/a" && (row.at("certainty") == "clear" || ball == "yes"))
        QCOMPARE(isSmallBall(*solid), std::optional(ball == "yes"));
}

// Source: 16 CFR 1500.19(a)(1): 1.75 in = 44.45 mm; ISO 8124-1 and EN 71-1 gauge 44.5 mm (safety.md
// 0 and 3); of these the careful one.
void TestTestCylinder::theSmallBallHole()
{
    QCOMPARE(isSmallBall(*solidFrom("sphere", {44.45})), std::optional(true));
    QCOMPARE(isSmallBall(*solidFrom("sphere", {44.5})), std::optional(true));
    QCOMPARE(isSmallBall(*solidFrom("sphere", {44.6})), std::optional(false));
    // An egg goes through end first, so its length does not matter.
    QCOMPARE(isSmallBall(*solidFrom("ellipsoid", {60, 40, 43})), std::optional(true));
    QCOMPARE(isSmallBall(*solidFrom("ellipsoid", {60, 40, 50})), std::optional(false));
    // 16 CFR 1500.19(a)(1), as objects.csv quotes it: dice are expressly not balls.
    QVERIFY(!isSmallBall(*solidFrom("box", {16, 16, 16})));
    QVERIFY(!isSmallBall(*solidFrom("disc", {20, 3})));
    QVERIFY(!isSmallBall(*solidFrom("cylinder", {20, 40})));
}

QTEST_APPLESS_MAIN(TestTestCylinder)
#include "tst_test_cylinder.moc"

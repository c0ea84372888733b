#include <QTest>

#include "core/grading/tray_tilt.h"

#include "absurd_amounts.h"

#include <cmath>

using namespace lidlark::grading;
using absurd::refusedField;

/// How far a tray may tilt before a ball on it rolls.
class TestTrayTilt : public QObject
{
    Q_OBJECT

private slots:
    void theTiltIsTheCoefficient_data();
    void theTiltIsTheCoefficient();
    void aHardBallHasNextToNothing();
    void theOrderOfStuffs();
    void aLargerBallRollsSooner();
    void theLiftIsTheTrayTimesTheSlope();
    void absurdSizesAreRefused();
};

namespace {

TiltRange tilt(BallStuff stuff, double acrossMm)
{
    const auto range = trayTilt({stuff, acrossMm});
    return range ? *range : TiltRange{absurd::noNumber, absurd::noNumber};
}

} // namespace

void TestTrayTilt::theTiltIsTheCoefficient_data()
{
    QTest::addColumn<double>("leverMm");
    QTest::addColumn<double>("radiusMm");
    QTest::addColumn<double>("degrees");
    // Lever arms in inches, force = weight * lever / radius (emachineshop.com, "Rolling friction",
    // read): wood on wood 0.06, iron on iron 0.02. The angle whose tangent it is, worked by hand.
    QTest::newRow("a wooden wheel, 3 inches") << 0.06 * 25.4 << 1.5 * 25.4 << 2.2906;
    QTest::newRow("an iron wheel, 2 inches") << 0.02 * 25.4 << 25.4 << 1.1458;
    // Half a cube's edge before its middle, half an edge high: it tips at 45 degrees.
    QTest::newRow("a cube") << 10.0 << 10.0 << 45.0;
    QTest::newRow("nothing to stand on") << 0.0 << 10.0 << 0.0;
}

void TestTrayTilt::theTiltIsTheCoefficient()
{
    QFETCH(double, leverMm);
    QFETCH(double, radiusMm);
    QFETCH(double, degrees);
    QVERIFY(std::abs(rollingTilt(leverMm, radiusMm) - degrees) < 1e-3);
}

void TestTrayTilt::aHardBallHasNextToNothing()
{
    // R. Cross, European Journal of Physics 36 (2015) 065047: "less than 0.001"; its angle.
    for (const double across : {15.0, 40.0, 150.0}) {
        QCOMPARE(tilt(BallStuff::Hard, across).lowDegrees, 0.0);
        QVERIFY(std::abs(tilt(BallStuff::Hard, across).highDegrees - 0.0573) < 1e-4);
    }
}

void TestTrayTilt::theOrderOfStuffs()
{
    // Common practice, no source: the lumpier and softer, the longer it stays.
    for (const double across : {30.0, 60.0, 100.0}) {
        const BallStuff order[] = {BallStuff::Hard, BallStuff::Felt, BallStuff::TightPaper,
                                   BallStuff::LoosePaper};
        for (int i = 1; i < 4; ++i) {
            const TiltRange harder = tilt(order[i - 1], across);
            const TiltRange softer = tilt(order[i], across);
            QVERIFY(softer.lowDegrees > harder.lowDegrees);
            QVERIFY(softer.highDegrees > harder.highDegrees);
            QVERIFY(softer.lowDegrees < softer.highDegrees);
        }
    }
}

void TestTrayTilt::aLargerBallRollsSooner()
{
    for (const BallStuff stuff : {BallStuff::LoosePaper, BallStuff::TightPaper, BallStuff::Felt}) {
        TiltRange before{90, 90};
        for (double across = 25; across <= 150; across += 5) {
            const TiltRange now = tilt(stuff, across);
            QVERIFY(now.lowDegrees < before.lowDegrees && now.highDegrees < before.highDegrees);
            QVERIFY(now.lowDegrees > 0 && now.highDegrees < 45);
            before = now;
        }
    }
}

void TestTrayTilt::theLiftIsTheTrayTimesTheSlope()
{
    // A tray of 400 mm at 30 degrees: its edge is 200 mm up.
    const auto lift = trayLift({0, 30}, 400);
    QVERIFY(lift);
    QCOMPARE(lift->lowMm, 0.0);
    QVERIFY(std::abs(lift->highMm - 200) < 1e-9);
}

void TestTrayTilt::absurdSizesAreRefused()
{
    for (const double amount : absurd::amounts) {
        QCOMPARE(refusedField(trayTilt({BallStuff::Felt, amount})), "across_mm");
        QCOMPARE(refusedField(trayLift({0, 30}, amount)), "tray_mm");
    }
    QCOMPARE(refusedField(trayTilt({BallStuff::LoosePaper, 20})), "across_mm");
}

QTEST_APPLESS_MAIN(TestTrayTilt)
#include "tst_tray_tilt.moc"

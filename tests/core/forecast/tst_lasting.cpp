#include <QTest>

#include "core/forecast/lasting.h"
#include "core/forecast/piece_forecast.h"

#include "forecast_table.h"

#include <boost/math/distributions/negative_binomial.hpp>
#include <rapidcheck.h>

#include <cmath>
#include <limits>

using namespace lidlark;
using namespace lidlark::forecast;

/// How long the pieces last: T <= t exactly when at least n go in t days.
class TestLasting : public QObject
{
    Q_OBJECT

private slots:
    void emptyWithinIsAtLeastSoManyGone();
    void theDayIsTheFirstThatReaches();
    void lastingAndCountingAreOneThing();
    void onePieceLastsByHand_data();
    void onePieceLastsByHand();
    void noPiecesAreGoneAlready();
    void whatLastsTenYearsIsLonger();
    void doubtAboutTheCountWidensTheRange();
    void morePiecesLastLonger();
    void whatDoesNotFitIsNamed_data();
    void whatDoesNotFitIsNamed();
};

void TestLasting::emptyWithinIsAtLeastSoManyGone()
{
    // Boost.Math 1.74 (libboost-math-dev 1.74.0.3): P(N >= n) = the complement at n - 1.
    for (const double shape : {0.5, 1.0, 6.0, 40.0}) {
        for (const int pieces : {1, 2, 6, 30}) {
            for (const int days : {1, 14, 90, 700}) {
                const boost::math::negative_binomial_distribution<double> gone(
                    shape, 45.0 / (45.0 + days));
                const auto chance = probabilityEmptyWithin({shape, 45}, pieces, days);
                QVERIFY(chance);
                const double right = cdf(complement(gone, pieces - 1));
                QVERIFY(std::abs(*chance - right) < 1e-11 * right + 1e-15);
            }
        }
    }
}

void TestLasting::theDayIsTheFirstThatReaches()
{
    QVERIFY(rc::check("P(T <= t) reaches p on the day, and not the day before", [] {
        const GammaRate rate{*rc::gen::inRange(1, 400) / 10.0, *rc::gen::inRange(1, 4000) / 10.0};
        const int pieces = *rc::gen::inRange(1, 40);
        const double p = *rc::gen::inRange(1, 1000) / 1000.0;
        const auto day = daysUntilEmpty(rate, pieces, p);
        RC_ASSERT(day.ok());
        if (!*day) {
            RC_ASSERT(*probabilityEmptyWithin(rate, pieces, longestLastingDays) < p);
            return;
        }
        RC_ASSERT(*probabilityEmptyWithin(rate, pieces, **day) >= p * (1 - 1e-11));
        RC_ASSERT(*probabilityEmptyWithin(rate, pieces, **day - 1) < p);
    }));
}

void TestLasting::lastingAndCountingAreOneThing()
{
    // With chance 1 - p at most n - 1 go in t days exactly when with p the n-th has gone by t.
    QVERIFY(rc::check("the quantile of the count at the day is n or more", [] {
        const GammaRate rate{*rc::gen::inRange(1, 400) / 10.0, *rc::gen::inRange(10, 900) / 10.0};
        const int pieces = *rc::gen::inRange(1, 40);
        const double p = *rc::gen::element(0.1, 0.25, 0.5, 0.9);
        const auto day = daysUntilEmpty(rate, pieces, p);
        RC_ASSERT(day.ok());
        RC_PRE(day->has_value() && **day > 1);
        RC_ASSERT(*quantile(rate, **day, 1 - p + 1e-9) >= pieces);
        RC_ASSERT(*quantile(rate, **day - 1, 1 - p - 1e-9) <= pieces - 1);
    }));
}

void TestLasting::onePieceLastsByHand_data()
{
    // One piece: P(T <= t) = 1 - (b / (b + t))^a; with a = 1 the day is b p / (1 - p).
    QTest::addColumn<double>("p");
    QTest::addColumn<int>("day");
    QTest::newRow("half the time") << 0.5 << 30;
    QTest::newRow("nine in ten") << 0.9 << 270;
    QTest::newRow("one in ten: 3 1/3 days") << 0.1 << 4;
    QTest::newRow("certainly not before it begins") << 0.0 << 0;
}

void TestLasting::onePieceLastsByHand()
{
    QFETCH(double, p);
    QFETCH(int, day);
    QCOMPARE(**daysUntilEmpty({1, 30}, 1, p), day);
}

void TestLasting::noPiecesAreGoneAlready()
{
    QCOMPARE(**daysUntilEmpty({1, 30}, 0, 0.9), 0);
    QCOMPARE(*probabilityEmptyWithin({1, 30}, 0, 0), 1.0);
    QCOMPARE(*probabilityEmptyWithin({1, 30}, 1, 0), 0.0);
    QVERIFY(*lastingRange({1, 30}, 0, 0) == (LastingRange{0, 0}));
}

void TestLasting::whatLastsTenYearsIsLonger()
{
    // One piece, a = 1: the median is b days.
    QCOMPARE(**daysUntilEmpty({1, 3650}, 1, 0.5), 3650);
    QVERIFY(!*daysUntilEmpty({1, 3651}, 1, 0.5));
    const auto range = lastingRange({1, 3651}, 1, 1);
    QCOMPARE(*range->earliest, 406); // 3651 / 9 = 405.7
    QVERIFY(!range->latest);
}

void TestLasting::doubtAboutTheCountWidensTheRange()
{
    const GammaRate rate{3, 40};
    const auto four = *lastingRange(rate, 4, 4);
    const auto five = *lastingRange(rate, 5, 5);
    const auto either = *lastingRange(rate, 4, 5);
    QVERIFY(four.earliest < five.earliest && four.latest < five.latest);
    QVERIFY(either == (LastingRange{four.earliest, five.latest}));
    QVERIFY(four.earliest == *daysUntilEmpty(rate, 4, 0.1));
    QVERIFY(five.latest == *daysUntilEmpty(rate, 5, 0.9));
}

void TestLasting::morePiecesLastLonger()
{
    int before = 0;
    for (int pieces = 1; pieces <= 30; ++pieces) {
        const int day = **daysUntilEmpty({4, 40}, pieces, 0.5);
        QVERIFY(day > before);
        before = day;
    }
}

void TestLasting::whatDoesNotFitIsNamed_data()
{
    QTest::addColumn<double>("shape");
    QTest::addColumn<double>("rate");
    QTest::addColumn<int>("pieces");
    QTest::addColumn<double>("p");
    QTest::addColumn<QString>("field");
    QTest::newRow("no shape") << 0.0 << 30.0 << 4 << 0.5 << "shape";
    QTest::newRow("no rate") << 1.0 << 0.0 << 4 << 0.5 << "rate";
    QTest::newRow("fewer than none") << 1.0 << 30.0 << -1 << 0.5 << "pieces";
    QTest::newRow("certainty") << 1.0 << 30.0 << 4 << 1.0 << "p";
    QTest::newRow("no number") << 1.0 << 30.0 << 4 << std::numeric_limits<double>::quiet_NaN()
                               << "p";
}

void TestLasting::whatDoesNotFitIsNamed()
{
    QFETCH(double, shape);
    QFETCH(double, rate);
    QFETCH(int, pieces);
    QFETCH(double, p);
    QFETCH(QString, field);
    const auto day = daysUntilEmpty({shape, rate}, pieces, p);
    QVERIFY(!day && day.error().code == ErrorCode::Invalid);
    QVERIFY(QString::fromStdString(day.error().detail).startsWith(field + ": "));
    if (field != "p")
        QVERIFY(probabilityEmptyWithin({shape, rate}, pieces, 7).error() == day.error());
    QVERIFY(probabilityEmptyWithin({1, 30}, 4, -1).error().detail.starts_with("days: "));
    QVERIFY(lastingRange({1, 30}, -1, 4).error().detail.starts_with("low: "));
    QVERIFY(lastingRange({1, 30}, 5, 4).error().detail.starts_with("high: "));
}

QTEST_APPLESS_MAIN(TestLasting)
#include "tst_lasting.moc"

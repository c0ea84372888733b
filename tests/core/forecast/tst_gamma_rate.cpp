#include <QTest>

#include "core/forecast/gamma_rate.h"
#include "core/forecast/negative_binomial.h"

#include "forecast_table.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <limits>

using namespace lidlark;
using namespace lidlark::forecast;

/// What seeing pieces go teaches about their rate.
class TestGammaRate : public QObject
{
    Q_OBJECT

private slots:
    void workedExamplesComeOut_data();
    void workedExamplesComeOut();
    void twoUpdatesInAnyOrderAreOne();
    void moreDataIsNarrower();
    void whatDoesNotFitIsNamed_data();
    void whatDoesNotFitIsNamed();
};

void TestGammaRate::workedExamplesComeOut_data()
{
    QTest::addColumn<double>("shape");
    QTest::addColumn<double>("rate");
    QTest::addColumn<int>("pieces");
    QTest::addColumn<double>("days");
    QTest::addColumn<double>("newShape");
    QTest::addColumn<double>("newRate");
    QTest::addColumn<double>("mean"); // as printed
    QTest::addColumn<double>("rightTo");
    // Gelman and others, Bayesian Data Analysis, 3rd ed. (2013), section 2.6. The prior and the
    // data were read in a stored copy of a course that works the example (I. Gomez, "Bayesian
    // Statistics", notebook 02_PoissonAsthma); the posteriors and means are the book's, from
    // memory.
    QTest::newRow("asthma, one year") << 3.0 << 5.0 << 3 << 2.0 << 6.0 << 7.0 << 0.86 << 0.005;
    QTest::newRow("asthma, ten years") << 3.0 << 5.0 << 30 << 20.0 << 33.0 << 25.0 << 1.32 << 0.005;
    // The same course, notebook 03_KidneyCancer (commit 4fd808a8), read in a stored copy.
    QTest::newRow("a town, no death") << 20.0 << 430'000.0 << 0 << 10'000.0 << 20.0 << 440'000.0
                                      << 4.545454545454545e-05 << 1e-19;
    QTest::newRow("a town, one death") << 20.0 << 430'000.0 << 1 << 10'000.0 << 21.0 << 440'000.0
                                       << 4.772727272727273e-05 << 1e-19;
    // Bayes Rules! book club, section 5.12 (r4ds.github.io), read in a stored copy: 6 + 2 + 2 + 1.
    QTest::newRow("fraud calls") << 10.0 << 2.0 << 11 << 4.0 << 21.0 << 6.0 << 3.5 << 1e-15;
}

void TestGammaRate::workedExamplesComeOut()
{
    QFETCH(double, shape);
    QFETCH(double, rate);
    QFETCH(int, pieces);
    QFETCH(double, days);
    QFETCH(double, newShape);
    QFETCH(double, newRate);
    QFETCH(double, mean);
    QFETCH(double, rightTo);
    const auto updated = posterior({shape, rate}, pieces, days);
    QVERIFY(updated);
    QCOMPARE(updated->shape, newShape);
    QCOMPARE(updated->rateDays, newRate);
    QVERIFY(std::abs(updated->shape / updated->rateDays - mean) <= rightTo);
}

void TestGammaRate::twoUpdatesInAnyOrderAreOne()
{
    QVERIFY(rc::check("only the sums matter", [] {
        const GammaRate prior{*rc::gen::inRange(1, 100) / 8.0, *rc::gen::inRange(1, 1000) / 8.0};
        auto weeks = *rc::gen::container<std::vector<std::pair<int, int>>>(
            rc::gen::pair(rc::gen::inRange(0, 9), rc::gen::inRange(0, 31)));
        int pieces = 0;
        int days = 0;
        Result<GammaRate> forwards = prior;
        for (const auto &[gone, watched] : weeks) {
            forwards = posterior(*forwards, gone, watched);
            pieces += gone;
            days += watched;
        }
        std::reverse(weeks.begin(), weeks.end());
        Result<GammaRate> backwards = prior;
        for (const auto &[gone, watched] : weeks)
            backwards = posterior(*backwards, gone, watched);
        RC_ASSERT(*forwards == *backwards); // eighths and whole numbers add without rounding
        RC_ASSERT(*forwards == *posterior(prior, pieces, days));
    }));
}

void TestGammaRate::moreDataIsNarrower()
{
    // A gamma's spread as a part of its mean is 1 / sqrt(shape); at one rate a day of use, what is
    // left in the counts ahead falls towards the Poisson's own.
    GammaRate rate{1, 30};
    double before = std::numeric_limits<double>::infinity();
    for (int month = 0; month < 24; ++month) {
        const NegativeBinomial pieces(rate, 30);
        const double variance = pieces.mean() * (1 + 30 / rate.rateDays);
        QVERIFY(forecast_table::offBy(pieces.mean(), 1) < 1e-15);
        QVERIFY(variance < before);
        before = variance;
        rate = *posterior(rate, 1, 30);
    }
    QVERIFY(before < 1.05);
}

void TestGammaRate::whatDoesNotFitIsNamed_data()
{
    QTest::addColumn<double>("shape");
    QTest::addColumn<double>("rate");
    QTest::addColumn<qint64>("pieces");
    QTest::addColumn<double>("days");
    QTest::addColumn<QString>("field");
    const double none = std::numeric_limits<double>::quiet_NaN();
    QTest::newRow("no shape") << 0.0 << 5.0 << qint64{1} << 2.0 << "shape";
    QTest::newRow("no rate") << 3.0 << 0.0 << qint64{1} << 2.0 << "rate";
    QTest::newRow("a rate that is no number") << 3.0 << none << qint64{1} << 2.0 << "rate";
    QTest::newRow("fewer than no pieces") << 3.0 << 5.0 << qint64{-1} << 2.0 << "pieces";
    QTest::newRow("negative days") << 3.0 << 5.0 << qint64{1} << -2.0 << "days";
    QTest::newRow("days that are no number") << 3.0 << 5.0 << qint64{1} << none << "days";
    QTest::newRow("more pieces than any box") << 3.0 << 5.0 << qint64{100'000} << 2.0 << "shape";
    QTest::newRow("more days than any life") << 3.0 << mostRateDays << qint64{1} << 2.0 << "rate";
}

void TestGammaRate::whatDoesNotFitIsNamed()
{
    QFETCH(double, shape);
    QFETCH(double, rate);
    QFETCH(qint64, pieces);
    QFETCH(double, days);
    QFETCH(QString, field);
    const auto updated = posterior({shape, rate}, pieces, days);
    QVERIFY(!updated);
    QCOMPARE(updated.error().code, ErrorCode::Invalid);
    QVERIFY(QString::fromStdString(updated.error().detail).startsWith(field + ": "));
}

QTEST_APPLESS_MAIN(TestGammaRate)
#include "tst_gamma_rate.moc"

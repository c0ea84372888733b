#include <QTest>

#include "core/forecast/negative_binomial.h"
#include "core/forecast/piece_forecast.h"
#include "core/forecast/saddle_point.h"

#include "forecast_table.h"

#include <cmath>
#include <limits>

using namespace lidlark;
using namespace lidlark::forecast;
using forecast_table::offBy;

/// How many pieces go: against 50-digit values, a worked example, and what must hold of itself.
/// tst_forecast_judges has the other programs' answers.
class TestPieceForecast : public QObject
{
    Q_OBJECT

private slots:
    void quantilesAreThoseOfTheTable();
    void probabilitiesAreThoseOfTheTable();
    void theWorkedExampleComesOut();
    void shapeOneIsGeometric_data();
    void shapeOneIsGeometric();
    void aChanceThatIsReachedExactlyGivesItsCount_data();
    void aChanceThatIsReachedExactlyGivesItsCount();
    void everyProbabilityLeadsBackToItsCount();
    void aChanceJustBelowOneIsTold();
    void meanAndVarianceAreThoseOfTheMixture();
    void oneTermFollowsFromTheOneBefore();
    void theWidestBeliefsGiveNumbers_data();
    void theWidestBeliefsGiveNumbers();
    void nothingGoesInNoTime();
    void stirlingErrorIsRight_data();
    void stirlingErrorIsRight();
    void whatDoesNotFitIsNamed_data();
    void whatDoesNotFitIsNamed();
};

void TestPieceForecast::quantilesAreThoseOfTheTable()
{
    const auto rows = forecast_table::rows("quantiles.csv");
    QCOMPARE(rows.size(), 600U);
    for (const auto &row : rows) {
        const auto pieces = quantile({row[0], row[1]}, row[2], row[3]);
        QVERIFY2(pieces && static_cast<double>(*pieces) == row[4], forecast_table::shown(row));
    }
}

void TestPieceForecast::probabilitiesAreThoseOfTheTable()
{
    const auto rows = forecast_table::rows("probabilities.csv");
    QCOMPARE(rows.size(), 297U);
    for (const auto &row : rows) {
        const GammaRate rate{row[0], row[1]};
        const auto atMost = probabilityOfAtMost(rate, row[2], static_cast<std::int64_t>(row[3]));
        const auto more = probabilityOfMoreThan(rate, row[2], static_cast<std::int64_t>(row[3]));
        QVERIFY2(atMost && offBy(*atMost, row[4]) < 1e-12, forecast_table::shown(row));
        // Where most of a skewed belief lies below its mean, more is the rest of a subtraction.
        QVERIFY2(more && std::abs(*more - row[5]) < 1e-12 * row[5] + 4e-15,
                 forecast_table::shown(row));
        if (row[3] > row[0] * row[2] / row[1])
            QVERIFY2(offBy(*more, row[5]) < 1e-12, forecast_table::shown(row));
    }
}

void TestPieceForecast::theWorkedExampleComesOut()
{
    // Deaths in 10 years in a town of 1000, prior Gamma(20, 430000): I. Gomez, course "Bayesian
    // Statistics", notebook 03_KidneyCancer (github.com/IrvingGomez/BayesianStatistics, commit
    // 4fd808a8), read in a stored copy; it works the example of Gelman and others 2013,
    // section 2.7.
    const NegativeBinomial deaths({20, 430'000}, 10 * 1000);
    const std::array<double, 4> published{0.631, 0.287, 0.068, 0.011};
    for (std::size_t k = 0; k < published.size(); ++k)
        QVERIFY(std::abs(deaths.probabilityOf(static_cast<std::int64_t>(k)) - published[k]) <
                0.0005);
    QVERIFY(offBy(deaths.mean(), 0.46511627906976744) < 1e-15);
}

void TestPieceForecast::shapeOneIsGeometric_data()
{
    QTest::addColumn<double>("rate");
    QTest::addColumn<double>("days");
    QTest::newRow("as many days as seen") << 30.0 << 30.0;
    QTest::newRow("few days") << 183.0 << 7.0;
    QTest::newRow("many days") << 7.0 << 183.0;
}

void TestPieceForecast::shapeOneIsGeometric()
{
    // P(N > k) = (t / (b + t))^(k + 1).
    QFETCH(double, rate);
    QFETCH(double, days);
    const double q = days / (rate + days);
    for (std::int64_t k = 0; k < 300; k += 7) {
        const double more = std::pow(q, static_cast<double>(k + 1));
        if (more < 1e-290)
            break;
        const NegativeBinomial pieces({1, rate}, days);
        QVERIFY(offBy(pieces.probabilityOf(k), more / q * (1 - q)) < 1e-12);
        QVERIFY(std::abs(pieces.tails(k).more - more) < 1e-12 * more + 1e-15);
    }
}

void TestPieceForecast::aChanceThatIsReachedExactlyGivesItsCount_data()
{
    QTest::addColumn<double>("days");
    QTest::addColumn<double>("p");
    QTest::addColumn<int>("pieces");
    QTest::newRow("0.5 of halves") << 1.0 << 0.5 << 0;
    QTest::newRow("0.75 of halves") << 1.0 << 0.75 << 1;
    QTest::newRow("a last place more than 0.75") << 1.0 << std::nextafter(0.75, 1.0) << 1;
    QTest::newRow("a billionth more than 0.75") << 1.0 << 0.750000001 << 2;
    QTest::newRow("0.1 is no exact double") << 9.0 << 0.1 << 0;
    QTest::newRow("0.19 neither") << 9.0 << 0.19 << 1;
    QTest::newRow("0.271 neither") << 9.0 << 0.271 << 2;
    QTest::newRow("nothing") << 9.0 << 0.0 << 0;
    QTest::newRow("the least there is") << 9.0 << std::numeric_limits<double>::denorm_min() << 0;
}

void TestPieceForecast::aChanceThatIsReachedExactlyGivesItsCount()
{
    // Shape 1, rate 1: P(N <= k) = 1 - (t / (1 + t))^(k + 1), decimals that can be done by hand.
    QFETCH(double, days);
    QFETCH(double, p);
    QFETCH(int, pieces);
    const auto found = quantile({1, 1}, days, p);
    QVERIFY(found);
    QCOMPARE(*found, static_cast<std::int64_t>(pieces));
}

void TestPieceForecast::everyProbabilityLeadsBackToItsCount()
{
    for (const double shape : {0.05, 0.7, 1.0, 3.0, 40.0, 2000.0}) {
        for (const double days : {0.5, 7.0, 60.0, 900.0}) {
            const GammaRate rate{shape, 45};
            for (std::int64_t k = 0; k < 200; ++k) {
                const auto p = probabilityOfAtMost(rate, days, k);
                if (*p >= 1 - 1e-15 || *p < 1e-300)
                    continue;
                QCOMPARE(*quantile(rate, days, *p), k);
                if (*p < 0.999)
                    QCOMPARE(*quantile(rate, days, *p * (1 + 1e-7)), k + 1);
            }
        }
    }
}

void TestPieceForecast::aChanceJustBelowOneIsTold()
{
    // Halves: P(N > k) = 2^-(k + 1), so 1 - 2^-n is reached at n - 1, up to the last double.
    for (int n = 1; n <= 53; ++n)
        QCOMPARE(*quantile({1, 1}, 1, 1 - std::ldexp(1.0, -n)), std::int64_t{n - 1});
}

void TestPieceForecast::meanAndVarianceAreThoseOfTheMixture()
{
    // Mean a t / b and variance a t / b (1 + t / b): Gelman and others 2013, table A.2 (from
    // memory) and the Stan Functions Reference 2.25, section 14.1 (read), with beta = b / t.
    for (const double shape : {0.3, 1.0, 5.0, 60.0}) {
        const double days = 40;
        const double rate = 25;
        const NegativeBinomial pieces({shape, rate}, days);
        double total = 0;
        double mean = 0;
        double square = 0;
        for (std::int64_t k = 0; k < 3000; ++k) {
            const double chance = pieces.probabilityOf(k);
            const double count = static_cast<double>(k);
            total += chance;
            mean += count * chance;
            square += count * count * chance;
        }
        const double expected = shape * days / rate;
        QVERIFY(offBy(total, 1) < 1e-12);
        QVERIFY(offBy(mean, expected) < 1e-12);
        QVERIFY(offBy(square - mean * mean, expected * (1 + days / rate)) < 1e-10);
    }
}

void TestPieceForecast::oneTermFollowsFromTheOneBefore()
{
    // P(k + 1) / P(k) = (a + k) / (k + 1) t / (b + t), and each tail grows or falls by its term.
    const double shape = 4.5;
    const NegativeBinomial pieces({shape, 60}, 90);
    const double odds = 90.0 / 150.0;
    for (std::int64_t k = 0; k < 400; ++k) {
        const double count = static_cast<double>(k);
        const double next = pieces.probabilityOf(k + 1);
        QVERIFY(offBy(next, pieces.probabilityOf(k) * (shape + count) / (count + 1) * odds) <
                1e-12);
        const Tails here = pieces.tails(k);
        const Tails there = pieces.tails(k + 1);
        QVERIFY(std::abs(there.atMost - here.atMost - next) < 1e-15);
        QVERIFY(std::abs(here.more - there.more - next) < 1e-15);
        QVERIFY(here.atMost <= there.atMost && here.more >= there.more);
    }
    QCOMPARE(pieces.probabilityOf(-1), 0.0);
}

void TestPieceForecast::theWidestBeliefsGiveNumbers_data()
{
    QTest::addColumn<double>("shape");
    QTest::addColumn<double>("rate");
    QTest::addColumn<double>("days");
    for (const double shape : {leastShape, 1e-3, 1e4, mostShape}) {
        for (const double rate : {leastRateDays, 1e-1, mostRateDays}) {
            for (const double days : {1e-9, 3650.0, mostDays})
                QTest::addRow("%g in %g, %g ahead", shape, rate, days) << shape << rate << days;
        }
    }
}

void TestPieceForecast::theWidestBeliefsGiveNumbers()
{
    QFETCH(double, shape);
    QFETCH(double, rate);
    QFETCH(double, days);
    std::int64_t before = 0;
    for (const double p : {1e-12, 0.1, 0.5, 0.9, 0.999999, 1 - 0x1p-53}) {
        const auto pieces = quantile({shape, rate}, days, p);
        QVERIFY(pieces && *pieces >= before);
        before = *pieces;
        const Tails tails = NegativeBinomial({shape, rate}, days).tails(*pieces);
        QVERIFY(tails.atMost >= 0 && tails.atMost <= 1 && tails.more >= 0 && tails.more <= 1);
        QVERIFY(reaches(tails.atMost, tails.more, p));
        if (*pieces > 0) {
            const Tails less = NegativeBinomial({shape, rate}, days).tails(*pieces - 1);
            QVERIFY(!reaches(less.atMost, less.more, p));
        }
    }
}

void TestPieceForecast::nothingGoesInNoTime()
{
    QCOMPARE(*quantile({3, 30}, 0, 0.999999), std::int64_t{0});
    QCOMPARE(*probabilityOfAtMost({3, 30}, 0, 0), 1.0);
    QCOMPARE(*probabilityOfMoreThan({3, 30}, 0, 0), 0.0);
    QCOMPARE(NegativeBinomial({3, 30}, 0).probabilityOf(0), 1.0);
    QCOMPARE(NegativeBinomial({3, 30}, 0).probabilityOf(1), 0.0);
}

void TestPieceForecast::stirlingErrorIsRight_data()
{
    // mpmath 1.3.0, 50 digits: loggamma(x + 1) - (x + 1/2) log x + x - log(2 pi) / 2.
    QTest::addColumn<double>("x");
    QTest::addColumn<double>("error");
    QTest::newRow("0.000001") << 0.000001 << 5.98883098407317984;
    QTest::newRow("0.001") << 0.001 << 2.54227046796709455;
    QTest::newRow("0.05") << 0.05 << 0.751861144747762137;
    QTest::newRow("0.5") << 0.5 << 0.153426409720027345;
    QTest::newRow("1") << 1.0 << 0.0810614667953272582;
    QTest::newRow("7.25") << 7.25 << 0.0114870026844286968;
    QTest::newRow("15.5") << 15.5 << 0.00537559903292683449;
    QTest::newRow("16") << 16.0 << 0.00520765591960964044;
    QTest::newRow("40") << 40.0 << 0.00208328993830242175;
    QTest::newRow("100000") << 100000.0 << 8.33333333330555556e-7;
    QTest::newRow("1000000000000") << 1000000000000.0 << 8.33333333333333333e-14;
}

void TestPieceForecast::stirlingErrorIsRight()
{
    QFETCH(double, x);
    QFETCH(double, error);
    QVERIFY2(std::abs(stirlingError(x) - error) < 4e-15,
             QByteArray::number(stirlingError(x), 'g', 17));
}

void TestPieceForecast::whatDoesNotFitIsNamed_data()
{
    QTest::addColumn<double>("shape");
    QTest::addColumn<double>("rate");
    QTest::addColumn<double>("days");
    QTest::addColumn<double>("p");
    QTest::addColumn<QString>("field");
    const double none = std::numeric_limits<double>::quiet_NaN();
    const double endless = std::numeric_limits<double>::infinity();
    const auto row = [](const char *name, double shape, double rate, double days, double p,
                        const char *field) {
        QTest::newRow(name) << shape << rate << days << p << QString(field);
    };
    row("no shape", 0, 30, 7, 0.5, "shape");
    row("a negative shape", -1, 30, 7, 0.5, "shape");
    row("a shape that is no number", none, 30, 7, 0.5, "shape");
    row("an endless shape", endless, 30, 7, 0.5, "shape");
    row("no rate", 1, 0, 7, 0.5, "rate");
    row("a negative rate", 1, -30, 7, 0.5, "rate");
    row("a rate that is no number", 1, none, 7, 0.5, "rate");
    row("negative days", 1, 30, -1, 0.5, "days");
    row("days that are no number", 1, 30, none, 0.5, "days");
    row("more than a hundred years", 1, 30, 36'501, 0.5, "days");
    row("certainty", 1, 30, 7, 1, "p");
    row("more than certainty", 1, 30, 7, 1.5, "p");
    row("a negative chance", 1, 30, 7, -0.1, "p");
    row("a chance that is no number", 1, 30, 7, none, "p");
}

void TestPieceForecast::whatDoesNotFitIsNamed()
{
    QFETCH(double, shape);
    QFETCH(double, rate);
    QFETCH(double, days);
    QFETCH(double, p);
    QFETCH(QString, field);
    const auto pieces = quantile({shape, rate}, days, p);
    QVERIFY(!pieces);
    QCOMPARE(pieces.error().code, ErrorCode::Invalid);
    QVERIFY(QString::fromStdString(pieces.error().detail).startsWith(field + ": "));
    if (field == "p") {
        QVERIFY(probabilityOfAtMost({shape, rate}, days, 3));
        const auto fewer = probabilityOfAtMost({shape, rate}, days, -1);
        QVERIFY(!fewer && fewer.error().detail.starts_with("pieces: "));
        return;
    }
    const auto chance = probabilityOfMoreThan({shape, rate}, days, 3);
    QVERIFY(!chance && chance.error() == pieces.error());
}

QTEST_APPLESS_MAIN(TestPieceForecast)
#include "tst_piece_forecast.moc"

#include <QTest>

#include "core/forecast/negative_binomial.h"
#include "core/forecast/piece_forecast.h"
#include "core/forecast/saddle_point.h"

#include "forecast_table.h"

#include <array>
#include <cmath>

using namespace lidlark;
using namespace lidlark::forecast;
using forecast_table::offBy;

/// The chances themselves: against 400-digit values, a worked example, and what must hold of them.
class TestNegativeBinomial : public QObject
{
    Q_OBJECT

private slots:
    void probabilitiesAreThoseOfTheTable();
    void theWorkedExampleComesOut();
    void shapeOneIsGeometric_data();
    void shapeOneIsGeometric();
    void meanAndVarianceAreThoseOfTheMixture();
    void oneTermFollowsFromTheOneBefore();
    void stirlingErrorIsRight_data();
    void stirlingErrorIsRight();
};

void TestNegativeBinomial::probabilitiesAreThoseOfTheTable()
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

void TestNegativeBinomial::theWorkedExampleComesOut()
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

void TestNegativeBinomial::shapeOneIsGeometric_data()
{
    QTest::addColumn<double>("rate");
    QTest::addColumn<double>("days");
    QTest::newRow("as many days as seen") << 30.0 << 30.0;
    QTest::newRow("few days") << 183.0 << 7.0;
    QTest::newRow("many days") << 7.0 << 183.0;
}

void TestNegativeBinomial::shapeOneIsGeometric()
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

void TestNegativeBinomial::meanAndVarianceAreThoseOfTheMixture()
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

void TestNegativeBinomial::oneTermFollowsFromTheOneBefore()
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

void TestNegativeBinomial::stirlingErrorIsRight_data()
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

void TestNegativeBinomial::stirlingErrorIsRight()
{
    QFETCH(double, x);
    QFETCH(double, error);
    QVERIFY2(std::abs(stirlingError(x) - error) < 4e-15,
             QByteArray::number(stirlingError(x), 'g', 17));
}

QTEST_APPLESS_MAIN(TestNegativeBinomial)
#include "tst_negative_binomial.moc"

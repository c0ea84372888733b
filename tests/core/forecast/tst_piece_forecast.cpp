#include <QTest>

#include "core/forecast/negative_binomial.h"
#include "core/forecast/piece_forecast.h"

#include "forecast_table.h"

#include <cmath>
#include <limits>

using namespace lidlark;
using namespace lidlark::forecast;
using forecast_table::offBy;

/// The smallest count that is enough: against 400-digit values, chances that can be done by hand,
/// and what must hold of itself. tst_forecast_judges has the other programs' answers.
class TestPieceForecast : public QObject
{
    Q_OBJECT

private slots:
    void quantilesAreThoseOfTheTable();
    void aChanceThatIsReachedExactlyGivesItsCount_data();
    void aChanceThatIsReachedExactlyGivesItsCount();
    void everyProbabilityLeadsBackToItsCount();
    void aChanceJustBelowOneIsTold();
    void theWidestBeliefsGiveNumbers_data();
    void theWidestBeliefsGiveNumbers();
    void nothingGoesInNoTime();
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

#include <QTest>

#include "core/forecast/negative_binomial.h"
#include "core/forecast/piece_forecast.h"

#include "forecast_table.h"

#include <boost/math/distributions/negative_binomial.hpp>
#include <gsl/gsl_cdf.h>
#include <gsl/gsl_randist.h>
#include <rapidcheck.h>

#include <cmath>

using namespace lidlark;
using namespace lidlark::forecast;
using forecast_table::offBy;

namespace {

using RoundUp = boost::math::policies::policy<
    boost::math::policies::discrete_quantile<boost::math::policies::integer_round_up>>;
using JudgeOfQuantiles = boost::math::negative_binomial_distribution<double, RoundUp>;

struct Asked {
    GammaRate rate;
    double days = 1;

    [[nodiscard]] double success() const { return rate.rateDays / (rate.rateDays + days); }
    [[nodiscard]] JudgeOfQuantiles judge() const { return {rate.shape, success()}; }
};

/// The wrong count may be the judge's: its own probabilities say which of two counts is the
/// smallest that reaches p, unless it lies within what they are right to.
bool isExactBy(const Asked &asked, double p, std::int64_t pieces)
{
    constexpr double rightTo = 1e-11;
    const auto atMost = [&](std::int64_t k) {
        return k < 0 ? 0.0 : cdf(asked.judge(), static_cast<double>(k));
    };
    return atMost(pieces) >= p * (1 - rightTo) && atMost(pieces - 1) < p * (1 + rightTo);
}

const std::vector<double> shapes{0.05, 0.5, 1, 2.5, 7, 33, 500};
const std::vector<double> rates{7, 45, 183, 2000};
const std::vector<double> horizons{1, 7, 30, 90, 3650};
const std::vector<double> chances{0.001, 0.1, 0.25, 0.5, 0.75, 0.9, 0.99, 0.999999};

template <class Check> void overTheGrid(Check &&check)
{
    for (const double shape : shapes) {
        for (const double rate : rates) {
            for (const double days : horizons)
                check(Asked{{shape, rate}, days});
        }
    }
}

/// A real between 10 to the powers given, evenly by its logarithm.
double madeUp(int lowPower, int highPower)
{
    const int thousandths = *rc::gen::inRange(lowPower * 1000, highPower * 1000 + 1);
    return std::pow(10.0, thousandths / 1000.0);
}

Asked madeUpAsked()
{
    const double shape = madeUp(-2, 3);
    const double rate = madeUp(0, 3);
    return {{shape, rate}, madeUp(0, 3)};
}

} // namespace

/// What other programs answer: Boost.Math 1.74 (Debian libboost-math-dev 1.74.0.3), its policy that
/// rounds a quantile up, and the GNU Scientific Library 2.7.1 (libgsl-dev 2.7.1+dfsg-5+deb12u1).
class TestForecastJudges : public QObject
{
    Q_OBJECT

private slots:
    void quantilesAreThoseOfBoostOverAGrid();
    void quantilesAreThoseOfBoostForMadeUpBeliefs();
    void probabilitiesAreThoseOfBoost();
    void probabilitiesAreThoseOfGsl();
    void whatIsAlmostSureOfItsRateIsPoisson();
};

void TestForecastJudges::quantilesAreThoseOfBoostOverAGrid()
{
    int compared = 0;
    overTheGrid([&](const Asked &asked) {
        for (const double p : chances) {
            const auto pieces = quantile(asked.rate, asked.days, p);
            QVERIFY(pieces);
            QCOMPARE(static_cast<double>(*pieces), quantile(asked.judge(), p));
            ++compared;
        }
    });
    QCOMPARE(compared, 1120);
}

void TestForecastJudges::quantilesAreThoseOfBoostForMadeUpBeliefs()
{
    QVERIFY(rc::check("the smallest count that reaches p", [] {
        const Asked asked = madeUpAsked();
        for (int i = 0; i < 20; ++i) {
            const double p = *rc::gen::inRange(1, 1'000'000) / 1e6;
            const auto pieces = quantile(asked.rate, asked.days, p);
            RC_ASSERT(pieces.ok());
            const bool same = static_cast<double>(*pieces) == quantile(asked.judge(), p);
            RC_ASSERT(same || isExactBy(asked, p, *pieces));
        }
    }));
}

void TestForecastJudges::probabilitiesAreThoseOfBoost()
{
    int compared = 0;
    overTheGrid([&](const Asked &asked) {
        const JudgeOfQuantiles judge = asked.judge();
        const NegativeBinomial pieces(asked.rate, asked.days);
        for (const double part : {0.0, 0.3, 1.0, 1.5, 3.0}) {
            const auto k = static_cast<std::int64_t>(part * pieces.mean());
            const double count = static_cast<double>(k);
            const Tails tails = pieces.tails(k);
            // Boost is right to about 1e-11 here: it takes logarithms of gamma functions.
            if (cdf(judge, count) > 1e-250)
                QVERIFY(offBy(tails.atMost, cdf(judge, count)) < 1e-10);
            QVERIFY(std::abs(tails.more - cdf(complement(judge, count))) <
                    1e-10 * tails.more + 1e-14);
            if (pdf(judge, count) > 1e-250)
                QVERIFY(offBy(pieces.probabilityOf(k), pdf(judge, count)) < 1e-9);
            ++compared;
        }
    });
    QCOMPARE(compared, 700);
}

void TestForecastJudges::probabilitiesAreThoseOfGsl()
{
    int compared = 0;
    overTheGrid([&](const Asked &asked) {
        const NegativeBinomial pieces(asked.rate, asked.days);
        for (const double part : {0.0, 0.3, 1.0, 1.5, 3.0}) {
            const auto k = static_cast<unsigned>(part * pieces.mean());
            const Tails tails = pieces.tails(k);
            const double atMost = gsl_cdf_negative_binomial_P(k, asked.success(), asked.rate.shape);
            const double more = gsl_cdf_negative_binomial_Q(k, asked.success(), asked.rate.shape);
            QVERIFY(std::abs(tails.atMost - atMost) < 1e-9);
            QVERIFY(std::abs(tails.more - more) < 1e-9);
            ++compared;
        }
    });
    QCOMPARE(compared, 700);
}

void TestForecastJudges::whatIsAlmostSureOfItsRateIsPoisson()
{
    // b without end at the same a / b: the gamma belief becomes one rate, the counts Poisson. The
    // gap is of the order of mean / shape.
    for (const double mean : {0.5, 4.0, 12.0}) {
        const double shape = mostShape;
        const NegativeBinomial pieces({shape, shape}, mean);
        for (unsigned k = 0; k < 40; ++k) {
            const double gap = 4 * mean / shape;
            QVERIFY(std::abs(pieces.tails(k).atMost - gsl_cdf_poisson_P(k, mean)) < gap);
            QVERIFY(std::abs(pieces.probabilityOf(k) - gsl_ran_poisson_pdf(k, mean)) < gap);
        }
    }
}

QTEST_APPLESS_MAIN(TestForecastJudges)
#include "tst_forecast_judges.moc"

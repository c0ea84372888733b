#include <QTest>

#include "core/forecast/lifetime.h"
#include "core/forecast/piece_forecast.h"

#include "forecast_table.h"

#include <boost/math/distributions/gamma.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <gsl/gsl_cdf.h>
#include <rapidcheck.h>

#include <array>
#include <cmath>
#include <limits>

using namespace lidlark;
using namespace lidlark::forecast;
using forecast_table::offBy;

/// How long a perishable piece stays good, from pieces that ended and pieces that did not.
class TestLifetime : public QObject
{
    Q_OBJECT

private slots:
    void censoredLivesGiveEndsByTime();
    void theHandbooksPosteriorComesOut();
    void stillGoodIsTheMixtureOfExponentials();
    void stillGoodIsNoneGone();
    void stillGoodIsParetoOfGsl();
    void theQuantileTurnsItRound();
    void alreadyGoodIsAsIfItsDaysWereSeen();
    void theOrderOfLivesDoesNotMatter();
    void aLifeWithoutEndSaysItLastsLonger();
    void whatDoesNotFitIsNamed();
};

void TestLifetime::censoredLivesGiveEndsByTime()
{
    // Remission times of the 6-MP group, weeks, and whether they ended: Freireich and others, Blood
    // 21:699-716 (1963), as in Klein and Moeschberger, Survival Analysis (1997), section 1.2; read
    // in a stored copy of the R package KMsurv's drug6mp (vincentarelbundock/Rdatasets 1c97ab8a).
    const std::array<SeenLife, 21> weeks{
        {{10, true},  {7, true},   {32, false}, {23, true},  {22, true},  {6, true},
         {16, true},  {34, false}, {32, false}, {25, false}, {11, false}, {20, false},
         {19, false}, {6, true},   {17, false}, {35, false}, {6, true},   {13, true},
         {9, false},  {6, false},  {10, false}}};
    // 9 ends in 359 weeks, so a rate of 0.0251 a week: the estimate "total failures by total time"
    // of NIST/SEMATECH e-Handbook 8.4.5.1 (read), censored or not, which a vague belief comes to.
    const auto rate = posteriorOfLives({leastShape, leastRateDays}, weeks);
    QVERIFY(rate);
    QVERIFY(std::abs(rate->shape - 9) < 1e-5);
    QVERIFY(std::abs(rate->rateDays - 359) < 1e-5);
    QVERIFY(std::abs(rate->shape / rate->rateDays - 0.0251) < 0.00005);
}

void TestLifetime::theHandbooksPosteriorComesOut()
{
    // NIST/SEMATECH e-Handbook 8.4.6: a' = a + r, b' = b + T (read in a stored copy). Its example,
    // from memory: prior a = 2, b = 1400, two failures in 1909 hours, so a' = 4, b' = 3309, and a
    // lower 80 % bound of 600 hours for the mean time between failures.
    const std::array<SeenLife, 3> lives{{{700, true}, {1000, true}, {209, false}}};
    const auto rate = posteriorOfLives({2, 1400}, lives);
    QVERIFY(rate && *rate == (GammaRate{4, 3309}));
    QVERIFY(std::abs(1 / gsl_cdf_gamma_Pinv(0.8, rate->shape, 1 / rate->rateDays) - 600) < 0.5);
}

void TestLifetime::stillGoodIsTheMixtureOfExponentials()
{
    // The integral of exp(-r t) over the gamma belief about r, by the quadrature of Boost.Math 1.74
    // (libboost-math-dev 1.74.0.3).
    for (const double shape : {1.5, 4.0, 30.0}) {
        for (const double days : {1.0, 7.0, 60.0}) {
            const boost::math::gamma_distribution<double> belief(shape, 1 / 20.0);
            const auto integrand = [&](double r) {
                return r <= 0 ? 0 : std::exp(-r * days) * pdf(belief, r);
            };
            double right = 0;
            for (int piece = 0; piece < 40; ++piece) // a gauss rule likes short pieces
                right += boost::math::quadrature::gauss_kronrod<double, 61>::integrate(
                    integrand, piece * 0.25, (piece + 1) * 0.25, 12, 1e-13);
            QVERIFY(offBy(*probabilityStillGood({shape, 20}, days), right) < 1e-7);
        }
    }
}

void TestLifetime::stillGoodIsNoneGone()
{
    for (const double shape : {0.2, 1.0, 9.0, 400.0}) {
        for (const double days : {0.0, 3.0, 45.0, 900.0})
            QVERIFY(offBy(*probabilityStillGood({shape, 30}, days),
                          *probabilityOfAtMost({shape, 30}, days, 0)) < 1e-12);
    }
}

void TestLifetime::stillGoodIsParetoOfGsl()
{
    // GSL 2.7.1 (libgsl-dev 2.7.1+dfsg-5+deb12u1): b + life is Pareto of the first kind.
    for (const double shape : {0.2, 1.0, 9.0, 400.0}) {
        for (const double days : {0.5, 3.0, 45.0, 900.0})
            QVERIFY(offBy(*probabilityStillGood({shape, 30}, days),
                          gsl_cdf_pareto_Q(30 + days, shape, 30)) < 1e-12);
    }
}

void TestLifetime::theQuantileTurnsItRound()
{
    for (const double shape : {0.5, 1.0, 9.0, 4000.0}) {
        for (const double p : {1e-9, 0.1, 0.5, 0.9}) {
            const auto days = lifeQuantile({shape, 30}, p);
            QVERIFY(days && *days);
            QVERIFY(offBy(1 - *probabilityStillGood({shape, 30}, **days), p) < 1e-6);
            QVERIFY(offBy(30 + **days, gsl_cdf_pareto_Qinv(1 - p, shape, 30)) < 1e-12);
        }
        QCOMPARE(**lifeQuantile({shape, 30}, 0), 0.0);
    }
    QCOMPARE(**lifeQuantile({1, 30}, 0.5), 30.0); // b ((1 - p)^-1 - 1)
    QVERIFY(!*lifeQuantile({0.001, 30}, 0.9));    // 30 (10^1000 - 1) days
}

void TestLifetime::alreadyGoodIsAsIfItsDaysWereSeen()
{
    // P(life > s + t | life > s), and the belief with s days more and no end.
    const GammaRate rate{3, 40};
    for (const double had : {1.0, 12.0, 90.0}) {
        const std::array<SeenLife, 1> life{{{had, false}}};
        const auto aged = posteriorOfLives(rate, life);
        for (const double more : {1.0, 7.0, 30.0})
            QVERIFY(offBy(*probabilityStillGood(*aged, more),
                          *probabilityStillGood(rate, had + more) /
                              *probabilityStillGood(rate, had)) < 1e-12);
    }
}

void TestLifetime::theOrderOfLivesDoesNotMatter()
{
    QVERIFY(rc::check("forwards and backwards", [] {
        std::vector<SeenLife> lives;
        for (const auto &[days, ended] : *rc::gen::container<std::vector<std::pair<int, bool>>>(
                 rc::gen::pair(rc::gen::inRange(0, 90), rc::gen::arbitrary<bool>())))
            lives.push_back({static_cast<double>(days), ended});
        const std::vector<SeenLife> reversed(lives.rbegin(), lives.rend());
        RC_ASSERT(*posteriorOfLives({1, 21}, lives) == *posteriorOfLives({1, 21}, reversed));
    }));
}

void TestLifetime::aLifeWithoutEndSaysItLastsLonger()
{
    const std::array<SeenLife, 1> ended{{{14, true}}};
    const std::array<SeenLife, 1> good{{{14, false}}};
    const double afterEnd = **lifeQuantile(*posteriorOfLives({1, 21}, ended), 0.5);
    const double prior = **lifeQuantile({1, 21}, 0.5);
    const double afterGood = **lifeQuantile(*posteriorOfLives({1, 21}, good), 0.5);
    QVERIFY(afterEnd < prior && prior < afterGood);
}

void TestLifetime::whatDoesNotFitIsNamed()
{
    const std::array<SeenLife, 2> backwards{{{3, true}, {-1, true}}};
    QVERIFY(posteriorOfLives({1, 21}, backwards).error().detail.starts_with("days: "));
    QVERIFY(posteriorOfLives({0, 21}, {}).error().detail.starts_with("shape: "));
    QVERIFY(posteriorOfLives({1, 0}, {}).error().detail.starts_with("rate: "));
    QVERIFY(*posteriorOfLives({1, 21}, {}) == (GammaRate{1, 21}));
    const double none = std::numeric_limits<double>::quiet_NaN();
    QVERIFY(probabilityStillGood({1, 21}, none).error().detail.starts_with("days: "));
    QVERIFY(probabilityStillGood({none, 21}, 1).error().detail.starts_with("shape: "));
    QVERIFY(lifeQuantile({1, none}, 0.5).error().detail.starts_with("rate: "));
    QVERIFY(lifeQuantile({1, 21}, 1).error().detail.starts_with("p: "));
    QCOMPARE(lifeQuantile({1, 21}, 1).error().code, ErrorCode::Invalid);
}

QTEST_APPLESS_MAIN(TestLifetime)
#include "tst_lifetime.moc"

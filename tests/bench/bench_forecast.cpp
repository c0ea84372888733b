#include "core/forecast/item_forecast.h"
#include "core/forecast/piece_forecast.h"

#include <boost/math/distributions/negative_binomial.hpp>

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <exception>
#include <vector>

/// The quantiles of the forecast beside those of Boost.Math, with the policy that rounds up and
/// with the one it has by default, over the same beliefs in one run; and the forecast of a whole
/// item. Processor time, the least of some passes. How often an answer differs from ours is counted
/// too.
namespace {

using namespace lidlark;
using namespace lidlark::forecast;
namespace policies = boost::math::policies;

using RoundUp = policies::policy<policies::discrete_quantile<policies::integer_round_up>>;
using Default = policies::policy<>;

struct Asked {
    GammaRate rate;
    double days = 1;
    double p = 0.5;
};

/// What a box asks: few pieces seen, weeks ahead.
std::vector<Asked> ofBoxes()
{
    std::vector<Asked> asked;
    for (const double shape : {1.0, 2.0, 3.5, 7.0, 15.0, 40.0}) {
        for (const double rate : {14.0, 45.0, 60.0, 183.0, 400.0}) {
            for (const double days : {7.0, 14.0, 30.0, 90.0}) {
                for (const double p : {0.1, 0.25, 0.5, 0.75, 0.9, 0.99})
                    asked.push_back({{shape, rate}, days, p});
            }
        }
    }
    return asked;
}

/// What no box asks: hundreds and hundreds of thousands of pieces.
std::vector<Asked> ofStores()
{
    std::vector<Asked> asked;
    for (const double shape : {0.05, 200.0, 9000.0}) {
        for (const double rate : {1.0, 30.0}) {
            for (const double p : {0.1, 0.5, 0.9, 0.999999})
                asked.push_back({{shape, rate}, 3650, p});
        }
    }
    return asked;
}

double oursOf(const Asked &asked)
{
    return static_cast<double>(*quantile(asked.rate, asked.days, asked.p));
}

template <class Policy> double theirsOf(const Asked &asked)
{
    const boost::math::negative_binomial_distribution<double, Policy> pieces(
        asked.rate.shape, asked.rate.rateDays / (asked.rate.rateDays + asked.days));
    return quantile(pieces, asked.p);
}

/// Nanoseconds of one answer; the sum of the answers keeps them from being left out.
template <class Answer>
double nanosecondsOf(const std::vector<Asked> &asked, const Answer &answer, double &sum)
{
    constexpr int passes = 9;
    constexpr int rounds = 20;
    double least = 1e300;
    for (int pass = 0; pass < passes; ++pass) {
        const std::clock_t begun = std::clock();
        for (int round = 0; round < rounds; ++round) {
            for (const Asked &one : asked)
                sum += answer(one);
        }
        const double seconds = static_cast<double>(std::clock() - begun) / CLOCKS_PER_SEC;
        least = std::min(least, seconds / rounds / static_cast<double>(asked.size()));
    }
    return least * 1e9;
}

template <class Answer>
void printBeside(const char *name, const std::vector<Asked> &asked, double ours,
                 const Answer &theirs)
{
    double sum = 0;
    int differ = 0;
    for (const Asked &one : asked)
        differ += theirs(one) == oursOf(one) ? 0 : 1;
    const double taken = nanosecondsOf(asked, theirs, sum);
    std::printf("  %-22s %10.0f ns, %7.1f times ours; differs in %d of %zu\n", name, taken,
                taken / ours, differ, asked.size());
}

void compare(const char *name, const std::vector<Asked> &asked)
{
    double sum = 0;
    const double ours = nanosecondsOf(asked, oursOf, sum);
    std::printf("%s\n  %-22s %10.0f ns\n", name, "ours", ours);
    printBeside("Boost, rounding up", asked, ours, theirsOf<RoundUp>);
    printBeside("Boost, by default", asked, ours, theirsOf<Default>);
}

void timeWholeItems()
{
    ItemHistory history;
    history.prior = {3, 60};
    history.since = *dayFrom({2027, 1, 11});
    history.today = history.since + 89;
    history.low = 4;
    history.high = 5;
    history.daysToRound = 21;
    for (int week = 0; week < 10; ++week)
        history.uses.push_back({history.since + 7 * week, 1});
    history.outOfStock = {{history.since + 40, history.since + 46}};
    double sum = 0;
    const double taken = nanosecondsOf(
        std::vector<Asked>(100), [&](const Asked &) { return forecastItem(history)->rate.shape; },
        sum);
    std::printf("A whole item, ninety days\n  %-22s %10.0f ns\n", "ours", taken);
}

} // namespace

int main()
{
    try {
        compare("Quantiles a box asks for", ofBoxes());
        compare("Quantiles of large stores", ofStores());
        timeWholeItems();
        return 0;
    } catch (const std::exception &error) { // Boost could not answer
        std::fprintf(stderr, "%s\n", error.what());
        return 1;
    }
}

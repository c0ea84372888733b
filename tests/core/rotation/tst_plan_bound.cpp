#include <QtTest>

#include "core/rotation/curve_surplus.h"
#include "core/rotation/plan_placing.h"
#include "core/rotation/plan_prices.h"
#include "core/rotation/plan_repair.h"
#include "tests/core/rotation/plan_by_looking.h"
#include "tests/core/rotation/random_plan.h"

#include <numeric>

using namespace lidlark::rotation;

/// Guards what the search for plans rests on: no plan breaks a limit of the days thrown together,
/// no prices bring the bound below a plan, and days are found exactly where there are some.
class TestPlanBound : public QObject
{
    Q_OBJECT

private slots:
    /// Every plan of small problems, by looking.
    void everyPlanKeepsTheLimitsOfAllDaysTogether()
    {
        int plans = 0;
        for (std::uint32_t seed = 1; seed <= 40; ++seed) {
            const auto posed = samples::randomPlan({8, 3, 2}, seed);
            const HorizonLimits limits = limitsOf(posed);
            std::vector<oracle::Set> days;
            oracle::forEachPlan(
                posed.problem, posed.rules, days, [&](const std::vector<oracle::Set> &plan) {
                    const auto left = limits.leftBy(oracle::together(plan));
                    for (std::size_t i = limits.curves(); i < left.size(); ++i)
                        QVERIFY2(left[i] >= 0, qPrintable(QString("seed %1").arg(seed)));
                    ++plans;
                });
        }
        QVERIFY2(plans > 1000, qPrintable(QString::number(plans)));
    }

    /// By hand: an item of five pieces, so no two entries of three stand on one day. Two days take
    /// two of them and not three, though those want only 9 of the 10 pieces of two days.
    void piecesThatDoNotGoTogetherAreCounted()
    {
        samples::PlanProblem posed;
        posed.problem.stock = {5};
        for (const int pieces : {3, 3, 3, 2}) {
            Entry entry;
            entry.needs = {{0, pieces}};
            posed.problem.entries.push_back(entry);
        }
        ChoiceRules day;
        day.offers = 2;
        day.inForce = ConditionsInForce(sideConditionCount);
        posed.rules.days = {day, day};
        const HorizonLimits limits = limitsOf(posed);
        const auto fits = [&](const oracle::Set &entries) {
            return std::ranges::all_of(limits.leftBy(entries),
                                       [](std::int64_t left) { return left >= 0; });
        };
        QVERIFY(!fits({0, 1, 2}));
        QVERIFY(fits({0, 1, 3}));
    }

    /// Whatever the prices are and whatever is decided already, every plan that agrees with it.
    void noPricesBoundBelowAPlan()
    {
        std::mt19937 source(7);
        int plans = 0;
        for (std::uint32_t seed = 1; seed <= 40; ++seed) {
            const auto posed = samples::randomPlan({8, 3, 2}, seed);
            const HorizonLimits limits = limitsOf(posed);
            const PlanPrices prices(posed.problem, limits);
            PlanPrices::Prices at = prices.first();
            PlanPrices::Prices direction(at.size(), 0);
            PlanLook look;
            std::vector<oracle::Set> days;
            oracle::forEachPlan(
                posed.problem, posed.rules, days, [&](const std::vector<oracle::Set> &plan) {
                    const oracle::Set all = oracle::together(plan);
                    const Decided decided = someOf(posed.problem, all, source);
                    prices.look(at, decided, look);
                    QVERIFY(wholeOf(look.bound) >= oracle::valueOf(posed.problem, all));
                    if (!prices.step(at, direction, look, 5 * priceUnit))
                        at = prices.first();
                    ++plans;
                });
        }
        QVERIFY2(plans > 1000, qPrintable(QString::number(plans)));
    }

    /// Source: looking at every way to share them out.
    void daysAreFoundWhereThereAreSome()
    {
        const std::function<bool()> never;
        int found = 0;
        int none = 0;
        for (std::uint32_t seed = 1; seed <= 300; ++seed) {
            const auto posed = samples::randomPlan({5, 3, 2}, seed);
            std::size_t places = 0;
            for (const ChoiceRules &day : posed.rules.days)
                places += day.offers;
            if (places > posed.problem.entries.size())
                continue;
            oracle::Set set(places);
            std::iota(set.begin(), set.end(), std::size_t{0});
            bool is = false;
            std::vector<oracle::Set> days;
            oracle::forEachPlan(posed.problem, posed.rules, days,
                                [&](const std::vector<oracle::Set> &plan) {
                                    oracle::Set all = oracle::together(plan);
                                    std::ranges::sort(all);
                                    is = is || all == set;
                                });
            PlanPlacing placing(posed.problem, roomsOf(posed.problem, posed.rules.days), never);
            const auto outcome = placing.place(set, 1'000'000);
            QCOMPARE(outcome == PlanPlacing::Outcome::Placed, is);
            if (is)
                QVERIFY(oracle::keepsPlan(posed.problem, posed.rules, placing.days()));
            PlanRepair repair(posed.problem, posed.rules, never);
            if (repair.repair(set, {}, 200))
                QVERIFY(oracle::keepsPlan(posed.problem, posed.rules, repair.days()));
            (is ? found : none) += 1;
        }
        QVERIFY2(found > 20 && none > 20, qPrintable(QString("%1 %2").arg(found).arg(none)));
    }

private:
    static HorizonLimits limitsOf(const samples::PlanProblem &posed)
    {
        return {posed.problem, posed.rules, std::vector<bool>(posed.problem.entries.size(), true)};
    }

    /// Some of the plan's entries are in, some of the others out.
    static Decided someOf(const MenuProblem &problem, const oracle::Set &plan, std::mt19937 &source)
    {
        Decided decided;
        for (std::size_t i = 0; i < problem.entries.size(); ++i) {
            const bool isIn = std::ranges::count(plan, i) > 0;
            if (isIn && source() % 3 == 0)
                decided.in.push_back(i);
            else if (isIn || source() % 3 != 0)
                decided.open.push_back(i);
        }
        return decided;
    }
};

QTEST_APPLESS_MAIN(TestPlanBound)
#include "tst_plan_bound.moc"

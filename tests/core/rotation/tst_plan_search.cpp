#include <QtTest>

#include "core/rotation/exact_search.h"
#include "core/rotation/instance.h"
#include "core/rotation/plan_search.h"
#include "tests/core/rotation/plan_by_looking.h"
#include "tests/core/rotation/plan_program.h"
#include "tests/core/rotation/random_plan.h"

#include <QFile>

using namespace lidlark::rotation;

namespace {

PlanRules rulesOfDays(const Instance &instance)
{
    PlanRules rules;
    for (std::size_t day = 0; day < instance.minutes.size(); ++day)
        rules.days.push_back(rulesOf(instance, day));
    return rules;
}

/// Over once it has been asked so often.
std::function<bool()> after(int times)
{
    return [asked = 0, times]() mutable { return ++asked > times; };
}

PlanAnswer solve(const samples::PlanProblem &posed, const std::function<bool()> &isOver = {})
{
    std::int64_t nodes = 0;
    return bestPlan(posed.problem, posed.rules, nodes, isOver);
}

/// The largest gain first, on the first day where the rules let it be beside the others, as long as
/// any fits; nothing when a day is not full then. Only for the rules of the text format.
std::optional<int> greedyValue(const samples::PlanProblem &posed)
{
    std::vector<oracle::Set> days(posed.rules.days.size());
    oracle::Set all;
    for (bool found = true; found;) {
        found = false;
        int most = 0;
        std::pair<std::size_t, std::size_t> best;
        for (std::size_t entry = 0; entry < posed.problem.entries.size(); ++entry) {
            if (std::ranges::count(all, entry) > 0)
                continue;
            oracle::Set with = all;
            with.push_back(entry);
            const int gain =
                oracle::valueOf(posed.problem, with) - oracle::valueOf(posed.problem, all);
            for (std::size_t day = 0; day < days.size(); ++day) {
                oracle::Set there = days[day];
                there.push_back(entry);
                ChoiceRules rules = posed.rules.days[day];
                if (there.size() > rules.offers)
                    continue;
                rules.offers = there.size();
                if (oracle::keepsDay(posed.problem, rules, there) && (!found || gain > most)) {
                    found = true;
                    most = gain;
                    best = {entry, day};
                }
            }
        }
        if (found) {
            all.push_back(best.first);
            days[best.second].push_back(best.first);
        }
    }
    return oracle::keepsPlan(posed.problem, posed.rules,
                             [&] {
                                 for (oracle::Set &day : days)
                                     std::ranges::sort(day);
                                 return days;
                             }())
               ? std::optional(oracle::valueOf(posed.problem, all))
               : std::nullopt;
}

} // namespace

/// Guards plans of several days: the optimum where solvers and looking at every plan agree on it,
/// "there is none" told apart from "none found", a bound that holds when it is stopped, and rules
/// that are kept whatever happens.
class TestPlanSearch : public QObject
{
    Q_OBJECT

private slots:
    /// Source: reference/rotation/optimum.csv, proven by CBC 2.10.8.
    void solvesTheSamplesOfSevenDays_data()
    {
        QTest::addColumn<QString>("file");
        QTest::addColumn<int>("optimum"); // 0: there is none
        QTest::newRow("60 entries, 3 a day: there is none") << "r60-k3-tight-s39-d7" << 0;
        QTest::newRow("60 entries, 5 a day") << "r60-k5-loose-s40-d7" << 11339;
        QTest::newRow("300 entries, 5 a day") << "r300-k5-tight-s41-d7" << 11374;
    }
    void solvesTheSamplesOfSevenDays()
    {
        QFETCH(QString, file);
        QFETCH(int, optimum);
        const samples::PlanProblem posed = sample(file);
        const PlanAnswer answer = solve(posed);
        if (optimum == 0) {
            QCOMPARE(std::get<NoPlan>(answer), NoPlan::Impossible);
            return;
        }
        const Plan &plan = std::get<Plan>(answer);
        QCOMPARE(plan.value, optimum);
        QCOMPARE(plan.bound, optimum);
        QVERIFY(plan.proven);
        QVERIFY(oracle::keepsPlan(posed.problem, posed.rules, plan.days));
        QCOMPARE(oracle::valueOf(posed.problem, oracle::together(plan.days)), optimum);
    }

    /// Source of the optimum: as above. Wherever it is stopped the plan is whole, the bound holds,
    /// and the two look like each other soon.
    void whatIsStoppedHasAPlanAndABoundThatHolds()
    {
        const samples::PlanProblem posed = sample("r300-k5-tight-s41-d7");
        constexpr int optimum = 11374;
        for (const int times : {400, 2'000, 8'000, 16'000, 40'000}) {
            const PlanAnswer answer = solve(posed, after(times));
            const Plan &plan = std::get<Plan>(answer);
            QVERIFY(oracle::keepsPlan(posed.problem, posed.rules, plan.days));
            QCOMPARE(oracle::valueOf(posed.problem, oracle::together(plan.days)), plan.value);
            QVERIFY(plan.value <= optimum && plan.bound >= optimum);
            QCOMPARE(plan.proven, plan.value == plan.bound);
            if (times == 40'000)
                QVERIFY2(plan.value >= 0.999 * optimum, qPrintable(QString::number(plan.value)));
        }
    }

    void noneFoundInTimeIsNotNone()
    {
        const PlanAnswer answer = solve(sample("r300-k5-tight-s41-d7"), after(0));
        QCOMPARE(std::get<NoPlan>(answer), NoPlan::NotFound);
    }

    /// Source: looking at every plan.
    void findsWhatLookingAtEveryPlanFinds_data()
    {
        QTest::addColumn<int>("entries");
        QTest::addColumn<int>("days");
        QTest::addColumn<int>("mostADay");
        QTest::addColumn<bool>("pins");
        QTest::newRow("two days of up to three") << 9 << 2 << 3 << false;
        QTest::newRow("three days of up to two") << 8 << 3 << 2 << false;
        QTest::newRow("four days of up to two") << 8 << 4 << 2 << false;
        QTest::newRow("one day") << 10 << 1 << 4 << false;
        QTest::newRow("something is pinned") << 8 << 3 << 2 << true;
    }
    void findsWhatLookingAtEveryPlanFinds()
    {
        QFETCH(int, entries);
        QFETCH(int, days);
        QFETCH(int, mostADay);
        QFETCH(bool, pins);
        int feasible = 0;
        for (std::uint32_t seed = 1; seed <= 120; ++seed) {
            const auto posed = samples::randomPlan({entries, days, mostADay, true, pins}, seed);
            const auto best = oracle::bestPlanByLooking(posed.problem, posed.rules);
            const PlanAnswer answer = solve(posed);
            QVERIFY2(std::holds_alternative<Plan>(answer) == best.has_value(),
                     qPrintable(QString("seed %1").arg(seed)));
            if (!best) {
                QCOMPARE(std::get<NoPlan>(answer), NoPlan::Impossible);
                continue;
            }
            const Plan &plan = std::get<Plan>(answer);
            QVERIFY(oracle::keepsPlan(posed.problem, posed.rules, plan.days));
            QCOMPARE(plan.value, *best);
            QVERIFY(plan.proven);
            ++feasible;
        }
        QVERIFY2(feasible >= 20 && feasible <= 115, qPrintable(QString::number(feasible)));
    }

    /// Source: GLPK 5.0 at zero gap, on the same problem written down with its days apart.
    void reachesTheOptimumThatGlpkProves_data()
    {
        QTest::addColumn<int>("entries");
        QTest::addColumn<int>("days");
        QTest::addColumn<bool>("allRules");
        QTest::newRow("12 entries, 2 days") << 12 << 2 << true;
        QTest::newRow("14 entries, 3 days, as in the text format") << 14 << 3 << false;
        QTest::newRow("18 entries, 3 days") << 18 << 3 << true;
    }
    void reachesTheOptimumThatGlpkProves()
    {
        QFETCH(int, entries);
        QFETCH(int, days);
        QFETCH(bool, allRules);
        int feasible = 0;
        for (std::uint32_t seed = 500; seed < 550; ++seed) {
            const auto posed = samples::randomPlan({entries, days, 3, allRules}, seed);
            const oracle::PlanProgram program(posed.problem, posed.rules);
            const auto optimum = oracle::glpkOptimum(program.program());
            const PlanAnswer answer = solve(posed);
            QVERIFY2(std::holds_alternative<Plan>(answer) == optimum.has_value(),
                     qPrintable(QString("seed %1").arg(seed)));
            if (optimum) {
                QCOMPARE(std::get<Plan>(answer).value, *optimum);
                ++feasible;
            }
        }
        QVERIFY2(feasible >= 10 && feasible <= 49, qPrintable(QString::number(feasible)));
    }

    /// A plan of one day is worth what the search for one day finds.
    void oneDayIsAMenu()
    {
        for (std::uint32_t seed = 1; seed <= 30; ++seed) {
            const auto posed = samples::randomPlan({40, 1, 5}, seed);
            std::int64_t nodes = 0;
            const auto choice = bestChoice(posed.problem, posed.rules.days.front(), nodes);
            const PlanAnswer answer = solve(posed);
            QCOMPARE(std::holds_alternative<Plan>(answer), choice.has_value());
            if (choice)
                QCOMPARE(std::get<Plan>(answer).value, choice->value);
        }
    }

    /// Source: looking at every set, in dictionary order. Small worths, so that many tie.
    void theFirstOfTheBestForADayIsFound()
    {
        int tied = 0;
        for (std::uint32_t seed = 1; seed <= 200; ++seed) {
            samples::ProblemShape shape;
            shape.worthMost = 1;
            MenuProblem problem = samples::randomProblem(shape, seed);
            for (Entry &entry : problem.entries) {
                if (seed % 2 == 0)
                    entry.amounts.clear();
            }
            const auto best = oracle::bestByLooking(problem, 3, seed % 6, 0);
            if (!best)
                continue;
            ChoiceRules rules;
            rules.inForce = ConditionsInForce(seed % 6);
            std::int64_t nodes = 0;
            const auto first = firstOfDay(problem, rules, best->value, nodes);
            QVERIFY(first.has_value());
            QCOMPARE(*first, best->entries);
            const PlanAnswer any = solve({problem, {{rules}, {}}});
            tied += std::get<Plan>(any).days.front() != *first ? 1 : 0;
        }
        QVERIFY2(tied >= 3, qPrintable(QString::number(tied)));
    }

    /// By hand: the largest numbers the text format takes do not turn a bound round. The curve is
    /// full after one minute, so all entries are worth their own and 100,000.
    void theLargestNumbersDoNotOverflow()
    {
        samples::PlanProblem posed;
        posed.problem.curves = {{{1, 100'000}}};
        posed.problem.stock = {100'000};
        for (int i = 0; i < 400; ++i) {
            Entry entry;
            entry.worth = i < 310 ? 1'000'000 : 999'999;
            entry.amounts = {{0, 10'000}};
            entry.needs = {{0, 1'000}};
            entry.minutes = i < 310 ? 1'000'000 : 0;
            posed.problem.entries.push_back(entry);
        }
        ChoiceRules day;
        day.offers = 10;
        day.inForce = ConditionsInForce(sideConditionCount);
        posed.rules.days.assign(31, day);
        const PlanAnswer answer = solve(posed, after(20'000));
        QCOMPARE(std::get<Plan>(answer).value, 310 * 1'000'000 + 100'000);
        // Each day one of the long ones and nine of the others, of which there are only 90.
        day.minutes = 1'000'000;
        posed.rules.days.assign(31, day);
        QCOMPARE(std::get<NoPlan>(solve(posed, after(20'000))), NoPlan::Impossible);
    }

    /// However early it is stopped.
    void isNeverWorthLessThanGreedy()
    {
        int compared = 0;
        for (std::uint32_t seed = 1; seed <= 40; ++seed) {
            const auto posed = samples::randomPlan({30, 5, 3, false}, seed);
            const auto greedy = greedyValue(posed);
            if (!greedy)
                continue;
            const PlanAnswer answer = solve(posed, after(static_cast<int>(seed % 7)));
            if (const auto *plan = std::get_if<Plan>(&answer)) {
                QVERIFY2(plan->value >= *greedy, qPrintable(QString("seed %1").arg(seed)));
                ++compared;
            }
        }
        QVERIFY2(compared >= 20, qPrintable(QString::number(compared)));
    }

    void isTheSameWhenItIsStoppedAtTheSameStep()
    {
        const samples::PlanProblem posed = sample("r300-k5-tight-s41-d7");
        for (const int times : {500, 12'000}) {
            const PlanAnswer one = solve(posed, after(times));
            const PlanAnswer other = solve(posed, after(times));
            QCOMPARE(std::get<Plan>(one).days, std::get<Plan>(other).days);
            QCOMPARE(std::get<Plan>(one).bound, std::get<Plan>(other).bound);
        }
    }

    void whatIsPinnedStaysOnItsDay()
    {
        samples::PlanProblem posed = sample("r60-k5-loose-s40-d7");
        posed.rules.pinned = {{0}, {}, {20, 21}};
        const PlanAnswer answer = solve(posed);
        const Plan &plan = std::get<Plan>(answer);
        QVERIFY(oracle::keepsPlan(posed.problem, posed.rules, plan.days));
        QVERIFY(plan.proven);
        QVERIFY2(plan.value < 11339, "those are in no optimum of CBC's");
    }

    void whatCannotStandWhereItIsPinnedIsNoPlan_data()
    {
        QTest::addColumn<int>("day");
        QTest::addColumn<QList<int>>("entries");
        QTest::newRow("messy on a day without mess") << 1 << QList<int>{9};
        QTest::newRow("twice on a day") << 0 << QList<int>{2, 2};
        QTest::newRow("two of one family") << 0 << QList<int>{0, 3};
        QTest::newRow("no such entry") << 0 << QList<int>{60};
        QTest::newRow("no such day") << 7 << QList<int>{2};
        QTest::newRow("more than the day has places") << 0 << QList<int>{2, 3, 8, 13, 15, 18};
    }
    void whatCannotStandWhereItIsPinnedIsNoPlan()
    {
        QFETCH(int, day);
        QFETCH(QList<int>, entries);
        samples::PlanProblem posed = sample("r60-k5-loose-s40-d7");
        posed.rules.pinned.resize(static_cast<std::size_t>(day) + 1);
        for (const int entry : entries)
            posed.rules.pinned.back().push_back(static_cast<std::size_t>(entry));
        QCOMPARE(std::get<NoPlan>(solve(posed)), NoPlan::Impossible);
    }

    /// Three entries of which any two want the only piece of an item: no limit of two days together
    /// is broken, but one of the days would have two of them.
    void whatOnlyTheDaysThemselvesForbidIsProven()
    {
        samples::PlanProblem posed;
        posed.problem.stock = {1, 1, 1};
        for (const auto &needs :
             {std::vector<Need>{{0, 1}, {1, 1}}, {{1, 1}, {2, 1}}, {{0, 1}, {2, 1}}, {}}) {
            Entry entry;
            entry.worth = 10;
            entry.needs = needs;
            posed.problem.entries.push_back(entry);
        }
        ChoiceRules twoADay;
        twoADay.offers = 2;
        twoADay.inForce = ConditionsInForce(sideConditionCount);
        posed.rules.days = {twoADay, twoADay};
        QCOMPARE(std::get<NoPlan>(solve(posed)), NoPlan::Impossible);
        posed.problem.stock.back() = 2; // the second and third may meet
        const PlanAnswer answer = solve(posed);
        QCOMPARE(std::get<Plan>(answer).value, 40);
    }

    void moreDaysThanEntriesFillAreNoPlan()
    {
        samples::PlanProblem posed = sample("r60-k5-loose-s40-d7");
        while (posed.rules.days.size() < 13)
            posed.rules.days.push_back(posed.rules.days.front());
        std::int64_t nodes = 0;
        const PlanAnswer answer = bestPlan(posed.problem, posed.rules, nodes);
        QCOMPARE(std::get<NoPlan>(answer), NoPlan::Impossible);
        QCOMPARE(nodes, 0);
    }

    void noDaysAreAPlanOfNothing()
    {
        const PlanAnswer answer = solve({sample("r60-k5-loose-s40-d7").problem, {}});
        QCOMPARE(std::get<Plan>(answer).value, 0);
        QVERIFY(std::get<Plan>(answer).proven);
    }

private:
    static samples::PlanProblem sample(const QString &name)
    {
        QFile file(qEnvironmentVariable("LIDLARK_SOURCE_DIR") + "/tests/data/rotation/" + name +
                   ".rot");
        if (!file.open(QIODevice::ReadOnly))
            qFatal("no sample %s", qPrintable(name));
        const auto instance = readInstance(file.readAll().toStdString());
        return {instance->problem, rulesOfDays(*instance)};
    }
};

QTEST_APPLESS_MAIN(TestPlanSearch)
#include "tst_plan_search.moc"

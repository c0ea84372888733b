#include <QtTest>

#include "core/rotation/worth.h"
#include "tests/core/rotation/random_problem.h"
#include "tests/core/rotation/simulated_year.h"

#include <rapidcheck.h>

using namespace lidlark::rotation;
using namespace lidlark::rotation::samples;

Q_DECLARE_METATYPE(lidlark::rotation::samples::Habit)

namespace {

constexpr int lowestParts = -80;
constexpr int highestParts = 140;
/// What an entry can have beside its parts: coverage, and a bonus for each kite role.
constexpr int mostBeside = largestCoverage + 3 * kiteRoleBonus;

/// Menu after menu, one a day, where everything but waiting is against the first entry.
class AgainstTheFirst
{
public:
    AgainstTheFirst(MenuProblem problem, const ChoiceRules &rules)
        : m_problem(std::move(problem)), m_rules(rules), m_days(m_problem.entries.size(), 0)
    {
        for (std::size_t i = 0; i < m_problem.entries.size(); ++i) {
            m_others.push_back(m_problem.entries[i].worth);
            const bool isFirst = i == 0;
            m_problem.entries[i].amounts = {{static_cast<int>(i), isFirst ? 0 : 1}};
            m_problem.curves.push_back({{1, mostBeside}});
        }
    }

    /// Offers menus until the first entry is in one. @returns how many that took.
    int menusUntilTheFirstIsOffered(int most)
    {
        const int freeDays = static_cast<int>(m_days.size() / m_rules.offers);
        for (int menu = 1; menu <= most; ++menu) {
            for (std::size_t i = 0; i < m_days.size(); ++i) {
                ++m_days[i];
                m_problem.entries[i].worth = m_others[i] + 10 * std::max(m_days[i] - freeDays, 0);
            }
            std::int64_t nodes = 0;
            const auto choice = bestChoice(m_problem, m_rules, nodes);
            for (const std::size_t entry : choice->entries)
                m_days[entry] = 0;
            if (m_days.front() == 0)
                return menu;
        }
        return most + 1;
    }

    /// As if the entry had been out of reach for long before the first menu.
    void hasWaited(std::size_t entry, int days) { m_days[entry] = days; }

private:
    MenuProblem m_problem;
    ChoiceRules m_rules;
    std::vector<int> m_others;
    std::vector<int> m_days;
};

MenuProblem plainProblem(std::size_t entries)
{
    MenuProblem problem;
    for (std::size_t i = 0; i < entries; ++i) {
        Entry entry;
        entry.worth = i == 0 ? lowestParts : highestParts;
        entry.family = static_cast<int>(i);
        problem.entries.push_back(entry);
    }
    return problem;
}

} // namespace

class TestWaiting : public QObject
{
    Q_OBJECT

private slots:
    // Source: design.md 5: in simulated years with k = 3 and a menu a day, no entry that stays
    // feasible waits longer than 2 n menus.
    void nothingWaitsLongerThanTwoNMenusInASimulatedYear_data()
    {
        QTest::addColumn<int>("entries");
        QTest::addColumn<Habit>("habit");
        QTest::newRow("six entries, any") << 6 << Habit::AnyOfThem;
        QTest::newRow("nine entries, any") << 9 << Habit::AnyOfThem;
        QTest::newRow("fifteen entries, friends only") << 15 << Habit::OnlyFriends;
        QTest::newRow("twenty entries, the first") << 20 << Habit::TheFirst;
        QTest::newRow("forty entries, any") << 40 << Habit::AnyOfThem;
        QTest::newRow("forty entries, friends only") << 40 << Habit::OnlyFriends;
        QTest::newRow("eighty entries, any") << 80 << Habit::AnyOfThem;
        QTest::newRow("eighty entries, nothing played") << 80 << Habit::Nothing;
    }
    void nothingWaitsLongerThanTwoNMenusInASimulatedYear()
    {
        QFETCH(int, entries);
        QFETCH(Habit, habit);
        const int days = std::max(365, 4 * entries);
        for (const std::uint32_t seed : {1U, 2U, 3U}) {
            const int longest = SimulatedYear(entries, habit, seed).longestWaitIn(days);
            QVERIFY2(longest <= 2 * entries, qPrintable(QString::number(longest)));
            QVERIFY(longest > 1); // it is a wait, or nothing was simulated
        }
    }

    // Source: the bound of worth.h, r = 1: no side condition bars the entry.
    void theBoundHoldsWhereAllElseIsAgainstAnEntry()
    {
        const ChoiceRules rules{3, ConditionsInForce(sideConditionCount), 0};
        AgainstTheFirst days(plainProblem(4), rules);
        const int waited = days.menusUntilTheFirstIsOffered(1000);
        QVERIFY2(waited > otherRange, qPrintable(QString::number(waited)));
        QVERIFY2(waited <= longestWait(4, 1), qPrintable(QString::number(waited)));
    }

    // r = k: the first entry takes the whole stock of an item that all three worthy ones need, so
    // that a whole menu has to leave for it.
    void theBoundHoldsWhereAWholeMenuHasToLeave()
    {
        MenuProblem problem = plainProblem(6);
        problem.stock = {3};
        problem.entries[0].needs = {{0, 3}};
        for (const std::size_t worthy : {1U, 2U, 3U})
            problem.entries[worthy].needs = {{0, 1}};
        for (const std::size_t filler : {4U, 5U})
            problem.entries[filler].worth = lowestParts;
        const ChoiceRules rules{3, ConditionsInForce(sideConditionCount), 0};
        AgainstTheFirst days(problem, rules);
        const int waited = days.menusUntilTheFirstIsOffered(1000);
        QVERIFY2(waited > otherRange, qPrintable(QString::number(waited)));
        QVERIFY2(waited <= longestWait(6, 3), qPrintable(QString::number(waited)));
    }

    void theBoundHoldsWhateverTheClassesAndThePast()
    {
        const bool holds = rc::check("offered within the bound, feasible all the time", [] {
            ProblemShape shape;
            shape.entries = *rc::gen::inRange(7, 16);
            shape.families = *rc::gen::inRange(5, 12);
            shape.newPercent = *rc::gen::element(0, 30, 60);
            shape.friendPercent = *rc::gen::element(50, 90);
            shape.messyPercent = *rc::gen::element(0, 50);
            MenuProblem problem = randomProblem(shape, *rc::gen::arbitrary<unsigned>());
            for (Entry &entry : problem.entries)
                entry.worth = *rc::gen::inRange(lowestParts, highestParts + 1);
            problem.entries[0].worth = lowestParts;
            problem.curves.clear();
            const auto offers = *rc::gen::element<std::size_t>(1, 2, 3, 4, 5);
            const auto givenWay = *rc::gen::element<std::size_t>(0, 1, 2, 3, 4, 5);
            const ChoiceRules rules{offers, ConditionsInForce(givenWay), 0};

            MenuProblem forced = problem;
            forced.entries[0].worth += 1'000'000;
            forced.curves.assign(static_cast<std::size_t>(shape.skills), {});
            std::int64_t nodes = 0;
            const auto choice = bestChoice(forced, rules, nodes);
            const bool isFeasible = choice && choice->entries.front() == 0;
            RC_PRE(isFeasible);

            AgainstTheFirst days(problem, rules);
            for (std::size_t i = 1; i < problem.entries.size(); ++i)
                days.hasWaited(i, *rc::gen::inRange(0, 2000));
            const int bound = longestWait(shape.entries, static_cast<int>(offers));
            RC_ASSERT(days.menusUntilTheFirstIsOffered(bound) <= bound);
        });
        QVERIFY(holds);
    }
};

QTEST_APPLESS_MAIN(TestWaiting)
#include "tst_waiting.moc"

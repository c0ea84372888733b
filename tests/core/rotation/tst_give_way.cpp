#include <QtTest>

#include "core/rotation/give_way.h"

using namespace lidlark::rotation;

namespace {

constexpr std::array names{"one new", "known friend", "without table", "family", "one mess"};

/// Two entries that are both spoilt for a condition break it; one alone does not.
void spoil(Entry &entry, SideCondition condition)
{
    switch (condition) {
    case SideCondition::OneNew:
        entry.isNew = true;
        break;
    case SideCondition::KnownFriend:
        entry.isKnownFriend = false;
        break;
    case SideCondition::WithoutTable:
        entry.isWithoutTable = false;
        break;
    case SideCondition::Family:
        entry.family = 1;
        break;
    case SideCondition::OneMess:
        entry.isMessy = true;
        break;
    }
}

/// Nothing that any condition minds.
Entry fine(int family)
{
    Entry entry;
    entry.worth = 10;
    entry.family = family;
    entry.isKnownFriend = true;
    entry.isWithoutTable = true;
    return entry;
}

/// Of three entries the first is needed: beside the second it breaks @p first, beside the third
/// @p second, and the second and third need the same piece. The third is worth far more.
MenuProblem torn(SideCondition first, SideCondition second)
{
    MenuProblem problem;
    for (int i = 0; i < 3; ++i)
        problem.entries.push_back(fine(10 + i));
    spoil(problem.entries[0], first);
    spoil(problem.entries[0], second);
    spoil(problem.entries[1], first);
    spoil(problem.entries[2], second);
    problem.entries[1].needs = problem.entries[2].needs = {{0, 1}};
    problem.entries[2].worth = 1000;
    problem.stock = {1};
    return problem;
}

} // namespace

/// Guards the order in which side conditions give way (design.md 5): at most one new, known friend,
/// without a table, family, one mess; then fewer offers.
class TestGiveWay : public QObject
{
    Q_OBJECT
private slots:
    void theEarlierGivesWayWhateverTheOtherIsWorth_data()
    {
        QTest::addColumn<int>("first");
        QTest::addColumn<int>("second");
        for (int first = 0; first < 5; ++first) {
            for (int second = first + 1; second < 5; ++second)
                QTest::addRow("%s before %s", names[static_cast<std::size_t>(first)],
                              names[static_cast<std::size_t>(second)])
                    << first << second;
        }
    }

    void theEarlierGivesWayWhateverTheOtherIsWorth()
    {
        QFETCH(int, first);
        QFETCH(int, second);
        const auto earlier = static_cast<SideCondition>(first);
        const Settled settled = settle(torn(earlier, static_cast<SideCondition>(second)), 2);
        QCOMPARE(settled.entries, (std::vector<std::size_t>{0, 1}));
        QVERIFY(settled.gaveWay == std::vector{earlier});
    }

    void eachGivesWayBeforeThereAreFewerOffers_data()
    {
        QTest::addColumn<int>("condition");
        for (int condition = 0; condition < 5; ++condition)
            QTest::newRow(names[static_cast<std::size_t>(condition)]) << condition;
    }

    void eachGivesWayBeforeThereAreFewerOffers()
    {
        QFETCH(int, condition);
        MenuProblem problem;
        for (int i = 0; i < 3; ++i) {
            problem.entries.push_back(fine(10 + i));
            spoil(problem.entries.back(), static_cast<SideCondition>(condition));
        }
        const Settled settled = settle(problem, 3);
        QCOMPARE(settled.entries.size(), std::size_t{3});
        QVERIFY(settled.gaveWay == std::vector{static_cast<SideCondition>(condition)});
    }

    void allFiveGiveWayTogetherWhereTheyMust()
    {
        MenuProblem problem;
        for (int i = 0; i < 3; ++i) {
            problem.entries.push_back(fine(10 + i));
            for (int condition = 0; condition < 5; ++condition)
                spoil(problem.entries.back(), static_cast<SideCondition>(condition));
        }
        const Settled settled = settle(problem, 3);
        QCOMPARE(settled.entries.size(), std::size_t{3});
        QCOMPARE(settled.gaveWay.size(), sideConditionCount);
    }

    void stockNeverGivesWaySoThereAreFewer()
    {
        MenuProblem problem;
        for (int i = 0; i < 3; ++i) {
            problem.entries.push_back(fine(10 + i));
            problem.entries.back().needs = {{0, 1}};
        }
        problem.stock = {2};
        const Settled settled = settle(problem, 3);
        QCOMPARE(settled.entries.size(), std::size_t{2});
        QVERIFY(settled.gaveWay.empty());
    }

    /// With fewer offers everything is in force again.
    void oneOfferFewerBringsTheConditionsBack()
    {
        MenuProblem problem = torn(SideCondition::OneNew, SideCondition::OneMess);
        problem.entries.push_back(fine(20));
        for (Entry &entry : problem.entries)
            entry.needs = {{0, 1}};
        problem.stock = {2};
        const Settled settled = settle(problem, 3);
        QCOMPARE(settled.entries.size(), std::size_t{2});
        QVERIFY(settled.gaveWay.empty());
    }
};

QTEST_APPLESS_MAIN(TestGiveWay)
#include "tst_give_way.moc"

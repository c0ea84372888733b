#include <QtTest>

#include "tests/support/ninety_days.h"

using namespace lidlark;
using namespace lidlark::test;

/// Guards fairness over a season for every island child: nothing that fits is forgotten, every
/// skill has its turn, and a goal's skills more of it. The whole table: lidlark-report-fairness.
class TestNinetyDays : public QObject
{
    Q_OBJECT
private slots:
    void initTestCase()
    {
        for (const auto &family : usecase::island::families())
            m_lived[family.child] = NinetyDaysOf(family.child, 1).run();
    }

    void nothingThatFitsIsForgotten_data() { everyChild(); }

    /// Source: design.md 5, "no entry that stays feasible waits longer than 2 n menus"; the box
    /// issued the day before the first counts as an offer.
    void nothingThatFitsIsForgotten()
    {
        const NinetyDays &lived = livedBy();
        QVERIFY(!lived.feasible.empty());
        const int most = 2 * static_cast<int>(lived.feasible.size());
        for (const auto &[id, days] : lived.feasible) {
            if (days == NinetyDays::days && !isHeldBack(id))
                QVERIFY2(lived.longestGap.at(id) <= most, id.value.c_str());
        }
    }

    void everySkillThatFitsHasItsTurn_data() { everyChild(); }

    /// Which of the three offers is played is chance here, and a family's choice outside: what the
    /// menu owes is an offer, once a month at least.
    void everySkillThatFitsHasItsTurn()
    {
        const NinetyDays &lived = livedBy();
        for (std::size_t i = 0; i < catalogue::skillCount; ++i) {
            if (lived.possible[i] == NinetyDays::days)
                QVERIFY2(lived.offers[i] >= NinetyDays::days / 30,
                         std::string(catalogue::skillCodes.names[i]).c_str());
        }
    }

    void theSkillsOfAGoalHaveMoreThanTheOthers_data() { everyChild(); }

    /// Their average beside the average of the other skills that fit every day.
    void theSkillsOfAGoalHaveMoreThanTheOthers()
    {
        const NinetyDays &lived = livedBy();
        int goals = 0;
        int goalMinutes = 0;
        int others = 0;
        int otherMinutes = 0;
        for (std::size_t i = 0; i < catalogue::skillCount; ++i) {
            if (lived.possible[i] < NinetyDays::days)
                continue;
            (lived.isGoal[i] ? goals : others) += 1;
            (lived.isGoal[i] ? goalMinutes : otherMinutes) += lived.minutes[i];
        }
        if (goals > 0 && others > 0)
            QVERIFY2(goalMinutes * others > otherMinutes * goals,
                     qPrintable(QStringLiteral("%1 of %2, %3 of %4")
                                    .arg(goalMinutes)
                                    .arg(goals)
                                    .arg(otherMinutes)
                                    .arg(others)));
    }

    void thereAreThreeOffersNearlyEveryEvening_data() { everyChild(); }
    void thereAreThreeOffersNearlyEveryEvening() { QVERIFY(livedBy().shortMenus <= 2); }

private:
    /// For a child who tires fast the check-in's rules hold a high-energy one back every day.
    static bool isHeldBack(const ActivityId &id)
    {
        QFETCH(QByteArray, child);
        return familyOf(child.toStdString()).energyLimited &&
               realCatalogue().activity(id)->energy == catalogue::Energy::High;
    }
    void everyChild()
    {
        QTest::addColumn<QByteArray>("child");
        for (const auto &[child, lived] : m_lived)
            QTest::newRow(child.c_str()) << QByteArray::fromStdString(child);
    }
    const NinetyDays &livedBy()
    {
        QFETCH(QByteArray, child);
        return m_lived.at(child.toStdString());
    }

    std::map<std::string, NinetyDays> m_lived;
};

QTEST_APPLESS_MAIN(TestNinetyDays)
#include "tst_ninety_days.moc"

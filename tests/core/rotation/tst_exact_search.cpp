#include <QtTest>

#include "core/rotation/exact_search.h"
#include "core/rotation/give_way.h"
#include "tests/core/rotation/enumeration_oracle.h"
#include "tests/core/rotation/glpk_oracle.h"
#include "tests/core/rotation/random_problem.h"

#include <rapidcheck.h>

using namespace lidlark::rotation;

namespace {

/// Small problems, some with many ties, some where hardly anything is allowed.
samples::ProblemShape smallShape()
{
    samples::ProblemShape shape;
    shape.entries = *rc::gen::inRange(0, 11);
    shape.worthMost = *rc::gen::element(0, 3, 40);
    shape.families = *rc::gen::inRange(1, 9);
    shape.newPercent = *rc::gen::element(0, 30, 100);
    shape.friendPercent = *rc::gen::element(0, 20, 60);
    shape.withoutTablePercent = *rc::gen::element(0, 15, 60);
    shape.messyPercent = *rc::gen::element(0, 30, 90);
    shape.heldBackPercent = *rc::gen::element(0, 0, 50);
    return shape;
}

ChoiceRules rulesFor(std::size_t offers, std::size_t givenWay, std::size_t heldBackMost)
{
    return {offers, ConditionsInForce(givenWay), heldBackMost};
}

} // namespace

class TestExactSearch : public QObject
{
    Q_OBJECT

private slots:
    // Source: plain enumeration of every set in dictionary order, in enumeration_oracle.h.
    void findsTheFirstOptimumThatLookingAtEverySetFinds()
    {
        const bool holds = rc::check("value, ties and infeasibility as by enumeration", [] {
            const auto problem =
                samples::randomProblem(smallShape(), *rc::gen::arbitrary<unsigned>());
            const auto offers = *rc::gen::inRange<std::size_t>(1, 6);
            const auto givenWay = *rc::gen::inRange<std::size_t>(0, 6);
            const auto heldBack = *rc::gen::inRange<std::size_t>(0, 3);
            std::int64_t nodes = 0;
            const auto found = bestChoice(problem, rulesFor(offers, givenWay, heldBack), nodes);
            const auto looked = oracle::bestByLooking(problem, offers, givenWay, heldBack);
            RC_ASSERT(found.has_value() == looked.has_value());
            if (found) {
                RC_ASSERT(found->value == looked->value);
                RC_ASSERT(found->entries == looked->entries);
            }
        });
        QVERIFY(holds);
    }

    // Source: design.md 5, the order in which conditions give way, walked with every set looked at.
    void givesWayStepByStepAsLookingAtEverySetDoes()
    {
        const bool holds = rc::check("the ladder as by enumeration", [] {
            const auto problem =
                samples::randomProblem(smallShape(), *rc::gen::arbitrary<unsigned>());
            const auto offers = *rc::gen::inRange<std::size_t>(1, 5);
            const Settled settled = settle(problem, offers);
            const Choice looked = oracle::settleByLooking(problem, offers);
            RC_ASSERT(settled.entries == looked.entries);
            RC_ASSERT(settled.value == looked.value);
        });
        QVERIFY(holds);
    }

    void gaveWayNamesExactlyWhatTheChoiceBreaks()
    {
        const bool holds = rc::check("what gave way is broken, what did not is kept", [] {
            const auto problem =
                samples::randomProblem(smallShape(), *rc::gen::arbitrary<unsigned>());
            const Settled settled = settle(problem, 3);
            // The step after the last condition that is broken: everything later must hold.
            const std::size_t broken =
                settled.gaveWay.empty() ? 0 : static_cast<std::size_t>(settled.gaveWay.back()) + 1;
            if (!settled.entries.empty())
                RC_ASSERT(oracle::isAllowed(problem, settled.entries, broken, 3));
            for (const SideCondition condition : settled.gaveWay) {
                const auto step = static_cast<std::size_t>(condition);
                RC_ASSERT(!oracle::isAllowed(problem, settled.entries, step, 3));
            }
        });
        QVERIFY(holds);
    }

    // Source: GLPK 5.0 (glpk_oracle.h), an independent mixed-integer solver, at zero gap.
    void reachesTheOptimumThatGlpkProves_data()
    {
        QTest::addColumn<int>("entries");
        QTest::addColumn<int>("offers");
        QTest::addColumn<int>("problems");
        QTest::newRow("20 entries, 3 offers") << 20 << 3 << 60;
        QTest::newRow("60 entries, 3 offers") << 60 << 3 << 40;
        QTest::newRow("80 entries, 5 offers") << 80 << 5 << 30;
        QTest::newRow("300 entries, 3 offers") << 300 << 3 << 12;
        QTest::newRow("300 entries, 5 offers") << 300 << 5 << 12;
    }
    void reachesTheOptimumThatGlpkProves()
    {
        QFETCH(int, entries);
        QFETCH(int, offers);
        QFETCH(int, problems);
        const auto k = static_cast<std::size_t>(offers);
        for (int i = 0; i < problems; ++i) {
            samples::ProblemShape shape;
            shape.entries = entries;
            shape.families = i % 3 == 0 ? 4 : 15;
            shape.skills = 24;
            shape.worthMost = i % 2 == 0 ? 120 : 20;
            shape.heldBackPercent = i % 4 == 0 ? 20 : 0;
            const auto problem = samples::randomProblem(shape, static_cast<unsigned>(1000 + i));
            for (const std::size_t givenWay : {std::size_t{0}, std::size_t{2}, std::size_t{5}}) {
                std::int64_t nodes = 0;
                const auto found = bestChoice(problem, rulesFor(k, givenWay, 0), nodes);
                const auto proved = oracle::GlpkMenu(problem, k, givenWay).optimum();
                QCOMPARE(found.has_value(), proved.has_value());
                if (found)
                    QCOMPARE(found->value, *proved);
            }
        }
    }

    void aNewHomeWhereEverythingTiesIsStillSolved()
    {
        samples::ProblemShape shape;
        shape.entries = 300;
        shape.worthMost = 0;
        shape.newPercent = 100;
        const auto problem = samples::randomProblem(shape, 7);
        const Settled settled = settle(problem, 5);
        QCOMPARE(settled.entries.size(), std::size_t{5});
        const auto proved = oracle::GlpkMenu(problem, 5, 2).optimum();
        QVERIFY(proved.has_value());
        QCOMPARE(settled.value, *proved);
    }

    void twoMissingTraitsThatCannotComeTogetherAreNoticedSoon()
    {
        // The only friend and the only one without a table are of one family: no choice keeps both.
        samples::ProblemShape shape;
        shape.entries = 298;
        shape.friendPercent = 0;
        shape.withoutTablePercent = 0;
        shape.newPercent = 0;
        shape.families = 40;
        auto problem = samples::randomProblem(shape, 11);
        Entry liked = problem.entries.front();
        liked.family = 99;
        liked.isKnownFriend = true;
        Entry floorPlay = problem.entries.back();
        floorPlay.family = 99;
        floorPlay.isWithoutTable = true;
        problem.entries.push_back(liked);
        problem.entries.push_back(floorPlay);
        std::int64_t nodes = 0;
        QVERIFY(!bestChoice(problem, rulesFor(5, 0, 0), nodes));
        QVERIFY2(nodes < 1000, qPrintable(QString::number(nodes)));
    }
};

QTEST_APPLESS_MAIN(TestExactSearch)
#include "tst_exact_search.moc"

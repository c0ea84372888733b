#include <QtTest>

#include "core/rotation/coverage.h"
#include "tests/core/rotation/menu_samples.h"

#include <rapidcheck.h>

using namespace lidlark;
using namespace lidlark::rotation;
using namespace lidlark::rotation::samples;
using catalogue::Activity;
using catalogue::Skill;

namespace {

int weekGain(int practised, int more, const child::Child &child)
{
    Question question = questionFor(child);
    question.minutesThisWeek[static_cast<std::size_t>(Skill::Bil)] = practised;
    return gainOf(weekCurves(question)[static_cast<std::size_t>(Skill::Bil)], 0, more);
}

} // namespace

class TestCoverage : public QObject
{
    Q_OBJECT

private slots:
    // Source: development.md g: rule 2 (a gap of 2 to 4 days) and Cepeda 2008, Psychol Sci 19:1095
    // (from memory there: the best gap is about 20 to 40 % of a delay of one week, 1.4 to 2.8
    // days).
    void theWeekAsksForAsManyBoutsAsTheSpacingSays()
    {
        int wanted = 0;
        for (const Segment &segment : weekSegments)
            wanted += segment.width;
        const double bouts = wanted / 5.0; // of five minutes
        const double gap = 7 / bouts;
        QVERIFY(gap >= 2 && gap <= 4);
        QVERIFY(gap >= 0.2 * 7 && gap <= 0.4 * 7);
    }

    // Source: activities.md 2.2, "spread +1: main skill not practised this week".
    void aFirstFiveMinutePlayOfTheWeekIsOnePoint()
    {
        QCOMPARE(weekGain(0, 5, fin()), 10);
        QCOMPARE(weekGain(5, 5, fin()), 5);
        QCOMPARE(weekGain(12, 5, fin()), 3);
        QCOMPARE(weekGain(15, 5, fin()), 0);
        QCOMPARE(weekGain(500, 5, fin()), 0);
    }

    void aSkillThatAGoalNamesCountsTwice()
    {
        child::Child child = fin();
        child.goals.resize(2);
        for (child::Goal &goal : child.goals)
            goal.skills = {Skill::Bil};
        QCOMPARE(weekGain(0, 5, child), 20);
    }

    // Source: reference/rotation.md: concave, so that the sum of single gains bounds a set's.
    void gainsNeverGrowWithPractice()
    {
        const bool holds = rc::check("concave, and additive along the curve", [] {
            const int from = *rc::gen::inRange(0, 40);
            const int later = from + *rc::gen::inRange(0, 20);
            const int more = *rc::gen::inRange(0, 20);
            const Curve curve(weekSegments.begin(), weekSegments.end());
            RC_ASSERT(gainOf(curve, from, more) >= gainOf(curve, later, more));
            RC_ASSERT(gainOf(curve, 0, from) + gainOf(curve, from, more) ==
                      gainOf(curve, 0, from + more));
            // What is left after practice is the same curve further on.
            RC_ASSERT(weekGain(from, more, fin()) == gainOf(curve, from, more));
        });
        QVERIFY(holds);
    }

    void furtherSkillsCountHalfTheMinutesRoundedDown()
    {
        Shelf shelf;
        shelf.add("one", [](Activity &a) {
            a.skillsMain = {Skill::Pin, Skill::Bil};
            a.skillsAlso = {Skill::Tac, Skill::Pin};
            a.minutes.play = 5;
        });
        const auto practice = practiceOf(shelf.at(0));
        QCOMPARE(practice.size(), std::size_t{3});
        QCOMPARE(practice[0].minutes, 5);
        QCOMPARE(practice[1].minutes, 5);
        QVERIFY(practice[2].skill == Skill::Tac);
        QCOMPARE(practice[2].minutes, 2);
    }

    void noActivityAddsMoreThanTheLargestCoverage()
    {
        child::Child child = fin();
        child.goals.resize(1);
        child.goals[0].skills = {Skill::Pin, Skill::Bil, Skill::Tac, Skill::Str};
        Shelf shelf;
        shelf.add("most", [](Activity &a) {
            a.skillsMain = {Skill::Pin, Skill::Bil};
            a.skillsAlso = {Skill::Tac, Skill::Str};
            a.minutes.play = 8;
        });
        const MenuDraft draft = draftMenu(shelf.candidates(), questionFor(child));
        QCOMPARE(draft.picks.front().facts.coverage, largestCoverage);
    }
};

QTEST_APPLESS_MAIN(TestCoverage)
#include "tst_coverage.moc"

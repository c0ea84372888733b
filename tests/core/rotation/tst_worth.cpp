#include <QtTest>

#include "core/rotation/why.h"
#include "core/rotation/worth.h"
#include "tests/core/rotation/menu_samples.h"

using namespace lidlark;
using namespace lidlark::rotation;
using namespace lidlark::rotation::samples;
using catalogue::Activity;
using catalogue::LifeArea;
using catalogue::Skill;

namespace {

constexpr std::size_t thirtyAdmitted = 30;

int partOf(Part part, const Question &question, const Shelf::Change &change = {})
{
    Shelf shelf;
    shelf.add("one", change);
    return worthOf(shelf.candidates().front(), question, thirtyAdmitted).of(part);
}

int partFor(Part part, const Record &record)
{
    Question question = questionFor(fin());
    question.records[{"one"}] = record;
    return partOf(part, question);
}

child::Child childWithGoal()
{
    child::Child child{{"fin"}, "Fin", std::nullopt, false, {}};
    child::Goal goal;
    goal.shortWords = "opening his lunch tub";
    goal.skills = {Skill::Bil};
    goal.lifeAreas = {LifeArea::OpeningThings};
    child.goals = {goal};
    return child;
}

} // namespace

// Source of all weights: activities.md 2.2 (practice judgement).
class TestWorth : public QObject
{
    Q_OBJECT

private slots:
    void aGoalLinkIsWorthUpToFourPoints()
    {
        const child::Child child = childWithGoal();
        const Question question = questionFor(child);
        const auto link = [&](std::vector<Skill> mains, std::vector<Skill> also,
                              std::vector<LifeArea> areas) {
            return partOf(Part::GoalLink, question, [&](Activity &a) {
                a.skillsMain = mains;
                a.skillsAlso = also;
                a.lifeAreas = areas;
            });
        };
        QCOMPARE(link({Skill::Bil}, {}, {LifeArea::OpeningThings}), 40);
        QCOMPARE(link({Skill::Pin, Skill::Bil}, {}, {}), 30);
        QCOMPARE(link({Skill::Pin}, {}, {LifeArea::OpeningThings}), 20);
        QCOMPARE(link({Skill::Pin}, {Skill::Bil}, {}), 10);
        QCOMPARE(link({Skill::Pin}, {Skill::Str}, {LifeArea::Dressing}), 0);
    }

    void theOwnRecordNeedsThreePlaysAndIsShrunk()
    {
        Record record;
        record.plays = 2;
        record.pairs.towards = 2;
        QCOMPARE(partFor(Part::OwnRecord, record), 0);
        record.plays = 8;
        record.pairs = {5, 2, 1, 0, 0};
        QCOMPARE(partFor(Part::OwnRecord, record), 20 * 4 / 12);
        record.pairs = {0, 0, 8, 0, 0};
        QCOMPARE(partFor(Part::OwnRecord, record), -20 * 8 / 12);
    }

    void whatAdultsNoticedIsAnObservationToo()
    {
        Record record;
        record.plays = 6;
        record.noticed = 4; // two of them "needed help", which is no dislike
        record.liked = 2;
        QCOMPARE(partFor(Part::OwnRecord, record), 20 * 2 / 8);
        record.pairs = {0, 0, 2, 1, 1}; // past steady is neither nearer nor further
        QCOMPARE(partFor(Part::OwnRecord, record), 0);
    }

    void theOwnRecordStaysWithinItsRange()
    {
        Record record;
        record.plays = 300;
        record.noticed = record.liked = 300;
        record.pairs.towards = 300;
        QVERIFY(partFor(Part::OwnRecord, record) <= 20);
        record.noticed = record.liked = 0;
        record.pairs = {0, 0, 300, 0, 0};
        QVERIFY(partFor(Part::OwnRecord, record) >= -20);
    }

    void freshness_data()
    {
        QTest::addColumn<int>("daysSincePlayed");
        QTest::addColumn<int>("tenths");
        QTest::newRow("yesterday") << 1 << -30;
        QTest::newRow("two days ago") << 2 << -30;
        QTest::newRow("three days ago") << 3 << 0;
        QTest::newRow("nine days ago") << 9 << 0;
        QTest::newRow("ten days ago") << 10 << 20;
    }
    void freshness()
    {
        QFETCH(int, daysSincePlayed);
        Record record;
        record.plays = 1;
        record.daysSincePlayed = daysSincePlayed;
        QTEST(partFor(Part::Freshness, record), "tenths");
    }

    void neverPlayedIsAsFreshAsTheBoxIsOld()
    {
        Question question = questionFor(fin());
        question.daysSinceIssue = 9;
        QCOMPARE(partOf(Part::Freshness, question), 0);
        question.daysSinceIssue = 10;
        QCOMPARE(partOf(Part::Freshness, question), 20);
    }

    void aKnownFriendIsSomethingAlreadyEnjoyed()
    {
        Record record;
        record.favourite = true;
        QCOMPARE(partFor(Part::KnownFriend, record), 0); // wished for, never played
        record.plays = 1;
        QCOMPARE(partFor(Part::KnownFriend, record), 20);
        record.favourite = false;
        QCOMPARE(partFor(Part::KnownFriend, record), 0);
        record.askedAgain = 1;
        QCOMPARE(partFor(Part::KnownFriend, record), 20);
        record = {};
        record.plays = 2;
        QCOMPARE(partFor(Part::KnownFriend, record), 20);
    }

    void stockPullsBothWays()
    {
        Question question = questionFor(fin());
        question.stock = {{{"dough"}, 1}, {{"balloon"}, 3}};
        question.useSoon[{"dough"}] = true;
        const auto dough = [](Activity &a) {
            a.items = {boxUse("dough", 1, catalogue::Fate::PartUsed)};
        };
        const auto balloon = [](Activity &a) {
            a.items = {boxUse("balloon", 1, catalogue::Fate::UsedUp)};
        };
        QCOMPARE(partOf(Part::UseSoon, question, dough), 10);
        QCOMPARE(partOf(Part::SpareTheStock, question, dough), 0);
        QCOMPARE(partOf(Part::SpareTheStock, question, balloon), 0);
        question.stock[{"balloon"}] = 1;
        QCOMPARE(partOf(Part::SpareTheStock, question, balloon), -20);
    }

    // Source: design.md 5: 0 for the first n / k days, then +1 a day. Here 30 / 3.
    void waitingGrowsAfterTheFreeDays()
    {
        Record record;
        record.daysSinceOffered = 10;
        QCOMPARE(partFor(Part::Waiting, record), 0);
        record.daysSinceOffered = 11;
        QCOMPARE(partFor(Part::Waiting, record), 10);
        record.daysSinceOffered = 400;
        QCOMPARE(partFor(Part::Waiting, record), 3900);
        Question question = questionFor(fin());
        question.daysSinceIssue = 12;
        QCOMPARE(partOf(Part::Waiting, question), 20); // never offered: since the box was issued
    }

    void washingUpCostsInTheEveningOrForATiredAdult()
    {
        const auto messy = [](Activity &a) { a.mess = 2; };
        Question question = questionFor(fin());
        QCOMPARE(partOf(Part::PutBackCost, question, messy), 0);
        question.filters.tiredAdult = true;
        QCOMPARE(partOf(Part::PutBackCost, question, messy), -10);
        question.filters.tiredAdult = false;
        question.part = PartOfDay::Evening;
        QCOMPARE(partOf(Part::PutBackCost, question, messy), -10);
        QCOMPARE(partOf(Part::PutBackCost, question, [](Activity &a) { a.mess = 1; }), 0);
    }

    // Source: job.md F8: every goal-linked offer names the goal.
    void theGoalIsNamedFirstAndTheStrongestPartsFollow()
    {
        const child::Child child = childWithGoal();
        Shelf shelf;
        shelf.add("tubs", [](Activity &a) { a.skillsMain = {Skill::Bil}; });
        Question question = questionFor(child);
        question.records[{"tubs"}] = knownFriend();
        question.records[{"tubs"}].daysSinceOffered = 30;
        const MenuDraft draft = draftMenu(shelf.candidates(), question);
        const OfferFacts &facts = draft.picks.front().facts;
        QCOMPARE(facts.goal, std::string("opening his lunch tub"));
        QVERIFY((facts.why == std::vector{WhyCode::Goal, WhyCode::Waiting, WhyCode::KnownFriend}));
    }

    void newIsSaidOfWhatWasNeverPlayedAndAllHereWhenNothingElseIs()
    {
        Shelf shelf;
        shelf.add("one");
        Question question = questionFor(fin());
        question.minutesThisWeek.fill(60);
        question.offers = 1; // one free day of waiting
        question.daysSinceIssue = 1;
        const auto whys = [&] {
            return draftMenu(shelf.candidates(), question).picks[0].facts.why;
        };
        QVERIFY(whys() == std::vector{WhyCode::New});
        question.daysSinceIssue = 12;
        QVERIFY((whys() == std::vector{WhyCode::Waiting, WhyCode::New})); // never "not for a while"
        question.records[{"one"}] = playedOnce();
        question.records[{"one"}].daysSincePlayed = 3;
        QVERIFY(whys() == std::vector{WhyCode::AllHere});
    }
};

QTEST_APPLESS_MAIN(TestWorth)
#include "tst_worth.moc"

#include <QtTest>

#include "core/store/projector.h"
#include "core/usecase/agree_goal.h"
#include "core/usecase/child_goals.h"
#include "core/usecase/end_goal.h"
#include "core/usecase/export_record.h"
#include "core/usecase/rate_goal.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;
using goals::RatedBy;

namespace {

goals::GoalDraft coat()
{
    goals::GoalDraft draft;
    draft.words = " Does up his coat before break ";
    draft.levels = {"An adult does it up.", "Holds the edges, an adult pulls the zip.",
                    "Pulls the zip up once an adult has joined it.", "Joins and pulls it indoors.",
                    "Joins and pulls it outside, with the others waiting."};
    draft.baseline = -2;
    draft.reviewOn = dayFrom({2027, 3, 29});
    draft.skills = {catalogue::Skill::Pin};
    return draft;
}

const std::string tub = "g-fin-lunch-tub";

Day january(int day)
{
    return *dayFrom({2027, 1, day});
}

std::string reasonOf(const Outcome &outcome)
{
    return outcome ? "done" : outcome.error().detail;
}

std::int64_t eventsIn(Phone &phone)
{
    return *store::EventRepository(phone.database).count();
}

} // namespace

/// Guards job.md T10 and T11 over a store: a goal is agreed, its words are changed, two people rate
/// it on two phones, and the menu's goals go on.
class TestGoals : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_morven;

    [[nodiscard]] usecase::Workplace morven() const { return m_morven->workplace(); }
    [[nodiscard]] goals::GoalRecord record(Phone &phone, const std::string &id) const
    {
        usecase::Workplace workplace = phone.workplace();
        const auto found = usecase::childGoal(workplace, "Fin", id);
        if (!found)
            qFatal("%s", found.error().detail.c_str());
        return *found;
    }

private slots:
    void init()
    {
        m_morven = therapistWith({"Fin", "Rory"});
        m_morven->clock.moveTo(islandTime(11, 10, 0));
    }
    void cleanup()
    {
        QVERIFY(*store::Projector(m_morven->database).matchesRefold());
        m_morven.reset();
    }

    void finsGoalIsThereWithItsLevelsAndBaseline()
    {
        const goals::GoalRecord fins = record(*m_morven, tub);
        // Source: job.md 4: levels as agreed on 4 January, baseline -1, review 29 March 2027.
        QCOMPARE(fins.current().goal.baseline, -1);
        QCOMPARE(fins.current().goal.agreedOn, january(4));
        QCOMPARE(fins.current().goal.reviewOn, *dayFrom({2027, 3, 29}));
        QCOMPARE(fins.current().goal.version, 1);
    }

    void anAgreedGoalIsOneOfTheChildsAndOfNobodyElses()
    {
        usecase::Workplace workplace = morven();
        const auto id = usecase::agreeGoal(workplace, "Fin", coat());
        QVERIFY(id.ok());
        const auto all = usecase::childGoals(workplace, "Fin");
        QCOMPARE(all->size(), std::size_t{2});
        QCOMPARE(all->back().current().goal.id, *id);
        QCOMPARE(all->back().current().goal.words, std::string("Does up his coat before break"));
        QCOMPARE(all->back().current().goal.shortWords, all->back().current().goal.words);
        QCOMPARE(all->back().current().goal.agreedOn, january(11));
        QVERIFY(usecase::childGoals(workplace, "Rory")->empty());
        const auto family = usecase::loadFamily(workplace, "Fin");
        QCOMPARE(family->child.goals.size(), std::size_t{2}); // which the menu reads
    }

    void whatIsMissingIsNamedAndNothingIsWritten_data()
    {
        QTest::addColumn<int>("what");
        QTest::addColumn<QByteArray>("reason");
        QTest::newRow("repeats") << 0 << QByteArray("level +1: the same as another step");
        QTest::newRow("no baseline") << 1 << QByteArray("baseline: empty");
        QTest::newRow("no review") << 2 << QByteArray("review date: empty");
        QTest::newRow("review first")
            << 3 << QByteArray("review date: not after the day it was agreed");
        QTest::newRow("no level") << 4 << QByteArray("level -2: empty");
        QTest::newRow("agreed tomorrow") << 5 << QByteArray("agreed: still to come");
    }
    void whatIsMissingIsNamedAndNothingIsWritten()
    {
        QFETCH(int, what);
        QFETCH(QByteArray, reason);
        goals::GoalDraft draft = coat();
        if (what == 0)
            draft.levels[3] = draft.levels[2];
        if (what == 1)
            draft.baseline.reset();
        if (what == 2)
            draft.reviewOn.reset();
        if (what == 3)
            draft.reviewOn = january(10);
        if (what == 4)
            draft.levels[0].clear();
        if (what == 5)
            draft.agreedOn = january(12);
        usecase::Workplace workplace = morven();
        const std::int64_t before = eventsIn(*m_morven);
        const auto refused = usecase::agreeGoal(workplace, "Fin", draft);
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::Invalid);
        QCOMPARE(QByteArray::fromStdString(refused.error().detail), reason);
        QCOMPARE(reasonOf(usecase::rewordGoal(workplace, "Fin", tub, draft)), reason.toStdString());
        QCOMPARE(eventsIn(*m_morven), before);
    }

    void otherWordsBeginAVersionAndAgainstTheOldOneNothingIsSaidAnyMore()
    {
        usecase::Workplace workplace = morven();
        QVERIFY(
            usecase::rateGoal(workplace, "Fin", {tub, 0, RatedBy::Together, "", january(11)}).ok());
        goals::GoalDraft draft = *usecase::draftOf(workplace, "Fin", tub);
        QCOMPARE(draft.baseline, std::optional(0)); // where it stands is where new words begin
        draft.levels[4] = "Opens three tubs that are new to him.";
        QVERIFY(usecase::rewordGoal(workplace, "Fin", tub, draft).ok());
        const goals::GoalRecord fins = record(*m_morven, tub);
        QCOMPARE(fins.versions.size(), std::size_t{2});
        QCOMPARE(fins.current().goal.version, 2);
        QCOMPARE(fins.current().goal.agreedOn, january(11));
        QVERIFY(fins.current().ratings.empty());
        QCOMPARE(fins.versions[0].ratings.size(), std::size_t{1});
        QCOMPARE(fins.versions[0].goal.levels.back(),
                 std::string("Opens it and a friend's different tub."));
    }

    void aReviewThatMovesIsNoVersionAndLosesNoRating()
    {
        usecase::Workplace workplace = morven();
        QVERIFY(usecase::rateGoal(workplace, "Fin", {tub, 1, RatedBy::Together, "", {}}).ok());
        goals::GoalDraft draft = *usecase::draftOf(workplace, "Fin", tub);
        draft.reviewOn = *dayFrom({2027, 4, 12});
        QVERIFY(usecase::rewordGoal(workplace, "Fin", tub, draft).ok());
        const goals::GoalRecord fins = record(*m_morven, tub);
        QCOMPARE(fins.versions.size(), std::size_t{1});
        QCOMPARE(fins.current().goal.reviewOn, *dayFrom({2027, 4, 12}));
        QCOMPARE(fins.current().goal.baseline, -1);
        QCOMPARE(fins.current().goal.agreedOn, january(4));
        QCOMPARE(fins.current().goal.now, 1);
    }

    void twoRateOnTwoPhonesAndBothStandOnBoth()
    {
        Phone ruth("Ruth", store::Role::Parent, "h-fin");
        ruth.clock.moveTo(islandTime(11, 12, 0));
        ruth.meet(*m_morven);
        usecase::Workplace hers = ruth.workplace();
        usecase::Workplace workplace = morven();
        QVERIFY(usecase::rateGoal(hers, "Fin", {tub, 1, RatedBy::Family, "Ruth", {}}).ok());
        QVERIFY(
            usecase::rateGoal(workplace, "Fin", {tub, -1, RatedBy::Therapist, "Morven", {}}).ok());
        ruth.meet(*m_morven);
        m_morven->meet(ruth);
        QCOMPARE(record(ruth, tub), record(*m_morven, tub));
        QCOMPARE(record(ruth, tub).current().ratings.size(), std::size_t{2});
        QCOMPARE(record(ruth, tub).current().goal.now, -1);
        QVERIFY(*store::Projector(ruth.database).matchesRefold());
    }

    void whatWasAgreedTogetherIsWhereTheFamilyReadsIt()
    {
        usecase::Workplace workplace = morven();
        QVERIFY(usecase::rateGoal(workplace, "Fin", {tub, 0, RatedBy::Together, "", {}}).ok());
        QCOMPARE(usecase::loadFamily(workplace, "Fin")->child.goals.front().now, 0);
    }

    void aRatingThatDoesNotFitIsRefused_data()
    {
        QTest::addColumn<int>("level");
        QTest::addColumn<QByteArray>("rater");
        QTest::addColumn<int>("day");
        QTest::addColumn<QByteArray>("reason");
        QTest::newRow("level 3") << 3 << QByteArray("Ruth") << 11
                                 << QByteArray("level: none of the five steps");
        QTest::newRow("level -3") << -3 << QByteArray("Ruth") << 11
                                  << QByteArray("level: none of the five steps");
        QTest::newRow("nobody") << 1 << QByteArray(" ") << 11 << QByteArray("rater: empty");
        QTest::newRow("tomorrow") << 1 << QByteArray("Ruth") << 12
                                  << QByteArray("day: still to come");
        QTest::newRow("before") << 1 << QByteArray("Ruth") << 3
                                << QByteArray("day: before the goal was agreed");
        QTest::newRow("no text") << 1 << QByteArray("\xff") << 11
                                 << QByteArray("rater: not plain text");
    }
    void aRatingThatDoesNotFitIsRefused()
    {
        QFETCH(int, level);
        QFETCH(QByteArray, rater);
        QFETCH(int, day);
        QFETCH(QByteArray, reason);
        usecase::Workplace workplace = morven();
        const std::int64_t before = eventsIn(*m_morven);
        const Outcome refused = usecase::rateGoal(
            workplace, "Fin", {tub, level, RatedBy::Family, rater.toStdString(), january(day)});
        QCOMPARE(QByteArray::fromStdString(reasonOf(refused)), reason);
        QCOMPARE(eventsIn(*m_morven), before);
        QCOMPARE(reasonOf(usecase::rateGoal(workplace, "Fin", {"no-such", 0})),
                 std::string("this goal"));
    }

    /// Source: events.md 4: goals are the parents' and the therapist's.
    void aGuestRatesNothing()
    {
        Phone archie("Archie", store::Role::Guest, "h-fin");
        archie.meet(*m_morven);
        usecase::Workplace his = archie.workplace();
        QCOMPARE(usecase::rateGoal(his, "Fin", {tub, 0}).error().code, ErrorCode::NotAllowed);
        QCOMPARE(usecase::agreeGoal(his, "Fin", coat()).error().code, ErrorCode::NotAllowed);
        QVERIFY(usecase::childGoals(his, "Fin")->empty());
    }

    void onlyTheTherapistWeighs()
    {
        usecase::Workplace workplace = morven();
        QVERIFY(usecase::rateGoal(workplace, "Fin", {tub, 1, RatedBy::Together, "", {}}).ok());
        QVERIFY(usecase::weighGoal(workplace, "Fin", tub, 6).ok());
        QCOMPARE(record(*m_morven, tub).current().goal.weight, 6);
        QCOMPARE(record(*m_morven, tub).current().goal.now, 1);
        QCOMPARE(record(*m_morven, tub).versions.size(), std::size_t{1});
        for (const int wrong : {-1, 10})
            QCOMPARE(reasonOf(usecase::weighGoal(workplace, "Fin", tub, wrong)),
                     std::string("weight: 0 to 9"));
        Phone ruth("Ruth", store::Role::Parent, "h-fin");
        ruth.meet(*m_morven);
        usecase::Workplace hers = ruth.workplace();
        QCOMPARE(usecase::weighGoal(hers, "Fin", tub, 0).error().code, ErrorCode::NotAllowed);
    }

    /// Source: job.md 1.4 "Review goals", each block; events.md 1: nothing is erased.
    void anEndedGoalLeavesTheMenuAndIsTakenUpAgain()
    {
        usecase::Workplace workplace = morven();
        QVERIFY(usecase::rateGoal(workplace, "Fin", {tub, 1, RatedBy::Together, "", {}}).ok());
        const std::int64_t before = eventsIn(*m_morven);
        QVERIFY(usecase::endGoal(workplace, "Fin", {tub, goals::Turn::Reached, " at school too "})
                    .ok());
        QCOMPARE(eventsIn(*m_morven), before + 1);
        QVERIFY(usecase::loadFamily(workplace, "Fin")->child.goals.empty()); // which the menu reads
        const goals::GoalRecord ended = record(*m_morven, tub);
        QCOMPARE(ended.ending, std::optional(goals::GoalTurn{goals::Turn::Reached, january(11),
                                                             "at school too", "Morven"}));
        QCOMPARE(ended.current().goal.now, 1);
        QCOMPARE(ended.current().goal.baseline, -1);
        QCOMPARE(ended.current().ratings.size(), std::size_t{1});
        QCOMPARE(reasonOf(usecase::endGoal(workplace, "Fin", {tub})),
                 std::string("goal: it has ended"));
        QCOMPARE(reasonOf(usecase::rewordGoal(workplace, "Fin", tub, coat())),
                 std::string("goal: it has ended"));
        QVERIFY(usecase::rateGoal(workplace, "Fin", {tub, 2, RatedBy::Family, "Ruth", {}}).ok());
        QVERIFY(usecase::takeUpGoal(workplace, "Fin", tub).ok());
        QCOMPARE(usecase::loadFamily(workplace, "Fin")->child.goals.front().now, 1);
        QCOMPARE(record(*m_morven, tub).turns.size(), std::size_t{2});
        QCOMPARE(record(*m_morven, tub).current().ratings.size(), std::size_t{2});
        QCOMPARE(reasonOf(usecase::takeUpGoal(workplace, "Fin", tub)),
                 std::string("goal: it has not ended"));
    }

    void anEndThatDoesNotFitIsRefused()
    {
        usecase::Workplace workplace = morven();
        const std::int64_t before = eventsIn(*m_morven);
        QCOMPARE(reasonOf(usecase::endGoal(workplace, "Fin", {tub, goals::Turn::TakenUp})),
                 std::string("why: empty"));
        QCOMPARE(reasonOf(usecase::endGoal(workplace, "Fin",
                                           {tub, goals::Turn::Reached, std::string(201, 'a')})),
                 std::string("reason: at most 200 characters"));
        QCOMPARE(reasonOf(usecase::endGoal(workplace, "Fin", {"no-such"})),
                 std::string("this goal"));
        QCOMPARE(eventsIn(*m_morven), before);
        Phone archie("Archie", store::Role::Caregiver, "h-fin");
        archie.meet(*m_morven);
        usecase::Workplace his = archie.workplace();
        QCOMPARE(usecase::endGoal(his, "Fin", {tub}).error().code, ErrorCode::NotAllowed);
        QCOMPARE(usecase::takeUpGoal(his, "Fin", tub).error().code, ErrorCode::NotAllowed);
    }

    /// The parent ends it while the therapist, who has not heard, rates it and changes its words.
    void oneEndsItWhileAnotherRatesItAndBothStandOnBoth()
    {
        Phone ruth("Ruth", store::Role::Parent, "h-fin");
        ruth.clock.moveTo(islandTime(11, 12, 0));
        ruth.meet(*m_morven);
        usecase::Workplace hers = ruth.workplace();
        usecase::Workplace workplace = morven();
        QVERIFY(usecase::endGoal(hers, "Fin", {tub, goals::Turn::MattersLess}).ok());
        QVERIFY(usecase::rateGoal(workplace, "Fin", {tub, 2, RatedBy::Together, "", {}}).ok());
        QVERIFY(usecase::weighGoal(workplace, "Fin", tub, 4).ok());
        ruth.meet(*m_morven);
        m_morven->meet(ruth);
        QCOMPARE(record(ruth, tub), record(*m_morven, tub));
        QCOMPARE(record(ruth, tub).ending->by, std::string("Ruth"));
        QCOMPARE(record(ruth, tub).current().ratings.size(), std::size_t{1});
        QCOMPARE(record(ruth, tub).current().goal.weight, 4);
        QVERIFY(usecase::loadFamily(workplace, "Fin")->child.goals.empty());
        QVERIFY(usecase::loadFamily(hers, "Fin")->child.goals.empty());
        QVERIFY(*store::Projector(ruth.database).matchesRefold());
    }

    void aReasonStaysWithItsWords()
    {
        usecase::Workplace workplace = morven();
        goals::GoalDraft draft = *usecase::draftOf(workplace, "Fin", tub);
        draft.levels[4] = "Opens three tubs that are new to him.";
        draft.reason = " the old one was too easy ";
        QVERIFY(usecase::rewordGoal(workplace, "Fin", tub, draft).ok());
        draft = *usecase::draftOf(workplace, "Fin", tub);
        QCOMPARE(draft.reason, std::string());
        draft.reviewOn = *dayFrom({2027, 4, 12});
        draft.lifeAreas = {catalogue::LifeArea::MealtimeTools};
        draft.reason = "holidays"; // no new words: theirs stays
        QVERIFY(usecase::rewordGoal(workplace, "Fin", tub, draft).ok());
        const goals::GoalVersion now = record(*m_morven, tub).current();
        QCOMPARE(now.goal.reason, std::string("the old one was too easy"));
        QCOMPARE(now.author, std::string("Morven"));
        QCOMPARE(usecase::loadFamily(workplace, "Fin")->child.goals.front().lifeAreas,
                 std::vector{catalogue::LifeArea::MealtimeTools}); // which the menu reads
        draft.reason = std::string(201, 'a');
        QCOMPARE(reasonOf(usecase::rewordGoal(workplace, "Fin", tub, draft)),
                 std::string("reason: too long"));
    }

    void theOpenCopyHoldsEndsAndEarlierWords()
    {
        usecase::Workplace workplace = morven();
        goals::GoalDraft draft = *usecase::draftOf(workplace, "Fin", tub);
        draft.levels[4] = "Opens three tubs that are new to him.";
        draft.reason = "too easy";
        QVERIFY(usecase::rewordGoal(workplace, "Fin", tub, draft).ok());
        QVERIFY(usecase::endGoal(workplace, "Fin", {tub, goals::Turn::Replaced, "the coat"}).ok());
        const auto copy = usecase::openRecord(workplace, "Fin");
        const auto rowsOf = [&copy](const char *name) {
            return std::ranges::find(copy->tables, name, &usecase::OpenTable::name)->rows;
        };
        const auto wordings = rowsOf("words of goals");
        QCOMPARE(wordings.size(), std::size_t{2});
        QCOMPARE(wordings[0][3], usecase::Cell("no"));
        QCOMPARE(wordings[0][12], usecase::Cell("Opens it and a friend's different tub."));
        QCOMPARE(wordings[1][6], usecase::Cell("too easy"));
        QCOMPARE(rowsOf("goals")[0].back(), usecase::Cell("2027-01-11"));
        QCOMPARE(rowsOf("ends of goals"), (std::vector<std::vector<usecase::Cell>>{
                                              {"Fin", "Opens his lunch tub at school", "2027-01-11",
                                               "replaced", "the coat", "Morven"}}));
    }

    void theOpenCopyHoldsWhatWasRated()
    {
        usecase::Workplace workplace = morven();
        QVERIFY(usecase::rateGoal(workplace, "Fin", {tub, 1, RatedBy::Family, "Ruth", {}}).ok());
        const auto copy = usecase::openRecord(workplace, "Fin");
        QVERIFY(copy.ok());
        const auto table = std::ranges::find_if(copy->tables, [](const usecase::OpenTable &known) {
            return known.name == "what was said of goals";
        });
        QVERIFY(table != copy->tables.end());
        QCOMPARE(table->rows.size(), std::size_t{1});
        QCOMPARE(table->rows[0][4], usecase::Cell("Without a reminder, in the noise of the hall."));
    }
};

QTEST_APPLESS_MAIN(TestGoals)
#include "tst_goals.moc"

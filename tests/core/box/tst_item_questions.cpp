#include <QtTest>

#include "writing_phone.h"

#include <algorithm>

using namespace lidlark;
using namespace lidlark::box;
using namespace lidlark::test;
using journal::Event;

using Phone = WritingPhone;
using enum ExceptionKind;

namespace {

std::vector<Question> openOnes(const ItemLedger &ledger)
{
    std::vector<Question> open;
    for (const Question &question : ledger.questions) {
        if (question.isOpen())
            open.push_back(question);
    }
    return open;
}

/// The range as the screen says it: "4 or 5".
std::pair<int, int> rangeOf(const std::vector<Event> &log, int packed = 6)
{
    const ItemLedger ledger = fold(packed, log);
    return {ledger.low(), ledger.high()};
}

using Range = std::pair<int, int>;

} // namespace

/// Guards the questions about one item: events.md 3, 6 and 7.
class TestItemQuestions : public QObject
{
    Q_OBJECT

private:
    std::vector<Event> m_log;

private slots:
    void init() { m_log.clear(); }

    /// job.md scenario 1: Ruth 18:10, Gran 18:25 on a tablet that is 40 minutes fast.
    void twoPhonesOneEyeEachIsARangeAndOneQuestion()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.usedUp("hidden-harbour-lights", 1, 18 * hourMs + 10 * minuteMs);
        gran.usedUp("dough-forecast", 1, 19 * hourMs + 5 * minuteMs);
        QCOMPARE(rangeOf(m_log), Range(4, 5));
        const auto open = openOnes(fold(6, m_log));
        QCOMPARE(open.size(), std::size_t{1});
        QVERIFY(open.front().sort == QuestionSort::SameOrTwo);
        QVERIFY(open.front().kind == UsedUp);
        QCOMPARE(open.front().askedOf, std::string("gran")); // the larger instant
        QCOMPARE(open.front().sides.front().author, std::string("ruth"));
        QVERIFY(fold(6, m_log).losses.empty()); // used up, not lost: nothing lies on a floor
    }

    void twoMakesItTwoAndSameMakesItOne_data()
    {
        QTest::addColumn<QByteArray>("answer");
        QTest::addColumn<int>("left");
        QTest::newRow("two") << QByteArray("two") << 4;
        QTest::newRow("same") << QByteArray("same") << 5;
    }
    void twoMakesItTwoAndSameMakesItOne()
    {
        QFETCH(QByteArray, answer);
        QFETCH(int, left);
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.usedUp("a", 1, 18 * hourMs);
        gran.usedUp("b", 1, 18 * hourMs + 15 * minuteMs);
        const Question question = openOnes(fold(6, m_log)).front();
        gran.answer(question.id, answer.toStdString(), 20 * hourMs);
        QCOMPARE(rangeOf(m_log), Range(left, left));
        const ItemLedger ledger = fold(6, m_log);
        QVERIFY(openOnes(ledger).empty());
        QCOMPARE(ledger.questions.front().answeredBy, std::string("gran"));
        QVERIFY(ledger.careful.conserved());
        QCOMPARE(ledger.uses.size(), std::size_t{1});
        QCOMPARE(ledger.uses.front().pieces, 6 - left); // said twice, used once
    }

    /// events.md 5: among concurrent different answers the one that gives the lower stock.
    void ofTwoAnswersTheLowerStockStands()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.usedUp("a", 1, 18 * hourMs);
        gran.usedUp("b", 1, 18 * hourMs + 15 * minuteMs);
        const Question question = openOnes(fold(6, m_log)).front();
        gran.answer(question.id, "same", 20 * hourMs);
        ruth.answer(question.id, "two", 19 * hourMs);
        QCOMPARE(rangeOf(m_log), Range(4, 4));
        gran.meets(ruth, 21 * hourMs); // and what has seen it replaces it
        gran.answer(question.id, "same", 22 * hourMs);
        QCOMPARE(rangeOf(m_log), Range(5, 5));
    }

    void whatHasSeenTheOtherOrIsHoursApartIsNoDouble()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.usedUp("a", 1, 18 * hourMs);
        gran.meets(ruth, 18 * hourMs + minuteMs);
        gran.usedUp("b", 1, 18 * hourMs + 15 * minuteMs);
        QCOMPARE(rangeOf(m_log), Range(4, 4));
        Phone aaron("aaron", m_log);
        aaron.usedUp("c", 1, 21 * hourMs); // nobody has seen it, but it is over two hours apart
        QCOMPARE(rangeOf(m_log), Range(3, 3));
        QVERIFY(openOnes(fold(6, m_log)).empty());
    }

    void differentKindsAndOnePhoneAloneAreNoDouble()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.usedUp("a", 1, 18 * hourMs);
        ruth.usedUp("b", 1, 18 * hourMs + minuteMs);
        gran.outcome("c", {{Broken, 1}}, 18 * hourMs + 2 * minuteMs);
        QCOMPARE(rangeOf(m_log), Range(3, 3));
    }

    /// events.md 7.2: a group never holds two events of one device. Ruth used one up in each of two
    /// plays; Gran's may be either of them, but not both.
    void aGroupHoldsOneEventOfADevice()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.usedUp("a", 1, 18 * hourMs);
        ruth.usedUp("b", 1, 18 * hourMs + 30 * minuteMs);
        gran.usedUp("c", 1, 18 * hourMs + 10 * minuteMs);
        QCOMPARE(rangeOf(m_log), Range(3, 4));
        const auto open = openOnes(fold(6, m_log));
        QCOMPARE(open.size(), std::size_t{1}); // the closer pair: 18:00 and 18:10
        gran.answer(open.front().id, "two", 20 * hourMs);
        const auto next = openOnes(fold(6, m_log)); // then the other may be it
        QCOMPARE(next.size(), std::size_t{1});
        gran.answer(next.front().id, "two", 20 * hourMs + minuteMs);
        QCOMPARE(rangeOf(m_log), Range(3, 3));
    }

    void threePhonesAreTwoQuestions()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        Phone aaron("aaron", m_log);
        ruth.usedUp("a", 1, 18 * hourMs);
        gran.usedUp("b", 2, 18 * hourMs + 10 * minuteMs);
        aaron.usedUp("c", 1, 18 * hourMs + 30 * minuteMs);
        QCOMPARE(rangeOf(m_log), Range(2, 4)); // all apart, or one: the largest number, two
        QCOMPARE(openOnes(fold(6, m_log)).size(), std::size_t{2});
    }

    /// events.md 7.4: a later count that covers both closes it.
    void aCountThatCoversBothEndsTheAsking()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.usedUp("a", 1, 18 * hourMs);
        gran.usedUp("b", 1, 18 * hourMs + 15 * minuteMs);
        gran.meets(ruth, 19 * hourMs);
        gran.count(5, 0, 20 * hourMs);
        QCOMPARE(rangeOf(m_log), Range(5, 5));
        QVERIFY(openOnes(fold(6, m_log)).empty());
    }

    /// events.md 7.1: an exception beside a play may be the same piece as one of a play.
    void anExceptionBesideAPlayMayBeADoubleToo()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.usedUp("a", 1, 18 * hourMs);
        gran.gone(UsedUp, 1, 18 * hourMs + 15 * minuteMs);
        QCOMPARE(rangeOf(m_log), Range(4, 5));
    }

    /// Lost on two phones: until somebody says "same", both may lie on the floor (events.md 6.5).
    void lostTwiceIsLookedForTwiceUntilItIsTheSame()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.outcome("a", {{Lost, 1}}, 18 * hourMs);
        gran.outcome("b", {{Lost, 1}}, 18 * hourMs + 15 * minuteMs);
        QCOMPARE(fold(6, m_log).losses.size(), std::size_t{2});
        const Question question = openOnes(fold(6, m_log)).front();
        gran.meets(ruth, 19 * hourMs);
        gran.answer(question.id, "same", 19 * hourMs + minuteMs);
        const ItemLedger ledger = fold(6, m_log);
        QCOMPARE(ledger.losses.size(), std::size_t{1});
        QVERIFY(!ledger.losses.front().closed);
        gran.found(1, 20 * hourMs);
        QVERIFY(fold(6, m_log).losses.front().closed);
        QCOMPARE(rangeOf(m_log), Range(6, 6));
    }

    /// events.md 6.2: concurrent with a count and within the margin, nobody guesses.
    void beforeOrAfterTheCountIsAsked_data()
    {
        QTest::addColumn<QByteArray>("answer");
        QTest::addColumn<int>("left");
        QTest::newRow("before") << QByteArray("before") << 6;
        QTest::newRow("after") << QByteArray("after") << 4;
    }
    void beforeOrAfterTheCountIsAsked()
    {
        QFETCH(QByteArray, answer);
        QFETCH(int, left);
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        gran.usedUp("a", 2, 10 * hourMs);
        ruth.count(6, 0, 10 * hourMs + 30 * minuteMs);
        QCOMPARE(rangeOf(m_log), Range(4, 6));
        const auto open = openOnes(fold(6, m_log));
        QCOMPARE(open.size(), std::size_t{1});
        QVERIFY(open.front().sort == QuestionSort::BeforeOrAfter);
        QCOMPARE(open.front().askedOf, std::string("ruth"));
        ruth.answer(open.front().id, answer.toStdString(), 12 * hourMs);
        QCOMPARE(rangeOf(m_log), Range(left, left));
        QVERIFY(fold(6, m_log).careful.conserved());
    }

    void aPlayWithNothingGoneAsksNothingBesideACount()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        gran.outcome("a", {}, 10 * hourMs);
        ruth.count(6, 0, 10 * hourMs + 30 * minuteMs);
        QVERIFY(fold(6, m_log).questions.empty());
    }

    /// job.md S5 and events.md 6.2: a tablet two days ahead makes a full count while a phone notes
    /// what was used. Once it is known how wrong the tablet is, the count hides nothing.
    void aCountFromTwoDaysAheadHidesNothing()
    {
        Phone tablet("tablet", m_log);
        Phone ruth("ruth", m_log);
        tablet.count(6, 0, 10 * hourMs + 2 * dayMs);
        ruth.usedUp("a", 1, 10 * hourMs + 20 * minuteMs);
        QCOMPARE(rangeOf(m_log), Range(6, 6)); // nobody knows of the clock yet
        ruth.meets(tablet, 11 * hourMs, 2 * dayMs);
        QCOMPARE(rangeOf(m_log), Range(5, 6));
        const auto open = openOnes(fold(6, m_log));
        QCOMPARE(open.size(), std::size_t{1});
        QCOMPARE(open.front().askedOf, std::string("tablet"));
        ruth.answer(open.front().id, "after", 12 * hourMs);
        QCOMPARE(rangeOf(m_log), Range(5, 5));
    }

    /// events.md 3.4: one record holds against the phone that made it; two hold against everybody.
    void twoRecordsOfAClockHoldAgainstEverybody()
    {
        Phone tablet("tablet", m_log);
        Phone ruth("ruth", m_log);
        Phone aaron("aaron", m_log);
        Phone gran("gran", m_log);
        tablet.count(6, 0, 10 * hourMs + 2 * dayMs);
        gran.usedUp("a", 1, 10 * hourMs + 20 * minuteMs);
        ruth.meets(tablet, 11 * hourMs, 2 * dayMs);
        QCOMPARE(rangeOf(m_log), Range(6, 6));
        aaron.meets(tablet, 11 * hourMs, 2 * dayMs);
        QCOMPARE(rangeOf(m_log), Range(5, 6));
    }

    /// A record says nothing of what the device wrote later, once its clock was put right.
    void aRecordHoldsOnlyForWhatWasWrittenUpToThen()
    {
        Phone tablet("tablet", m_log);
        Phone ruth("ruth", m_log);
        tablet.say(journal::Kind::Checked, fieldsOf(Checked{eyes, Day{0}}), 2 * dayMs);
        ruth.meets(tablet, minuteMs, 2 * dayMs);
        ruth.usedUp("a", 1, 10 * hourMs);
        tablet.count(6, 0, 15 * hourMs); // the clock is right now, and clearly later
        QCOMPARE(rangeOf(m_log), Range(6, 6));
    }

    /// events.md 6.1: two counts that nobody can order are computed from each alone.
    void whoCountedLastIsAsked()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.count(5, 0, 10 * hourMs);
        gran.count(4, 0, 11 * hourMs);
        QCOMPARE(rangeOf(m_log), Range(4, 5));
        const auto open = openOnes(fold(6, m_log));
        QCOMPARE(open.size(), std::size_t{1});
        QVERIFY(open.front().sort == QuestionSort::WhoCountedLast);
        ruth.answer(open.front().id, open.front().sides.front().identity, 12 * hourMs);
        QCOMPARE(rangeOf(m_log), Range(5, 5));
    }

    void twoCountsThatAgreeAskNothing()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.count(5, 0, 10 * hourMs);
        gran.count(5, 0, 11 * hourMs);
        QCOMPARE(rangeOf(m_log), Range(5, 5));
        QVERIFY(openOnes(fold(6, m_log)).empty());
    }

    /// events.md 5: concurrent different values of one play carry both ends, and one question.
    void whichPutBackIsRightIsAsked()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.usedUp("a", 2, 10 * hourMs);
        gran.usedUp("a", 1, 11 * hourMs);
        QCOMPARE(rangeOf(m_log), Range(4, 5));
        const auto open = openOnes(fold(6, m_log));
        QCOMPARE(open.size(), std::size_t{1});
        QVERIFY(open.front().sort == QuestionSort::WhichPutBack);
        gran.answer(open.front().id, open.front().sides.back().identity, 12 * hourMs);
        QCOMPARE(rangeOf(m_log), Range(5, 5));
    }

    /// Any *lost* stands, whatever is answered: the note is closed on the floor (events.md 5).
    void aLossThatWasAnsweredAwayIsStillLookedFor()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.outcome("a", {{Lost, 1}}, 10 * hourMs);
        gran.usedUp("a", 1, 11 * hourMs);
        const Question question = openOnes(fold(6, m_log)).front();
        gran.answer(question.id, question.sides.back().identity, 12 * hourMs);
        const ItemLedger ledger = fold(6, m_log);
        QCOMPARE(ledger.careful.usedUp, 1);
        QCOMPARE(ledger.careful.lost, 0);
        QCOMPARE(ledger.losses.size(), std::size_t{1});
        QVERIFY(!ledger.losses.front().closed);
    }

    /// events.md 5, request: one counting-in per key; equal numbers are one fact.
    void whatArrivedIsCountedInOnce()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.usedUp("a", 4, 9 * hourMs);
        ruth.countedIn(0, 4, 15 * hourMs);
        gran.countedIn(0, 4, 15 * hourMs + 20 * minuteMs);
        QCOMPARE(rangeOf(m_log), Range(6, 6));
        QCOMPARE(fold(6, m_log).careful.restocked, 4);
        ruth.countedIn(1, 2, 30 * hourMs); // the next time something is sent
        QCOMPARE(rangeOf(m_log), Range(8, 8));
        QCOMPARE(fold(6, m_log).arrivals.size(), std::size_t{3});
    }

    void differentNumbersOfWhatArrivedAreAsked()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.countedIn(0, 4, 15 * hourMs);
        gran.countedIn(0, 3, 15 * hourMs + 20 * minuteMs);
        QCOMPARE(rangeOf(m_log), Range(9, 10));
        const auto open = openOnes(fold(6, m_log));
        QCOMPARE(open.size(), std::size_t{1});
        QVERIFY(open.front().sort == QuestionSort::WhichCountedIn);
        gran.answer(open.front().id, open.front().sides.front().identity, 16 * hourMs);
        QCOMPARE(rangeOf(m_log), Range(10, 10));
    }

    /// What came in while somebody counted: was it in the number already?
    void whatCameInBesideACountIsAsked()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.countedIn(0, 4, 15 * hourMs);
        gran.count(6, 0, 15 * hourMs + 30 * minuteMs);
        QCOMPARE(rangeOf(m_log), Range(6, 10));
        const auto open = openOnes(fold(6, m_log));
        QCOMPARE(answersOf(open.front()).front(), std::string("before")); // leaves less
    }

    void stillInUseComesBackAgain()
    {
        Phone ruth("ruth", m_log);
        ruth.gone(StillInUse, 2, 10 * hourMs);
        QCOMPARE(rangeOf(m_log), Range(4, 4));
        QCOMPARE(fold(6, m_log).careful.out, 2);
        ruth.gone(StillInUse, -2, 12 * hourMs);
        QCOMPARE(rangeOf(m_log), Range(6, 6));
        QCOMPARE(fold(6, m_log).careful.out, 0);
        QVERIFY(fold(6, m_log).careful.conserved());
    }

    /// "Putting back more than went out": only a count can tell, and it is asked for.
    void moreThanEverWentInAsksForACount()
    {
        Phone ruth("ruth", m_log);
        ruth.found(2, 10 * hourMs);
        const ItemLedger ledger = fold(6, m_log);
        QCOMPARE(ledger.high(), 8);
        QVERIFY(ledger.pleaseCount());
        ruth.count(8, 0, 11 * hourMs);
        QVERIFY(!fold(6, m_log).pleaseCount());
    }

    /// Pieces that a full count finds again cannot lie on a floor.
    void aCountThatFindsTheLostOnesEndsTheLooking()
    {
        Phone ruth("ruth", m_log);
        ruth.outcome("a", {{Lost, 2}}, 10 * hourMs);
        QVERIFY(!fold(6, m_log).losses.front().closed);
        ruth.count(5, 0, 11 * hourMs);
        QCOMPARE(fold(6, m_log).losses.front().pieces, 1);
        QVERIFY(!fold(6, m_log).losses.front().closed);
        ruth.count(6, 0, 12 * hourMs);
        QVERIFY(fold(6, m_log).losses.front().closed);
    }

    /// design.md 11 and scenario scripts: the id is the same on every device and in every order.
    void theIdOfAQuestionIsTheSameEverywhere()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        ruth.usedUp("a", 1, 18 * hourMs);
        gran.usedUp("b", 1, 18 * hourMs + 15 * minuteMs);
        const std::string id = openOnes(fold(6, m_log)).front().id;
        std::reverse(m_log.begin(), m_log.end());
        QCOMPARE(openOnes(fold(6, m_log)).front().id, id);
        QCOMPARE(id.size(), std::size_t{64});
    }

    void anAnswerToNothingChangesNothing()
    {
        Phone ruth("ruth", m_log);
        ruth.usedUp("a", 1, 18 * hourMs);
        const ItemLedger before = fold(6, m_log);
        ruth.answer("no-such-question", "same", 19 * hourMs);
        QVERIFY(fold(6, m_log) == before);
        Phone gran("gran", m_log);
        gran.usedUp("b", 1, 18 * hourMs + 15 * minuteMs);
        const Question question = openOnes(fold(6, m_log)).front();
        gran.answer(question.id, "perhaps", 20 * hourMs);
        QVERIFY(openOnes(fold(6, m_log)).front() == question);
    }
};

QTEST_APPLESS_MAIN(TestItemQuestions)
#include "tst_item_questions.moc"

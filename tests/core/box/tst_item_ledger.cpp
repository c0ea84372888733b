#include <QtTest>

#include "writing_phone.h"

using namespace lidlark;
using namespace lidlark::box;
using namespace lidlark::test;
using journal::Event;
using journal::Kind;

using Phone = WritingPhone;

/// Guards the ledger of one item: events.md 5 and 6.
class TestItemLedger : public QObject
{
    Q_OBJECT

private slots:
    void nothingSaidIsWhatWasPacked()
    {
        const ItemLedger ledger = fold(6, {});
        QCOMPARE(ledger.low(), 6);
        QCOMPARE(ledger.high(), 6);
    }

    void twoPlaysAreTwoFactsAndSayingOneTwiceIsOne()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        ruth.outcome("a", {{ExceptionKind::UsedUp, 1}}, hourMs);
        ruth.outcome("a", {{ExceptionKind::UsedUp, 1}}, hourMs + minuteMs);
        QCOMPARE(fold(6, log).low(), 5);
        ruth.outcome("b", {{ExceptionKind::UsedUp, 1}}, 2 * hourMs);
        QCOMPARE(fold(6, log).low(), 4);
    }

    void oneOutcomeMayHoldTwoKinds()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        ruth.outcome("a", {{ExceptionKind::UsedUp, 1}, {ExceptionKind::Lost, 1}}, hourMs);
        const ItemLedger ledger = fold(6, log);
        QCOMPARE(ledger.low(), 4);
        QCOMPARE(ledger.careful.usedUp, 1);
        QCOMPARE(ledger.careful.lost, 1);
    }

    void anExceptionCanBeTakenBack()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        ruth.outcome("a", {{ExceptionKind::Lost, 2}}, hourMs);
        ruth.outcome("a", {}, hourMs + minuteMs);
        const ItemLedger ledger = fold(6, log);
        QCOMPARE(ledger.low(), 6);
        QVERIFY(ledger.losses.empty());
    }

    void aWeakHomeFillsOnlyAnEmptyPlace()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        Phone gran("gran", log);
        ruth.outcome("a", {{ExceptionKind::UsedUp, 1}}, hourMs);
        gran.outcome("a", {}, 3 * hourMs, true);
        QCOMPARE(fold(6, log).low(), 5);
    }

    void concurrentDifferentValuesOfOnePlayCarryBothEndsAndTheLossStands()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        Phone gran("gran", log);
        ruth.outcome("a", {{ExceptionKind::UsedUp, 2}}, hourMs);
        gran.outcome("a", {{ExceptionKind::Lost, 1}}, hourMs + minuteMs);
        const ItemLedger ledger = fold(6, log);
        QCOMPARE(ledger.high(), 5);
        QCOMPARE(ledger.low(), 3); // two used up, and the one that may lie on the floor
        QCOMPARE(ledger.losses.size(), std::size_t{1});
    }

    void aFullCountIsAReset()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        ruth.outcome("a", {{ExceptionKind::UsedUp, 3}}, hourMs);
        ruth.count(5, 0, 2 * hourMs);
        ruth.outcome("b", {{ExceptionKind::UsedUp, 1}}, 3 * hourMs);
        const ItemLedger ledger = fold(6, log);
        QCOMPARE(ledger.low(), 4);
        QCOMPARE(ledger.careful.foundAtCount, 2);
        QVERIFY(ledger.careful.conserved());
    }

    void aLateTallyFromBeforeTheCountChangesNothing()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        Phone gran("gran", log);
        gran.outcome("a", {{ExceptionKind::UsedUp, 2}}, hourMs);
        ruth.count(4, 0, 10 * hourMs); // had not seen Gran's entry, but is clearly later
        QCOMPARE(fold(6, log).low(), 4);
        QCOMPARE(fold(6, log).high(), 4);
    }

    void withinTheMarginNobodyGuesses()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        Phone gran("gran", log);
        gran.outcome("a", {{ExceptionKind::UsedUp, 2}}, 10 * hourMs);
        ruth.count(6, 0, 10 * hourMs + 30 * minuteMs);
        const ItemLedger ledger = fold(6, log);
        QCOMPARE(ledger.low(), 4);
        QCOMPARE(ledger.high(), 6);
    }

    void aPutRightRegisterKeepsItsPlaceInTime()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        ruth.outcome("a", {{ExceptionKind::UsedUp, 1}}, hourMs);
        ruth.count(5, 0, 2 * hourMs);
        ruth.outcome("a", {{ExceptionKind::UsedUp, 2}}, 3 * hourMs); // about before the count
        QCOMPARE(fold(6, log).low(), 5);
    }

    void missingAtACountOpensANoteAsLostDoes()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        ruth.count(4, 0, hourMs);
        const ItemLedger ledger = fold(6, log);
        QCOMPARE(ledger.careful.missingAtCount, 2);
        QCOMPARE(ledger.losses.size(), std::size_t{1});
        QCOMPARE(ledger.losses.front().pieces, 2);
    }

    /// job.md scenario 5: found 1 of 2, one still open.
    void aFindClosesPieceByPiece()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        ruth.outcome("a", {{ExceptionKind::Lost, 2}}, hourMs);
        ruth.found(1, hourMs + minuteMs);
        const ItemLedger ledger = fold(6, log);
        QCOMPARE(ledger.low(), 5);
        QCOMPARE(ledger.losses.front().pieces, 1);
        QVERIFY(!ledger.losses.front().closed);
    }

    void onlyAFindThatHadSeenTheLossClosesIt()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        Phone gran("gran", log);
        ruth.outcome("a", {{ExceptionKind::Lost, 1}}, hourMs);
        gran.found(1, 2 * hourMs); // Gran had not heard of this loss
        QVERIFY(!fold(6, log).losses.front().closed);
        gran.meets(ruth, 3 * hourMs);
        gran.found(1, 3 * hourMs + minuteMs);
        QVERIFY(fold(6, log).losses.front().closed);
    }

    void aCheckedFloorClosesExactlyTheLossItNames()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        ruth.outcome("a", {{ExceptionKind::Lost, 1}}, hourMs);
        const std::string first = journal::identityOf(log.back());
        ruth.outcome("b", {{ExceptionKind::Lost, 1}}, 2 * hourMs);
        ruth.say(Kind::FloorChecked, fieldsOf(FloorChecked{eyes, first}), 3 * hourMs);
        const ItemLedger ledger = fold(6, log);
        QCOMPARE(ledger.losses.size(), std::size_t{2});
        QVERIFY(ledger.losses[0].closed);
        QVERIFY(!ledger.losses[1].closed);
        QCOMPARE(ledger.low(), 4);
    }

    void belowZeroAsksForACount()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        ruth.outcome("a", {{ExceptionKind::UsedUp, 1}}, hourMs);
        ruth.outcome("b", {{ExceptionKind::UsedUp, 1}}, 2 * hourMs);
        const ItemLedger ledger = fold(1, log);
        QCOMPARE(ledger.low(), 0);
        QVERIFY(ledger.pleaseCount());
    }

    /// events.md 6.4 on the way of job.md scenario 5: two lost, the floor checked, one found later.
    void foundAfterTheFloorWasCheckedIsBackInTheBoxAndConserved()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        ruth.outcome("a", {{ExceptionKind::Lost, 2}}, hourMs);
        const std::string loss = journal::identityOf(log.back());
        ruth.say(Kind::FloorChecked, fieldsOf(FloorChecked{eyes, loss}), 2 * hourMs);
        QVERIFY(fold(6, log).losses.front().closed);
        ruth.found(1, 3 * hourMs);
        const ItemLedger ledger = fold(6, log);
        QCOMPARE(ledger.low(), 5);
        QCOMPARE(ledger.high(), 5);
        QCOMPARE(ledger.careful.lost, 2);
        QCOMPARE(ledger.careful.found, 1);
        QVERIFY(ledger.careful.conserved());
        QVERIFY(ledger.losses.front().closed);
    }

    /// events.md 5, confirmation, and 6.4: what has left the house is neither lost nor in the box.
    void takenOutIsOutAndConserved()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        ruth.outcome("a", {{ExceptionKind::UsedUp, 1}}, hourMs);
        ruth.takenOut(2 * hourMs);
        ruth.takenOut(3 * hourMs); // said twice, true once
        const ItemLedger ledger = fold(6, log);
        QCOMPARE(ledger.high(), 0);
        QCOMPARE(ledger.careful.takenOut, 5);
        QVERIFY(ledger.careful.conserved());
        QVERIFY(ledger.losses.empty());
    }

    /// A full count later on the same evening says 0, as it must: nothing lies on a floor.
    void aCountOfNoneAfterThatMissesNothing()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        ruth.takenOut(hourMs);
        ruth.count(0, 0, 2 * hourMs);
        const ItemLedger ledger = fold(6, log);
        QCOMPARE(ledger.careful.missingAtCount, 0);
        QCOMPARE(ledger.careful.takenOut, 6);
        QVERIFY(ledger.losses.empty());
        QVERIFY(ledger.careful.conserved());
    }

    /// The allergy was a slip: the pieces are counted in again.
    void aCountBringsThemBack()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        ruth.takenOut(hourMs);
        ruth.count(6, 0, 2 * hourMs);
        QCOMPARE(fold(6, log).low(), 6);
        QCOMPARE(fold(6, log).careful.takenOut, 0);
    }

    /// A piece that turns up afterwards must be taken out too; one that turned up before has gone.
    void aPieceFoundAfterwardsIsStillToBeTakenOut()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        ruth.outcome("a", {{ExceptionKind::Lost, 2}}, hourMs);
        ruth.found(1, 2 * hourMs);
        ruth.takenOut(3 * hourMs);
        QCOMPARE(fold(6, log).high(), 0);
        ruth.found(1, 4 * hourMs);
        QCOMPARE(fold(6, log).low(), 1);
        ruth.takenOut(5 * hourMs);
        QCOMPARE(fold(6, log).high(), 0);
        QVERIFY(fold(6, log).careful.conserved());
    }

    /// Found on another phone that knew nothing of it: it may be in the box, so it is looked for.
    void aFindThatNobodyHadSeenMayStillBeThere()
    {
        std::vector<Event> log;
        Phone ruth("ruth", log);
        Phone gran("gran", log);
        ruth.outcome("a", {{ExceptionKind::Lost, 1}}, hourMs);
        gran.meets(ruth, hourMs);
        ruth.takenOut(2 * hourMs);
        gran.found(1, 2 * hourMs);
        QCOMPARE(fold(6, log).low(), 0);
        QCOMPARE(fold(6, log).high(), 1);
    }

    void malformedFieldsHaveNoEffect_data()
    {
        QTest::addColumn<int>("kind");
        QTest::addColumn<QByteArray>("fields");
        const auto row = [](const char *name, Kind kind, const char *fields) {
            QTest::newRow(name) << static_cast<int>(kind) << QByteArray(fields);
        };
        row("not JSON", Kind::Outcome, "{");
        row("a list", Kind::Outcome, "[]");
        row("a negative number", Kind::Count, R"({"item":"eyes","in_box":-1,"out":0})");
        row("a thousand eyes", Kind::Count, R"({"item":"eyes","in_box":1000,"out":0})");
        row("half an eye", Kind::Found, R"({"item":"eyes","count":0.5})");
        row("an unknown kind of exception", Kind::Outcome,
            R"({"item":"eyes","play":"a","exceptions":{"eaten":1}})");
        row("text for a number", Kind::Exception, R"({"item":"eyes","kind":"lost","count":"2"})");
    }

    void malformedFieldsHaveNoEffect()
    {
        QFETCH(int, kind);
        QFETCH(QByteArray, fields);
        std::vector<Event> log;
        Phone ruth("ruth", log);
        ruth.say(static_cast<Kind>(kind), fields.toStdString(), hourMs);
        QVERIFY(fold(6, log) == fold(6, {}));
    }
};

QTEST_APPLESS_MAIN(TestItemLedger)
#include "tst_item_ledger.moc"

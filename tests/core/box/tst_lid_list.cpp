#include <QtTest>

#include "core/box/lid_list.h"

#include <random>

#include "writing_phone.h"

using namespace lidlark;
using namespace lidlark::box;
using namespace lidlark::test;
using journal::Event;
using journal::Kind;

using Phone = WritingPhone;

namespace {

const ItemId pegs{"pegs"};
const ItemId loops{"loops"};

void revise(Phone &phone, int number, std::map<ItemId, int> packed, std::int64_t ms,
            std::set<ItemId> removed = {})
{
    phone.say(Kind::Revision, fieldsOf(Revision{number, std::move(packed), std::move(removed)}),
              ms);
}

std::optional<LidList> listOf(const std::vector<Event> &log)
{
    return foldLidList(log, journal::Seen(log));
}

/// The ledger of the eyes as the lid lists of @p log have it.
ItemLedger foldEyes(const std::vector<Event> &log)
{
    const auto list = listOf(log);
    const auto began = list->began.find(eyes);
    return foldItem({began == list->began.end() ? 0 : began->second, list->begun,
                     list->inForce.removed.contains(eyes)},
                    log, journal::Meetings(log));
}

const Event *confirmed(const std::vector<Event> &log)
{
    return confirmationOf(eyes, log, log, journal::Seen(log));
}

} // namespace

/// Guards events.md 5, "box revision" and "confirmation".
class TestLidList : public QObject
{
    Q_OBJECT

private slots:
    void withoutARevisionThereIsNoList() { QVERIFY(!listOf({})); }

    void theFirstIsWhatTheBoxBeganWith()
    {
        std::vector<Event> log;
        Phone morven("morven", log);
        revise(morven, 1, {{eyes, 6}, {pegs, 6}}, hourMs);
        const auto list = listOf(log);
        QCOMPARE(list->inForce.number, 1);
        QCOMPARE(list->began.at(eyes), 6);
        QCOMPARE(list->begun, dayPartAt(hourMs, 0).day);
        QVERIFY(list->inForce.removed.empty());
        QCOMPARE(list->heads, 1);
    }

    void whatTheNextLeavesOutIsRemovedAndWhatItAddsDidNotBeginInTheBox()
    {
        std::vector<Event> log;
        Phone morven("morven", log);
        revise(morven, 1, {{eyes, 6}, {pegs, 6}}, hourMs);
        revise(morven, 2, {{pegs, 8}, {loops, 6}}, 2 * dayMs);
        const auto list = listOf(log);
        QCOMPARE(list->inForce.number, 2);
        QVERIFY(list->inForce.removed == std::set<ItemId>{eyes});
        QVERIFY(list->inForce.packed == (std::map<ItemId, int>{{pegs, 8}, {loops, 6}}));
        QVERIFY(list->began == (std::map<ItemId, int>{{eyes, 6}, {pegs, 6}}));
        QCOMPARE(list->begun, dayPartAt(hourMs, 0).day);
        QCOMPARE(list->issued, dayPartAt(2 * dayMs, 0).day);
    }

    void whatALaterListHasAgainIsNoLongerRemoved()
    {
        std::vector<Event> log;
        Phone morven("morven", log);
        revise(morven, 1, {{eyes, 6}, {pegs, 6}}, hourMs);
        revise(morven, 2, {{pegs, 6}}, dayMs);
        revise(morven, 3, {{pegs, 6}, {eyes, 4}}, 2 * dayMs);
        QVERIFY(listOf(log)->inForce.removed.empty());
        revise(morven, 4, {{eyes, 4}}, 3 * dayMs);
        QVERIFY(listOf(log)->inForce.removed == std::set<ItemId>{pegs});
    }

    void ofTwoListsWhateverEitherRemovesIsRemoved()
    {
        std::vector<Event> log;
        Phone morven("morven", log);
        Phone callum("callum", log);
        revise(morven, 1, {{eyes, 6}, {pegs, 6}, {loops, 3}}, hourMs);
        callum.meets(morven, dayMs);
        revise(morven, 2, {{pegs, 6}, {loops, 3}}, 2 * dayMs);
        revise(callum, 2, {{eyes, 6}, {loops, 2}}, 2 * dayMs + hourMs);
        const auto list = listOf(log);
        QCOMPARE(list->heads, 2);
        QVERIFY(list->inForce.removed == (std::set<ItemId>{eyes, pegs}));
        QVERIFY(list->inForce.packed == (std::map<ItemId, int>{{loops, 2}}));
        // The next knows both, and is in force alone.
        morven.meets(callum, 3 * dayMs);
        revise(morven, 3, {{eyes, 6}, {loops, 3}}, 3 * dayMs + hourMs);
        QCOMPARE(listOf(log)->heads, 1);
        QVERIFY(listOf(log)->inForce.removed == std::set<ItemId>{pegs});
    }

    void theOrderOfArrivalDoesNotMatter()
    {
        std::vector<Event> log;
        Phone morven("morven", log);
        Phone callum("callum", log);
        revise(morven, 1, {{eyes, 6}, {pegs, 6}}, hourMs);
        callum.meets(morven, dayMs);
        revise(morven, 2, {{pegs, 6}}, 2 * dayMs);
        revise(callum, 2, {{eyes, 3}}, 2 * dayMs);
        const LidList list = *listOf(log);
        std::mt19937 chance(20270125);
        for (int round = 0; round < 20; ++round) {
            std::shuffle(log.begin(), log.end(), chance);
            const LidList same = *listOf(log);
            QCOMPARE(fieldsOf(same.inForce), fieldsOf(list.inForce));
            QCOMPARE(same.issued, list.issued);
            QCOMPARE(same.heads, list.heads);
            QVERIFY(same.began == list.began && same.begun == list.begun);
        }
    }

    /// A guest holds no earlier list: the copy says what is out.
    void aCopySaysItself()
    {
        std::vector<Event> log;
        Phone copy("copy", log);
        revise(copy, 2, {{pegs, 6}, {eyes, 0}}, hourMs, {eyes});
        QVERIFY(listOf(log)->inForce.removed == std::set<ItemId>{eyes});
        const auto again = readRevision(log.front());
        QVERIFY(again && again->removed == std::set<ItemId>{eyes});
    }

    void whatIsNoListHasNoEffect()
    {
        std::vector<Event> log;
        Phone morven("morven", log);
        for (const char *fields :
             {R"({"number":2,"packed":{"eyes":-1}})", R"({"number":2,"packed":[]})",
              R"({"number":2,"packed":{},"removed":[7]})", R"({"packed":{}})"})
            morven.say(Kind::Revision, fields, hourMs);
        QVERIFY(!listOf(log));
    }

    void aRemovalTellsNothingOfWhereThePiecesAre()
    {
        std::vector<Event> log;
        Phone morven("morven", log);
        revise(morven, 1, {{eyes, 6}, {pegs, 6}}, hourMs);
        revise(morven, 2, {{pegs, 6}}, dayMs);
        QCOMPARE(foldEyes(log).low(), 6);
        QVERIFY(confirmed(log) == nullptr);
    }

    /// The tally of a removed item is history and adds nothing: not even one of two days later, by
    /// somebody who did not know.
    void aTallyThatDidNotKnowPutsNothingBack()
    {
        std::vector<Event> log;
        Phone morven("morven", log);
        Phone peigi("peigi", log);
        Phone dad("dad", log);
        revise(morven, 1, {{eyes, 6}, {pegs, 6}}, hourMs);
        peigi.meets(morven, 2 * hourMs);
        dad.meets(morven, 2 * hourMs);
        revise(morven, 2, {{pegs, 6}}, 2 * dayMs);
        peigi.count(6, 0, 2 * dayMs + 8 * hourMs); // Monday evening, offline
        QCOMPARE(foldEyes(log).low(), 6);
        QVERIFY(confirmed(log) == nullptr);
        peigi.meets(morven, 3 * dayMs);
        QVERIFY(confirmed(log) == nullptr); // received is not done
        peigi.takenOut(3 * dayMs + hourMs);
        QCOMPARE(foldEyes(log).high(), 0);
        dad.count(6, 0, 5 * dayMs);
        const ItemLedger ledger = foldEyes(log);
        QCOMPARE(ledger.high(), 0);
        QVERIFY(ledger.careful.conserved() && ledger.hopeful.conserved());
        QCOMPARE(confirmed(log)->author, std::string("peigi"));
    }

    void whoKnowsThatItWasTakenOutCanCountItAgain()
    {
        std::vector<Event> log;
        Phone morven("morven", log);
        Phone peigi("peigi", log);
        revise(morven, 1, {{eyes, 6}}, hourMs);
        revise(morven, 2, {}, dayMs);
        peigi.meets(morven, 2 * dayMs);
        peigi.takenOut(2 * dayMs + hourMs);
        peigi.count(2, 0, 3 * dayMs);
        QCOMPARE(foldEyes(log).low(), 2);
        QVERIFY(confirmed(log) != nullptr); // becomes true once, and stays
    }

    void saidBeforeTheRemovalConfirmsNothing()
    {
        std::vector<Event> log;
        Phone morven("morven", log);
        Phone peigi("peigi", log);
        revise(morven, 1, {{eyes, 6}}, hourMs);
        peigi.meets(morven, 2 * hourMs);
        peigi.takenOut(dayMs);
        revise(morven, 2, {}, 2 * dayMs);
        QVERIFY(confirmed(log) == nullptr);
        peigi.meets(morven, 3 * dayMs);
        peigi.takenOut(3 * dayMs + hourMs);
        QVERIFY(confirmed(log) != nullptr);
    }

    void aConfirmationEndsWhenALaterListHasTheItemAgain()
    {
        std::vector<Event> log;
        Phone morven("morven", log);
        Phone peigi("peigi", log);
        revise(morven, 1, {{eyes, 6}}, hourMs);
        revise(morven, 2, {}, dayMs);
        peigi.meets(morven, 2 * dayMs);
        peigi.takenOut(2 * dayMs + hourMs);
        morven.meets(peigi, 3 * dayMs);
        revise(morven, 3, {{eyes, 6}}, 3 * dayMs + hourMs);
        revise(morven, 4, {}, 4 * dayMs);
        QVERIFY(confirmed(log) == nullptr);
    }
};

QTEST_APPLESS_MAIN(TestLidList)
#include "tst_lid_list.moc"

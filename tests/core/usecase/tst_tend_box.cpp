#include <QtTest>

#include "core/store/box_repository.h"
#include "core/usecase/fill_box.h"
#include "core/usecase/recall_lot.h"
#include "core/usecase/set_up_home.h"

#include "tests/support/clinic.h"

using namespace lidlark;
using namespace lidlark::test;
using workbench::Care;
using workbench::CleanedHow;
using workbench::Standing;
using workbench::StillToDo;

namespace {

std::string detailOf(const Outcome &outcome)
{
    return outcome.ok() ? std::string("was taken") : outcome.error().detail;
}

void keepLot(Phone &phone, const std::string &item, const std::string &lot)
{
    usecase::Workplace workplace = phone.workplace();
    workbench::KeptSupply supply;
    supply.supply = {{item}, item, {}, 0, false};
    supply.lot = lot;
    QVERIFY(usecase::keepSupply(workplace, supply).ok());
}

/// Fin's box K1 of a build on @p phone, packed and not yet handed over.
Table packed(Phone &phone, const std::string &child = "Fin")
{
    const Table table = tableOn(phone);
    usecase::Workplace workplace = phone.workplace();
    const bool well =
        usecase::keepBox(workplace, table.build, standardBox("K1", child, table.design)).ok() &&
        packAll(phone, table, "K1");
    return well ? table : Table{};
}

Table handedOver(Phone &phone)
{
    const Table table = packed(phone);
    usecase::Workplace workplace = phone.workplace();
    return usecase::issuePackedBox(workplace, table.build, "K1").ok() ? table : Table{};
}

std::vector<std::string> boxesWith(Phone &phone, const std::string &lot, const ItemId &item = {})
{
    usecase::Workplace workplace = phone.workplace();
    std::vector<std::string> codes;
    const auto found = usecase::recallLot(workplace, lot, item);
    for (const store::LotFound &box : found ? *found : std::vector<store::LotFound>())
        codes.push_back(box.box);
    return codes;
}

} // namespace

/// job.md T8 (hygiene) and T15 (lots and recalls).
class TestTendBox : public QObject
{
    Q_OBJECT

private slots:
    void aReadyBoxIsHandedOverWithItsLidList()
    {
        auto morven = packer("Morven");
        const Table table = handedOver(*morven);
        QVERIFY(!table.build.empty());
        usecase::Workplace workplace = morven->workplace();
        const auto box = usecase::tendedBox(workplace, "K1");
        QVERIFY(box.ok());
        QVERIFY(box->status.standing == Standing::Issued);
        QCOMPARE(box->status.child, std::string("Fin"));
        QCOMPARE(itemOf(*morven, "Fin", "bands").low, 6);
        QCOMPARE(detailOf(usecase::issuePackedBox(workplace, table.build, "K1")),
                 std::string("K1: was handed over as this build"));
        QVERIFY(rowsMatch(*morven));
    }

    void whatIsNotReadyIsNotHandedOver()
    {
        auto morven = packer("Morven");
        const Table table = packed(*morven, "");
        usecase::Workplace workplace = morven->workplace();
        QCOMPARE(detailOf(usecase::issuePackedBox(workplace, table.build, "K1")),
                 std::string("K1: nobody's yet"));
        QVERIFY(usecase::unpackLine(workplace, {table.build, "K1", {"bands"}}).ok());
        QCOMPARE(detailOf(usecase::issuePackedBox(workplace, table.build, "K1")),
                 std::string("K1: not all of it is packed"));
        QVERIFY(!usecase::tendedBox(workplace, "K1").ok());
    }

    /// job.md T3, at the last door: a box that was nobody's becomes a child's by its name, and a
    /// home sheet may say something new after a box was written. Bands hold latex
    /// (assets/catalogue/items; activities.md 1.3).
    void whatAHomeMustAvoidDoesNotGoThere()
    {
        auto morven = therapistWith({"Anya", "Fin"});
        usecase::Workplace workplace = morven->workplace();
        const Table table = tableOn(*morven);
        const std::string refused = "K1: bands: holds what this home must avoid";
        QVERIFY(usecase::sayFact(workplace, {"h-anya"}, {"", "latex", "yes"}).ok());
        for (const char *typed : {"Anya", " anya"})
            QCOMPARE(detailOf(usecase::keepBox(workplace, table.build,
                                               standardBox("K1", typed, table.design))),
                     refused);
        QVERIFY(
            usecase::keepBox(workplace, table.build, standardBox("K1", "Fin", table.design)).ok());
        QVERIFY(packAll(*morven, table, "K1"));
        QVERIFY(boxOn(*morven, table, "K1").isReady());
        QVERIFY(usecase::sayFact(workplace, {"h-fin"}, {"", "latex", "yes"}).ok());
        QCOMPARE(detailOf(usecase::issuePackedBox(workplace, table.build, "K1")), refused);
        const auto refilled = usecase::refilledFor(workplace, table.build,
                                                   standardBox("K1", "Fin", table.design), "Fin");
        QVERIFY(refilled.ok() && usecase::keepBox(workplace, table.build, *refilled).ok());
        QVERIFY(boxOn(*morven, table, "K1").special);
    }

    /// Bands and scissors can be cleaned, dough is one child's own (assets/catalogue/items;
    /// activities.md 1.3; that each is done before another child has the box: job.md T8).
    void aReturnedBoxWaitsForSoapAndForNewDough()
    {
        auto morven = packer("Morven");
        (void)handedOver(*morven);
        usecase::Workplace workplace = morven->workplace();
        const usecase::BoxTending dough{"K1", {"dough"}};
        QCOMPARE(detailOf(usecase::cleanItem(workplace, {"K1", {"bands"}}, CleanedHow::Wiped)),
                 std::string("K1: has not come back"));
        QVERIFY(usecase::takeBoxBack(workplace, "K1").ok());
        QVERIFY(!usecase::takeBoxBack(workplace, "K1").ok());
        QVERIFY(usecase::tendedBox(workplace, "K1")->left ==
                (std::vector<StillToDo>{{{"bands"}, Care::Clean},
                                        {{"scissors"}, Care::Clean},
                                        {{"dough"}, Care::Replace}}));
        const Table next = packed(*morven, "Oona");
        QCOMPARE(detailOf(usecase::issuePackedBox(workplace, next.build, "K1")),
                 std::string("K1: bands, scissors, dough to be cleaned or replaced first"));
        QCOMPARE(detailOf(usecase::cleanItem(workplace, dough, CleanedHow::Wiped)),
                 std::string("dough: is replaced, not cleaned"));
        QVERIFY(usecase::cleanItem(workplace, {"K1", {"bands"}}, CleanedHow::SoapAndWater).ok());
        QVERIFY(
            usecase::cleanItem(workplace, {"K1", {"scissors"}, "Callum"}, CleanedHow::Wiped).ok());
        QVERIFY(!usecase::issuePackedBox(workplace, next.build, "K1").ok());
        QVERIFY(usecase::replaceItem(workplace, dough, "D-2").ok());
        const auto box = usecase::tendedBox(workplace, "K1");
        QVERIFY(box->left.empty());
        QVERIFY(box->status.tended.at({"scissors"}) ==
                (workbench::Tended{false, CleanedHow::Wiped, "Callum", *dayFrom({2027, 1, 4})}));
        QVERIFY(usecase::untendItem(workplace, {"K1", {"bands"}}).ok());
        QVERIFY(!usecase::issuePackedBox(workplace, next.build, "K1").ok());
        QVERIFY(usecase::cleanItem(workplace, {"K1", {"bands"}}, CleanedHow::SoapAndWater).ok());
        QVERIFY(usecase::issuePackedBox(workplace, next.build, "K1").ok());
        QCOMPARE(usecase::tendedBox(workplace, "K1")->status.child, std::string("Oona"));
        QVERIFY(usecase::tendedBox(workplace, "K1")->status.tended.empty());
        QVERIFY(rowsMatch(*morven));
    }

    void aDayThatCannotBeIsRefused()
    {
        auto morven = packer("Morven");
        (void)handedOver(*morven);
        morven->clock.moveTo(islandTime(20, 10, 0));
        usecase::Workplace workplace = morven->workplace();
        QVERIFY(usecase::takeBoxBack(workplace, "K1").ok());
        const auto on = [](int day) { return *dayFrom({2027, 1, day}); };
        QCOMPARE(detailOf(usecase::cleanItem(workplace, {"K1", {"bands"}, {}, on(21)},
                                             CleanedHow::Wiped)),
                 std::string("day: still to come"));
        QCOMPARE(detailOf(usecase::cleanItem(workplace, {"K1", {"bands"}, {}, on(19)},
                                             CleanedHow::Wiped)),
                 std::string("day: before it came back"));
    }

    void aRetiredBoxIsNeverPackedAgain()
    {
        auto morven = packer("Morven");
        const Table table = handedOver(*morven);
        usecase::Workplace workplace = morven->workplace();
        QVERIFY(usecase::retireBox(workplace, "K1", "cracked").ok());
        QVERIFY(!usecase::retireBox(workplace, "K1", "").ok());
        QCOMPARE(detailOf(usecase::keepBox(workplace, table.build,
                                           standardBox("K1", "Oona", table.design))),
                 std::string("K1: used no more"));
        QVERIFY(rowsMatch(*morven));
    }

    /// One says clean, the other, not knowing, "not yet": it is not yet.
    void notYetBesideCleanIsNotYet()
    {
        auto morven = packer("Morven");
        auto callum = packer("Callum");
        (void)handedOver(*morven);
        usecase::Workplace hers = morven->workplace();
        usecase::Workplace his = callum->workplace();
        QVERIFY(usecase::takeBoxBack(hers, "K1").ok());
        QVERIFY(usecase::cleanItem(hers, {"K1", {"bands"}}, CleanedHow::Wiped).ok());
        (void)takeClinic(*morven, *callum);
        QVERIFY(usecase::untendItem(his, {"K1", {"bands"}}).ok());
        QVERIFY(usecase::cleanItem(hers, {"K1", {"bands"}}, CleanedHow::SoapAndWater).ok());
        meetAtTable(*morven, *callum);
        for (Phone *phone : {morven.get(), callum.get()}) {
            usecase::Workplace workplace = phone->workplace();
            QCOMPARE(usecase::tendedBox(workplace, "K1")->left.front().item.value,
                     std::string("bands"));
            QVERIFY(rowsMatch(*phone));
        }
    }

    void aSecondBoxOfAChildIsTheNextRevision()
    {
        auto morven = therapistWith({"Fin"});
        const Table table = packed(*morven);
        usecase::Workplace workplace = morven->workplace();
        QVERIFY(usecase::issuePackedBox(workplace, table.build, "K1").ok());
        store::BoxRepository boxes(morven->database);
        const auto box = boxes.boxOf("Fin");
        QCOMPARE((*boxes.revision(box->id))->revision.number, 2);
        QCOMPARE(itemOf(*morven, "Fin", "bands").low, 6);
        QCOMPARE(itemOf(*morven, "Fin", "eyes").expected, 0);
    }

    /// From packing on, whoever has it, until it is replaced or the box is used no more.
    void aLotIsFoundWhereverItLies()
    {
        auto morven = packer("Morven");
        keepLot(*morven, "bands", "L 2306-a");
        const Table table = packed(*morven);
        usecase::Workplace workplace = morven->workplace();
        QCOMPARE(boxesWith(*morven, "l2306A"), (std::vector<std::string>{"K1"}));
        QVERIFY(usecase::issuePackedBox(workplace, table.build, "K1").ok());
        const auto found = usecase::recallLot(workplace, "L2306A", {"bands"});
        QCOMPARE(found->size(), std::size_t{1});
        QVERIFY(found->front() ==
                (store::LotFound{
                    {"bands"}, "K1", "L 2306-a", "Fin", Standing::Issued, *dayFrom({2027, 1, 4})}));
        QVERIFY(boxesWith(*morven, "L2306A", {"dough"}).empty());
        QVERIFY(boxesWith(*morven, "L2306").empty()); // part of a lot is another lot
        QVERIFY(usecase::takeBoxBack(workplace, "K1").ok());
        QVERIFY(usecase::cleanItem(workplace, {"K1", {"bands"}}, CleanedHow::Wiped).ok());
        QCOMPARE(boxesWith(*morven, "L2306A").size(), std::size_t{1}); // clean, and still there
        QVERIFY(usecase::replaceItem(workplace, {"K1", {"bands"}}, "L-9").ok());
        QVERIFY(boxesWith(*morven, "L2306A").empty());
        QCOMPARE(boxesWith(*morven, "l9"), (std::vector<std::string>{"K1"}));
        QVERIFY(usecase::untendItem(workplace, {"K1", {"bands"}}).ok());
        QCOMPARE(boxesWith(*morven, "L2306A").size(), std::size_t{1}); // after all it may
        QVERIFY(usecase::retireBox(workplace, "K1", "").ok());
        QVERIFY(boxesWith(*morven, "l9").empty());
        QVERIFY(rowsMatch(*morven));
    }

    /// Two people packed one line from two bags: a recall of either finds the box, also once it is
    /// handed over.
    void bothLotsOfALinePackedTwiceAreFound()
    {
        auto morven = packer("Morven");
        auto callum = packer("Callum");
        const Table table = packed(*morven);
        usecase::Workplace hers = morven->workplace();
        usecase::Workplace his = callum->workplace();
        QVERIFY(usecase::unpackLine(hers, {table.build, "K1", {"bands"}}).ok());
        (void)takeClinic(*morven, *callum);
        keepLot(*morven, "bands", "A1");
        QVERIFY(usecase::packLine(hers, {table.build, "K1", {"bands"}}).ok());
        keepLot(*callum, "bands", "B2");
        QVERIFY(usecase::packLine(his, {table.build, "K1", {"bands"}}).ok());
        meetAtTable(*morven, *callum);
        for (const char *lot : {"A1", "B2"})
            QCOMPARE(boxesWith(*morven, lot), (std::vector<std::string>{"K1"}));
        QVERIFY(usecase::issuePackedBox(hers, table.build, "K1").ok());
        for (const char *lot : {"A1", "B2"})
            QCOMPARE(boxesWith(*morven, lot), (std::vector<std::string>{"K1"}));
    }

    void aLotWithoutALetterIsRefused()
    {
        auto morven = packer("Morven");
        usecase::Workplace workplace = morven->workplace();
        const auto refused = usecase::recallLot(workplace, " - ");
        QVERIFY(!refused.ok());
        QCOMPARE(refused.error().detail, std::string("lot: empty"));
    }
};

QTEST_GUILESS_MAIN(TestTendBox)
#include "tst_tend_box.moc"

#include <QtTest>

#include "core/usecase/keep_limits.h"
#include "core/usecase/use_cost.h"

#include "tests/support/clinic.h"
#include "tests/support/shared_play.h"

using namespace lidlark;
using namespace lidlark::test;

namespace {

std::string detailOf(const Outcome &outcome)
{
    return outcome.ok() ? std::string("was taken") : outcome.error().detail;
}

workbench::KeptSupply pegs()
{
    workbench::KeptSupply kept;
    kept.supply = {{"pegs"}, "clothes pegs", {{"Harbour Stores", 24, 150, "GBP"}}, 10, false};
    kept.lot = "P-7";
    return kept;
}

/// Of 5 January: the day after the boxes were handed over.
bool sharesAPlay(Phone &therapist, const std::string &child, std::uint64_t number)
{
    usecase::Workplace workplace = therapist.workplace();
    return takeSharedPlay(workplace, child, {*dayFrom({2027, 1, 5}), PartOfDay::Evening}, "coast",
                          number);
}

/// Box number @p number of the small design, packed for a child of that number and handed over.
bool handsOver(Phone &therapist, const Table &table, int number)
{
    usecase::Workplace workplace = therapist.workplace();
    const std::string code = "K" + std::to_string(number);
    const std::string child = "kid" + std::to_string(number);
    return usecase::keepBox(workplace, table.build, standardBox(code, child, table.design)).ok() &&
           packAll(therapist, table, code) &&
           usecase::issuePackedBox(workplace, table.build, code).ok();
}

} // namespace

/// job.md T1 and T3: what is kept of supplies, designs and personal boxes; bad input named.
class TestKeepBuild : public QObject
{
    Q_OBJECT

private slots:
    void aSupplyIsKeptAndTheNextWordReplacesIt()
    {
        auto morven = packer("Morven");
        usecase::Workplace workplace = morven->workplace();
        QVERIFY(usecase::keepSupply(workplace, pegs()).ok());
        workbench::KeptSupply counted = pegs();
        counted.supply.inStock = 34;
        counted.supply.offers.push_back({"Post", 100, std::nullopt, ""});
        counted.supply.name = "  clothes pegs ";
        QVERIFY(usecase::keepSupply(workplace, counted).ok());
        const auto kept = usecase::keptSupplies(workplace);
        QVERIFY(kept.ok());
        QCOMPARE(kept->size(), std::size_t{1});
        counted.supply.name = "clothes pegs";
        QVERIFY(kept->at({"pegs"}) == counted);
        QVERIFY(rowsMatch(*morven));
    }

    void aSupplyThatCannotBeIsRefusedByField_data()
    {
        QTest::addColumn<int>("which");
        QTest::addColumn<QString>("detail");
        QTest::newRow("id") << 0 << "item: small letters, digits and hyphens only";
        QTest::newRow("name") << 1 << "name: empty";
        QTest::newRow("stock") << 2 << "stock: below zero";
        QTest::newRow("pack") << 3 << "pack size: 1 to 100000 pieces";
        QTest::newRow("price") << 4 << "price: nothing below zero, or above 100000.00";
        QTest::newRow("currency") << 5 << "currency: three capital letters";
        QTest::newRow("lot") << 6 << "lot: at most 40 characters";
        QTest::newRow("note") << 7 << "note: one line only";
    }

    void aSupplyThatCannotBeIsRefusedByField()
    {
        QFETCH(int, which);
        QFETCH(QString, detail);
        auto morven = packer("Morven");
        usecase::Workplace workplace = morven->workplace();
        workbench::KeptSupply bad = pegs();
        switch (which) {
        case 0:
            bad.supply.item = {"a/b"};
            break;
        case 1:
            bad.supply.name = " ";
            break;
        case 2:
            bad.supply.inStock = -1;
            break;
        case 3:
            bad.supply.offers[0].pieces = 0;
            break;
        case 4:
            bad.supply.offers[0].pence = -1;
            break;
        case 5:
            bad.supply.offers[0].currency = "pounds";
            break;
        case 6:
            bad.lot = std::string(41, 'L');
            break;
        default:
            bad.note = "one\ntwo";
        }
        QCOMPARE(QString::fromStdString(detailOf(usecase::keepSupply(workplace, bad))), detail);
        QVERIFY(usecase::keptSupplies(workplace)->empty());
    }

    /// Union of two phones, in any order, gives one register.
    void twoPhonesAgreeOnASupply()
    {
        auto morven = packer("Morven");
        auto callum = packer("Callum");
        usecase::Workplace hers = morven->workplace();
        usecase::Workplace his = callum->workplace();
        QVERIFY(usecase::keepSupply(hers, pegs()).ok());
        callum->clock.moveTo(islandTime(4, 11, 0));
        workbench::KeptSupply later = pegs();
        later.lot = "P-8";
        QVERIFY(usecase::keepSupply(his, later).ok());
        meetAtTable(*morven, *callum);
        QVERIFY(*usecase::keptSupplies(hers) == *usecase::keptSupplies(his));
        QCOMPARE(usecase::keptSupplies(hers)->at({"pegs"}).lot, std::string("P-8"));
    }

    /// No reason overrides an allergy (job.md T3).
    void anAllergyIsNotOverridden()
    {
        auto morven = packer("Morven");
        const Table table = tableOn(*morven);
        usecase::Workplace workplace = morven->workplace();
        workbench::KeptBox box = standardBox("K1", "Anya", table.design);
        box.personal.avoids = {child::Avoided::Latex};
        box.personal.departures = {{{"bands"}, workbench::Why::Goals, "she loves them"}};
        QCOMPARE(detailOf(usecase::keepBox(workplace, table.build, box)),
                 std::string("K1: bands: holds what this home must avoid"));
        QCOMPARE(usecase::packTable(workplace, table.build)->boxes.size(), std::size_t{0});
    }

    /// What no file of the catalogue answers for is refused, until somebody has looked at it.
    void whatNobodyKnowsIsRefusedForAnAllergy()
    {
        auto morven = packer("Morven");
        const Table table = tableOn(*morven);
        usecase::Workplace workplace = morven->workplace();
        workbench::KeptBox box = standardBox("K1", "Anya", table.design);
        box.box.parts = {{{"scissors"}, 1, {}}, {{"dough"}, 1, {}}, {{"tin-lid"}, 1, {}}};
        box.personal.avoids = {child::Avoided::Latex};
        box.personal.departures = {{{"tin-lid"}, workbench::Why::Home, ""}};
        QCOMPARE(detailOf(usecase::keepBox(workplace, table.build, box)),
                 std::string("K1: tin-lid: nobody has said what it holds"));
        workbench::KeptSupply looked;
        looked.supply = {{"tin-lid"}, "tin with a lid", {}, 3, false};
        looked.freeOf = {child::Avoided::Latex};
        QVERIFY(usecase::keepSupply(workplace, looked).ok());
        QVERIFY(usecase::keepBox(workplace, table.build, box).ok());
        const auto kept = usecase::packTable(workplace, table.build);
        // The bands are left out for the allergy, which needs no words.
        QVERIFY(kept->build.boxes[0].personal.departures.back() ==
                (workbench::Departure{{"bands"}, workbench::Why::Allergy, {}}));
    }

    void everyOtherDepartureNeedsAReason()
    {
        auto morven = packer("Morven");
        const Table table = tableOn(*morven);
        usecase::Workplace workplace = morven->workplace();
        workbench::KeptBox box = standardBox("K1", "Fin", table.design);
        box.box.parts[0].pieces = 4;
        QCOMPARE(detailOf(usecase::keepBox(workplace, table.build, box)),
                 std::string("K1: bands: say why it differs"));
        box.personal.departures = {{{"bands"}, workbench::Why::Goals, ""}};
        QVERIFY(usecase::keepBox(workplace, table.build, box).ok());
    }

    void aBoxThatCannotBeIsRefusedByField_data()
    {
        QTest::addColumn<int>("which");
        QTest::addColumn<QString>("detail");
        QTest::newRow("code") << 0 << "box code: empty";
        QTest::newRow("nothing in it") << 1 << "K1: nothing in it";
        QTest::newRow("pieces") << 2 << "K1: bands: 1 to 1000 pieces";
        QTest::newRow("twice") << 3 << "K1: bands: named twice";
        QTest::newRow("hand") << 4 << "K1: scissors-left: made for the other hand";
        QTest::newRow("design") << 5 << "this design";
    }

    void aBoxThatCannotBeIsRefusedByField()
    {
        QFETCH(int, which);
        QFETCH(QString, detail);
        auto morven = packer("Morven");
        const Table table = tableOn(*morven);
        usecase::Workplace workplace = morven->workplace();
        workbench::KeptBox box = standardBox("K1", "Fin", table.design);
        switch (which) {
        case 0:
            box.box.code = " ";
            break;
        case 1:
            box.box.parts.clear();
            break;
        case 2:
            box.box.parts[0].pieces = 0;
            break;
        case 3:
            box.box.parts.push_back({{"bands"}, 1, {}});
            break;
        case 4:
            box.box.parts[2] = {{"scissors-left"}, 1, {"scissors"}};
            box.personal.departures = {{{"scissors"}, workbench::Why::Hand, ""}};
            break;
        default:
            box.box.design = {"none such"};
        }
        QCOMPARE(QString::fromStdString(detailOf(usecase::keepBox(workplace, table.build, box))),
                 detail);
        QVERIFY(usecase::packTable(workplace, table.build)->boxes.empty());
    }

    void aDroppedBoxIsGoneAndARemovedDesignMakesItsBoxesSpecial()
    {
        auto morven = packer("Morven");
        const Table table = tableOn(*morven);
        usecase::Workplace workplace = morven->workplace();
        for (const char *code : {"K1", "K2"})
            QVERIFY(
                usecase::keepBox(workplace, table.build, standardBox(code, "", table.design)).ok());
        QVERIFY(usecase::dropBox(workplace, table.build, "K1").ok());
        QVERIFY(!usecase::dropBox(workplace, table.build, "K1").ok());
        QVERIFY(!boxOn(*morven, table, "K2").special);
        QVERIFY(usecase::removeDesign(workplace, table.design).ok());
        QVERIFY(boxOn(*morven, table, "K2").special); // nothing to compare with: somebody looks
        QVERIFY(rowsMatch(*morven));
    }

    /// job.md T20: from shared data only, group of at least ten boxes. Bands 6 of 100 for 160,
    /// dough 1 of 12 for 600, scissors 1 of 12 for 960: 9.6 + 50 + 80 = 139.6, so 140 pence a box;
    /// ten boxes over 31 plays are 45.16.
    void whatOnePlayCostsIsToldFromTenBoxesOn()
    {
        auto morven = packer("Morven");
        usecase::Workplace workplace = morven->workplace();
        for (const auto &[item, size, pence] : std::vector<std::tuple<std::string, int, int>>{
                 {"bands", 100, 160}, {"dough", 12, 600}, {"scissors", 12, 960}}) {
            workbench::KeptSupply kept;
            kept.supply = {{item}, item, {{"Harbour Stores", size, pence, "GBP"}}, 0, false};
            QVERIFY(usecase::keepSupply(workplace, kept).ok());
        }
        const Table table = tableOn(*morven);
        for (int box = 1; box <= 11; ++box)
            QVERIFY(handsOver(*morven, table, box));
        morven->clock.moveTo(islandTime(12, 9, 0));
        for (int box = 1; box <= 9; ++box) {
            for (std::uint64_t play = 1; play <= 3; ++play)
                QVERIFY(sharesAPlay(*morven, "kid" + std::to_string(box), play));
        }
        QVERIFY(!usecase::useCost(workplace)->cost);
        for (std::uint64_t play = 1; play <= 4; ++play)
            QVERIFY(sharesAPlay(*morven, "kid10", play));
        const auto cost = usecase::useCost(workplace); // the eleventh shares nothing
        QVERIFY(cost->cost == (workbench::CostPerUse{10, {45}}));
        QCOMPARE(cost->currency, std::string("GBP"));
        QCOMPARE(cost->leftOut, 0);
        morven->clock.moveTo(islandTime(12 + usecase::playDays, 9, 0));
        QVERIFY(!usecase::useCost(workplace)->cost);
        Phone ruth("Ruth", store::Role::Parent, "h-fin");
        usecase::Workplace hers = ruth.workplace();
        QVERIFY(!usecase::useCost(hers).ok());
    }
};

QTEST_GUILESS_MAIN(TestKeepBuild)
#include "tst_keep_build.moc"

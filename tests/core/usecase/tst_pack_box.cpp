#include <QtTest>

#include "core/usecase/issue_box.h"
#include "core/usecase/pack_list_page.h"
#include "core/usecase/pack_plain.h"
#include "tests/support/clinic.h"
#include "tests/support/hostile_folder.h"

#include <filesystem>

using namespace lidlark;
using namespace lidlark::test;
using workbench::Hand;
using workbench::LineState;
using workbench::NotReady;

namespace {

workbench::KeptBox leftHanded(const std::string &code, const workbench::DesignId &design)
{
    workbench::KeptBox box = standardBox(code, "Rory", design);
    box.personal.hand = Hand::Left;
    return box;
}

/// Bands hold latex, loops do not (assets/catalogue/items, activities.md 1.3).
workbench::KeptBox latexFree(const std::string &code, const workbench::DesignId &design)
{
    workbench::KeptBox box = standardBox(code, "Anya", design);
    box.box.parts[0] = {{"loops"}, 6, {"bands"}};
    box.personal.avoids = {child::Avoided::Latex};
    return box;
}

std::string detailOf(const Outcome &outcome)
{
    return outcome.ok() ? std::string("was taken") : outcome.error().detail;
}

} // namespace

/// job.md T4: pack mode.
class TestPackBox : public QObject
{
    Q_OBJECT

private slots:
    void aStandardBoxIsReadyWhenAllOfItIsIn()
    {
        auto morven = packer("Morven");
        const Table table = tableOn(*morven);
        usecase::Workplace workplace = morven->workplace();
        QVERIFY(
            usecase::keepBox(workplace, table.build, standardBox("k1", "Fin", table.design)).ok());
        QVERIFY(boxOn(*morven, table, "K1").notReady == NotReady::Lines);
        QVERIFY(packAll(*morven, table, "K1"));
        QVERIFY(boxOn(*morven, table, "K1").isReady());
        QVERIFY(usecase::unpackLine(workplace, {table.build, "K1", {"dough"}}).ok());
        QVERIFY(!boxOn(*morven, table, "K1").isReady());
        QVERIFY(rowsMatch(*morven));
    }

    /// Fifty boxes at once: what is the same in all is said once, and no special box by it.
    void plainBoxesArePackedTogether()
    {
        auto morven = packer("Morven");
        const Table table = tableOn(*morven);
        usecase::Workplace workplace = morven->workplace();
        for (const auto &box :
             {standardBox("K1", "Fin", table.design), standardBox("K2", "", table.design),
              latexFree("K3", table.design), leftHanded("K4", table.design)})
            QVERIFY(usecase::keepBox(workplace, table.build, box).ok());
        QVERIFY(usecase::packLine(workplace, {table.build, "K1", {"dough"}}).ok());
        const auto without = [&](const char *item) {
            return usecase::plainBoxesWithout(*usecase::packTable(workplace, table.build), {item});
        };
        QCOMPARE(without("bands"), (std::vector<std::string>{"K1", "K2"}));
        QCOMPARE(without("dough"), std::vector<std::string>{"K2"});
        QVERIFY(usecase::packPlainBoxes(workplace, table.build, {"bands"}).ok());
        QVERIFY(without("bands").empty());
        for (const char *code : {"K1", "K2"})
            QCOMPARE(boxOn(*morven, table, code).linesIn(), code == std::string("K1") ? 2 : 1);
        for (const char *code : {"K3", "K4"})
            QCOMPARE(boxOn(*morven, table, code).linesIn(), 0);
        const std::string before = stateOf(morven->database);
        QVERIFY(usecase::packPlainBoxes(workplace, table.build, {"bands"}).ok());
        QCOMPARE(stateOf(morven->database), before);
        QVERIFY(rowsMatch(*morven));
    }

    /// Blades are for one hand: each pair is read off by itself (job.md T4).
    void whatIsForOneHandIsTickedOneByOne()
    {
        auto morven = packer("Morven");
        const Table table = tableOn(*morven);
        usecase::Workplace workplace = morven->workplace();
        workbench::KeptBox right = standardBox("K1", "Fin", table.design);
        right.personal.hand = Hand::Right;
        QVERIFY(usecase::keepBox(workplace, table.build, right).ok());
        QVERIFY(usecase::packPlainBoxes(workplace, table.build, {"scissors"}).ok());
        QCOMPARE(boxOn(*morven, table, "K1").linesIn(), 0);
    }

    /// The second tick, on one phone: not the packer's own, whatever capitals the name has.
    void aSpecialBoxWaitsForSomebodyElse()
    {
        auto morven = packer("Morven");
        const Table table = tableOn(*morven);
        usecase::Workplace workplace = morven->workplace();
        QVERIFY(usecase::keepBox(workplace, table.build, latexFree("K2", table.design)).ok());
        QVERIFY(boxOn(*morven, table, "K2").special);
        QVERIFY(packAll(*morven, table, "K2"));
        QVERIFY(boxOn(*morven, table, "K2").notReady == NotReady::SecondLook);
        QVERIFY(!lookOverAll(*morven, table, "K2"));
        QVERIFY(!lookOverAll(*morven, table, "K2", " morven "));
        QVERIFY(boxOn(*morven, table, "K2").notReady == NotReady::SecondLook);
        QVERIFY(lookOverAll(*morven, table, "K2", "Callum"));
        QVERIFY(boxOn(*morven, table, "K2").isReady());
    }

    /// What is packed again after the look was not looked over.
    void packedAgainIsLookedOverAgain()
    {
        auto morven = packer("Morven");
        const Table table = tableOn(*morven);
        usecase::Workplace workplace = morven->workplace();
        QVERIFY(usecase::keepBox(workplace, table.build, leftHanded("K3", table.design)).ok());
        QVERIFY(packAll(*morven, table, "K3"));
        QVERIFY(lookOverAll(*morven, table, "K3", "Callum"));
        QVERIFY(usecase::unpackLine(workplace, {table.build, "K3", {"dough"}, "Callum"}).ok());
        QVERIFY(usecase::packLine(workplace, {table.build, "K3", {"dough"}, "Callum"}).ok());
        QVERIFY(boxOn(*morven, table, "K3").notReady == NotReady::SecondLook);
        QVERIFY(!usecase::lookOver(workplace, {table.build, "K3", {"dough"}, "Callum"}).ok());
        QVERIFY(usecase::lookOver(workplace, {table.build, "K3", {"dough"}}).ok());
        QVERIFY(boxOn(*morven, table, "K3").isReady());
    }

    void theWrongScissorsAreNotPacked()
    {
        auto morven = packer("Morven");
        const Table table = tableOn(*morven);
        usecase::Workplace workplace = morven->workplace();
        QVERIFY(usecase::keepBox(workplace, table.build, leftHanded("K3", table.design)).ok());
        const usecase::PackLineAt scissors{table.build, "K3", {"scissors"}};
        QCOMPARE(detailOf(usecase::packLine(workplace, scissors)),
                 std::string("K3: scissors: say for which hand"));
        QCOMPARE(detailOf(usecase::packLine(workplace, scissors, Hand::Right)),
                 std::string("K3: scissors: made for the other hand"));
        QVERIFY(boxOn(*morven, table, "K3").lines[2].state == LineState::Open);
        QVERIFY(usecase::packLine(workplace, scissors, Hand::Left).ok());
        // It turns out that the child cuts with the right hand: what lies there is wrong now.
        QVERIFY(
            usecase::keepBox(workplace, table.build, standardBox("K3", "Rory", table.design)).ok());
        QVERIFY(boxOn(*morven, table, "K3").lines[2].state == LineState::WrongHand);
    }

    /// Two packers split a build: each ticks on a phone of their own, and they meet later.
    void twoPackersSplitABuild()
    {
        auto morven = packer("Morven");
        auto callum = packer("Callum");
        const Table table = tableOn(*morven);
        usecase::Workplace hers = morven->workplace();
        QVERIFY(usecase::keepBox(hers, table.build, latexFree("K2", table.design)).ok());
        QVERIFY(takeClinic(*morven, *callum) > 0);
        usecase::Workplace his = callum->workplace();
        QVERIFY(usecase::packLine(hers, {table.build, "K2", {"loops"}}).ok());
        QVERIFY(usecase::packLine(hers, {table.build, "K2", {"dough"}}).ok());
        QVERIFY(usecase::packLine(his, {table.build, "K2", {"scissors"}}, Hand::Right).ok());
        QVERIFY(boxOn(*morven, table, "K2").notReady == NotReady::Lines);
        meetAtTable(*morven, *callum);
        QVERIFY(boxOn(*morven, table, "K2") == boxOn(*callum, table, "K2"));
        QVERIFY(boxOn(*morven, table, "K2").notReady == NotReady::SecondLook);
        // Each looks over what the other has packed, and nobody their own.
        QVERIFY(!usecase::lookOver(hers, {table.build, "K2", {"dough"}}).ok());
        QVERIFY(usecase::lookOver(hers, {table.build, "K2", {"scissors"}}).ok());
        QVERIFY(usecase::lookOver(his, {table.build, "K2", {"dough"}}).ok());
        QVERIFY(usecase::lookOver(his, {table.build, "K2", {"loops"}}).ok());
        QVERIFY(!boxOn(*morven, table, "K2").isReady());
        meetAtTable(*callum, *morven);
        QVERIFY(boxOn(*morven, table, "K2").isReady());
        QVERIFY(boxOn(*callum, table, "K2").isReady());
        QVERIFY(rowsMatch(*morven));
        QVERIFY(rowsMatch(*callum));
    }

    /// Both packed the same thing without knowing: it may lie there twice, and is said so.
    void packedByTwoIsCalledOut()
    {
        auto morven = packer("Morven");
        auto callum = packer("Callum");
        const Table table = tableOn(*morven);
        usecase::Workplace hers = morven->workplace();
        QVERIFY(usecase::keepBox(hers, table.build, standardBox("K1", "Fin", table.design)).ok());
        QVERIFY(takeClinic(*morven, *callum) > 0);
        QVERIFY(packAll(*morven, table, "K1"));
        QVERIFY(packAll(*callum, table, "K1"));
        meetAtTable(*morven, *callum);
        QVERIFY(boxOn(*morven, table, "K1").lines[0].perhapsTwice);
        // One who has seen both takes it out, and packs it once.
        usecase::Workplace his = callum->workplace();
        QVERIFY(usecase::unpackLine(his, {table.build, "K1", {"bands"}}).ok());
        QVERIFY(usecase::packLine(his, {table.build, "K1", {"bands"}}).ok());
        meetAtTable(*morven, *callum);
        QVERIFY(!boxOn(*morven, table, "K1").lines[0].perhapsTwice);
    }

    /// "Not in" beside "in": somebody looks again.
    void inAndNotInIsNotIn()
    {
        auto morven = packer("Morven");
        auto callum = packer("Callum");
        const Table table = tableOn(*morven);
        usecase::Workplace hers = morven->workplace();
        QVERIFY(usecase::keepBox(hers, table.build, standardBox("K1", "Fin", table.design)).ok());
        QVERIFY(packAll(*morven, table, "K1"));
        QVERIFY(takeClinic(*morven, *callum) > 0);
        usecase::Workplace his = callum->workplace();
        QVERIFY(usecase::unpackLine(hers, {table.build, "K1", {"bands"}}).ok());
        QVERIFY(usecase::unpackLine(his, {table.build, "K1", {"bands"}}).ok());
        QVERIFY(usecase::packLine(his, {table.build, "K1", {"bands"}}).ok());
        meetAtTable(*morven, *callum);
        QVERIFY(boxOn(*morven, table, "K1").lines[0].state == LineState::Open);
        QVERIFY(boxOn(*callum, table, "K1").lines[0].state == LineState::Open);
    }

    /// Two people change two boxes of one build: both stand. The same box: it is not ready.
    void aBoxWrittenInTwoWaysIsNotReady()
    {
        auto morven = packer("Morven");
        auto callum = packer("Callum");
        const Table table = tableOn(*morven);
        usecase::Workplace hers = morven->workplace();
        for (const char *code : {"K1", "K2", "K10"})
            QVERIFY(
                usecase::keepBox(hers, table.build, standardBox(code, code, table.design)).ok());
        QVERIFY(packAll(*morven, table, "K1"));
        QVERIFY(takeClinic(*morven, *callum) > 0);
        usecase::Workplace his = callum->workplace();
        QVERIFY(usecase::keepBox(hers, table.build, standardBox("K1", "Fin", table.design)).ok());
        QVERIFY(usecase::keepBox(his, table.build, standardBox("K1", "Skye", table.design)).ok());
        QVERIFY(usecase::keepBox(his, table.build, standardBox("K2", "Oona", table.design)).ok());
        QVERIFY(usecase::keepBox(hers, table.build, standardBox("K10", "Zoya", table.design)).ok());
        meetAtTable(*morven, *callum);
        QVERIFY(boxOn(*morven, table, "K1").notReady == NotReady::Disputed);
        QVERIFY(boxOn(*morven, table, "K1") == boxOn(*callum, table, "K1"));
        QCOMPARE(boxOn(*morven, table, "K2").whose, std::string("Oona"));
        QCOMPARE(boxOn(*callum, table, "K10").whose, std::string("Zoya"));
        const auto shown = usecase::packTable(hers, table.build);
        QCOMPARE(shown->boxes.back().code, std::string("K10")); // after K2
        QVERIFY(usecase::keepBox(hers, table.build, standardBox("K1", "Fin", table.design)).ok());
        QVERIFY(boxOn(*morven, table, "K1").isReady());
    }

    /// The list has changed after packing: more of one, and one thing less.
    void whatTheListNoMoreAsksForComesOut()
    {
        auto morven = packer("Morven");
        const Table table = tableOn(*morven);
        usecase::Workplace workplace = morven->workplace();
        QVERIFY(
            usecase::keepBox(workplace, table.build, standardBox("K1", "Fin", table.design)).ok());
        QVERIFY(packAll(*morven, table, "K1"));
        workbench::KeptBox changed = standardBox("K1", "Fin", table.design);
        changed.box.parts = {{{"bands"}, 8, {}}, {{"scissors"}, 1, {}}};
        changed.personal.departures = {{{"bands"}, workbench::Why::Goals, "more to stretch"},
                                       {{"dough"}, workbench::Why::Home, "the dog eats it"}};
        QVERIFY(usecase::keepBox(workplace, table.build, changed).ok());
        const auto box = boxOn(*morven, table, "K1");
        QVERIFY(box.lines[0].state == LineState::WrongCount);
        QCOMPARE(box.takeOut, (std::vector<ItemId>{{"dough"}}));
        QVERIFY(box.notReady == NotReady::TakeOut);
        QVERIFY(usecase::unpackLine(workplace, {table.build, "K1", {"dough"}}).ok());
        QVERIFY(packAll(*morven, table, "K1"));
        QVERIFY(boxOn(*morven, table, "K1").notReady == NotReady::SecondLook);
    }

    void ticksSurviveARestart()
    {
        const std::string file =
            (std::filesystem::temp_directory_path() / "tst_pack_box.lidlark").string();
        std::filesystem::remove(file);
        Table table;
        {
            auto morven = packer("Morven");
            morven->database = *store::Database::open(file);
            table = tableOn(*morven);
            usecase::Workplace workplace = morven->workplace();
            QVERIFY(usecase::keepBox(workplace, table.build, standardBox("K1", "Fin", table.design))
                        .ok());
            QVERIFY(usecase::packLine(workplace, {table.build, "K1", {"bands"}}).ok());
        } // as a battery goes: nothing is saved at the end
        auto morven = packer("Morven");
        morven->database = *store::Database::open(file);
        QCOMPARE(boxOn(*morven, table, "K1").linesIn(), 1);
        QVERIFY(packAll(*morven, table, "K1"));
        QVERIFY(boxOn(*morven, table, "K1").isReady());
        std::filesystem::remove(file);
    }

    /// The printed list: what was handed over waits for nobody; the newest build that waits is it.
    void aPackListIsOfWhatIsStillToBePacked()
    {
        auto morven = packer("Morven");
        usecase::Workplace workplace = morven->workplace();
        QVERIFY(!usecase::buildToPack(workplace).ok());
        const Table table = tableOn(*morven);
        for (const auto &box : {standardBox("K1", "Fin", table.design),
                                leftHanded("K2", table.design), latexFree("K3", table.design)})
            QVERIFY(usecase::keepBox(workplace, table.build, box).ok());
        QVERIFY(packAll(*morven, table, "K1"));
        QVERIFY(usecase::issuePackedBox(workplace, table.build, "K1").ok());
        QVERIFY(*usecase::buildToPack(workplace) == table.build);
        const auto list = usecase::packListPageOf(workplace, table.build);
        QCOMPARE(list->boxes.size(), std::size_t{2});
        QCOMPARE(list->boxes.front().code, std::string("K2"));
        // bands, dough, scissors, loops
        QCOMPARE(list->items.size(), std::size_t{4});
        QCOMPARE(list->items[1].item, ItemId{"dough"});
        QCOMPARE(list->items[1].pieces(), 2);
        QVERIFY(list->items[1].places[1].special);
        const auto &scissors = list->items[2].places;
        QVERIFY(scissors[0].callOuts.front().kind == workbench::CallKind::LeftHand);
        QVERIFY(scissors[1].callOuts.empty());
        const auto newer = usecase::startBuild(
            workplace, {{}, "Later boxes", *dayFrom({2027, 2, 1}), "GBP", 10, {}});
        QVERIFY(newer.ok());
        QVERIFY(*usecase::buildToPack(workplace) == table.build); // nothing to pack there yet
    }

    void aFamilysPhonePacksNothing()
    {
        Phone ruth("Ruth", store::Role::Parent, "h-fin");
        usecase::Workplace workplace = ruth.workplace();
        const auto refused = usecase::keepDesign(workplace, smallDesign());
        QVERIFY(!refused.ok());
        QVERIFY(refused.error().code == ErrorCode::NotAllowed);
    }
};

QTEST_GUILESS_MAIN(TestPackBox)
#include "tst_pack_box.moc"

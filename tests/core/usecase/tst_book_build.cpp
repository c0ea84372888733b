#include <QtTest>

#include "core/journal/take_backs.h"
#include "core/store/recording.h"
#include "core/usecase/book_build.h"
#include "core/usecase/build_sheet.h"
#include "core/usecase/fill_box.h"
#include "core/usecase/island_shelf.h"
#include "core/usecase/set_up_home.h"
#include "core/workbench/box_departures.h"
#include "tests/support/golden_phone.h"

using namespace lidlark;
using namespace lidlark::test;

namespace {

std::string detailOf(const Outcome &outcome)
{
    return outcome.ok() ? std::string("was taken") : outcome.error().detail;
}

/// Pieces of an item on the shelf and set aside for a build: they change together by what is bought
/// alone.
std::int64_t held(usecase::Workplace &workplace, const workbench::BuildId &build, const char *item)
{
    const auto kept = usecase::keptSupplies(workplace);
    const auto sheet = usecase::buildSheetOf(workplace, build);
    const auto aside = sheet->aside.find({item});
    return kept->at({item}).supply.inStock + (aside != sheet->aside.end() ? aside->second : 0);
}

int onShelf(usecase::Workplace &workplace, const char *item)
{
    return usecase::keptSupplies(workplace)->at({item}).supply.inStock;
}

/// Every event that was said in one breath with the purchase.
void takeBackPurchase(usecase::Workplace &workplace)
{
    const auto day = store::todayOf(workplace.clock)->day;
    const auto events = store::EventRepository(workplace.database).ofDay(store::clinicLane, day);
    const auto bought = std::ranges::find_if(*events, [](const journal::Event &event) {
        return event.fields.find("bought") != std::string::npos;
    });
    auto recording = store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    for (const journal::Event &event : *events) {
        if (journal::breathOf(event) == journal::breathOf(*bought))
            (void)recording->say(store::clinicLane, journal::Kind::TakenBack,
                                 journal::fieldsOfTakingBack(event));
    }
    (void)recording->commit();
}

} // namespace

/// job.md T2, T3, T19: what is bought becomes stock, and a box is filled in for a home.
class TestBookBuild : public QObject
{
    Q_OBJECT

private slots:
    /// Figures: job.md 2.8.
    void theGoldenBuildIsBoughtAndWhatIsLeftOverIsStock()
    {
        auto morven = packer("Morven");
        usecase::Workplace workplace = morven->workplace();
        GoldenPhone golden(workplace);
        const Table table = golden.keepAll();
        const auto before = usecase::buildSheetOf(workplace, table.build);
        QCOMPARE(before->build.boxes.size(), std::size_t{25});
        QCOMPARE(std::get<workbench::Sheet>(before->sheet).spend.pence, 22'034);
        QCOMPARE(detailOf(usecase::bookBuild(workplace, table.build)), std::string("was taken"));
        QCOMPARE(onShelf(workplace, "pegs"), 4);
        QCOMPARE(onShelf(workplace, "pieces"), 236);
        QCOMPARE(onShelf(workplace, "bands"), 80);
        const auto after = usecase::buildSheetOf(workplace, table.build);
        QCOMPARE(after->build.purchases.size(), std::size_t{1});
        QCOMPARE(after->build.purchases[0].spend.pence, 22'034);
        QVERIFY(after->build.purchases[0].day == *dayFrom({2027, 1, 4}));
        QCOMPARE(detailOf(usecase::bookBuild(workplace, table.build)),
                 std::string("bought: all of it"));
        QCOMPARE(onShelf(workplace, "pegs"), 4);
        QVERIFY(rowsMatch(*morven));
    }

    void aLaterBoxIsBoughtForAndADroppedOneGoesBack()
    {
        auto morven = packer("Morven");
        usecase::Workplace workplace = morven->workplace();
        GoldenPhone golden(workplace);
        const Table table = golden.keepAll();
        QVERIFY(usecase::bookBuild(workplace, table.build).ok());
        QCOMPARE(held(workplace, table.build, "pegs"), 154);
        const auto one = usecase::boxesForNobody(workplace, table.build, table.design, 1);
        QCOMPARE(one->front().box.code, std::string("K26"));
        QVERIFY(usecase::keepBoxes(workplace, table.build, *one).ok());
        QVERIFY(usecase::bookBuild(workplace, table.build).ok());
        // 4 pegs lay there, 6 were needed: one pack of 24 (job.md 2.8).
        QCOMPARE(onShelf(workplace, "pegs"), 22);
        QCOMPARE(held(workplace, table.build, "pegs"), 154 + 24);
        for (const char *code : {"K26", "K1"})
            QVERIFY(usecase::dropBox(workplace, table.build, code).ok());
        QCOMPARE(onShelf(workplace, "pegs"), 22); // nothing changes by itself
        QVERIFY(usecase::bookBuild(workplace, table.build).ok());
        QCOMPARE(onShelf(workplace, "pegs"), 22 + 12);
        QCOMPARE(held(workplace, table.build, "pegs"), 154 + 24);
        const auto sheet = usecase::buildSheetOf(workplace, table.build);
        QCOMPARE(sheet->build.purchases.back().spend.pence, 0);
        QVERIFY(rowsMatch(*morven));
    }

    void aChangedHeadKeepsWhatWasBought()
    {
        auto morven = packer("Morven");
        usecase::Workplace workplace = morven->workplace();
        GoldenPhone golden(workplace);
        const Table table = golden.keepAll();
        QVERIFY(usecase::bookBuild(workplace, table.build).ok());
        workbench::KeptBuild head = usecase::buildSheetOf(workplace, table.build)->build;
        head.name = " Easter boxes ";
        head.sparesPercent = 100; // what is covered asks for no more spares
        QVERIFY(usecase::changeBuild(workplace, head).ok());
        const auto after = usecase::buildSheetOf(workplace, table.build);
        QCOMPARE(after->build.name, std::string("Easter boxes"));
        QCOMPARE(after->build.purchases.size(), std::size_t{1});
        QVERIFY(workbench::isSettled(std::get<workbench::Sheet>(after->sheet)));
        head.currency = "pounds";
        QCOMPARE(detailOf(usecase::changeBuild(workplace, head)),
                 std::string("currency: three capital letters"));
        head.id = {"none such"};
        QCOMPARE(detailOf(usecase::changeBuild(workplace, head)), std::string("this build"));
    }

    /// One act: its events are taken back together, and the shelf is as it was.
    void aPurchaseTakenBackGivesTheShelfBack()
    {
        auto morven = packer("Morven");
        usecase::Workplace workplace = morven->workplace();
        GoldenPhone golden(workplace);
        const Table table = golden.keepAll();
        QVERIFY(usecase::bookBuild(workplace, table.build).ok());
        takeBackPurchase(workplace);
        QCOMPARE(onShelf(workplace, "pegs"), 10);
        const auto sheet = usecase::buildSheetOf(workplace, table.build);
        QVERIFY(sheet->build.purchases.empty());
        QCOMPARE(std::get<workbench::Sheet>(sheet->sheet).spend.pence, 22'034);
        QVERIFY(rowsMatch(*morven));
    }

    void whatCannotBeBoughtIsRefused()
    {
        auto morven = packer("Morven");
        usecase::Workplace workplace = morven->workplace();
        GoldenPhone golden(workplace);
        const auto design = golden.keepDesign();
        const auto build = usecase::startBuild(
            workplace, {{}, "Spring boxes", *dayFrom({2027, 1, 4}), "GBP", 10, {}});
        QCOMPARE(detailOf(usecase::bookBuild(workplace, *build)), std::string("boxes: none yet"));
        (void)golden.keepBoxes(*build, design); // and no supply of anything
        QVERIFY(!usecase::bookBuild(workplace, *build).ok());
        QVERIFY(usecase::buildSheetOf(workplace, *build)->build.purchases.empty());
        QCOMPARE(detailOf(usecase::bookBuild(workplace, {"none such"})), std::string("this build"));
    }

    /// Two who did not know of each other: both have bought, and both phones say the same.
    void twoPurchasesMeet()
    {
        auto morven = packer("Morven");
        auto callum = packer("Callum");
        usecase::Workplace hers = morven->workplace();
        usecase::Workplace his = callum->workplace();
        GoldenPhone golden(hers);
        const Table table = golden.keepAll();
        meetAtTable(*morven, *callum);
        callum->clock.moveTo(islandTime(4, 11, 0));
        QVERIFY(usecase::bookBuild(hers, table.build).ok());
        QVERIFY(usecase::bookBuild(his, table.build).ok());
        meetAtTable(*morven, *callum);
        const auto here = usecase::buildSheetOf(hers, table.build);
        const auto there = usecase::buildSheetOf(his, table.build);
        QVERIFY(here->build == there->build);
        QCOMPARE(here->build.purchases.size(), std::size_t{2});
        QVERIFY(rowsMatch(*morven) && rowsMatch(*callum));
    }

    /// job.md T3: a latex tag anywhere in the home removes all latex items; each swap is said.
    void aHomeFillsInWhatItMustAvoid()
    {
        auto morven = therapistWith({"Anya", "Lewis"});
        usecase::Workplace workplace = morven->workplace();
        GoldenPhone golden(workplace);
        QCOMPARE(golden.keepSupplies(), 23);
        const auto design = golden.keepDesign();
        const auto build = usecase::startBuild(
            workplace, {{}, "Spring boxes", *dayFrom({2027, 1, 4}), "GBP", 10, {}});
        const auto plain = usecase::boxForChild(workplace, *build, design, "Anya");
        QVERIFY(plain.ok());
        QVERIFY(plain->personal.departures.empty());
        QVERIFY(usecase::sayFact(workplace, {"h-anya"}, {"", "latex", "yes"}).ok());
        const auto box = usecase::boxForChild(workplace, *build, design, "Anya");
        QVERIFY(box->personal.avoids == std::set{child::Avoided::Latex});
        std::map<std::string, std::string> swaps;
        for (const workbench::BoxPart &part : box->box.parts) {
            const auto *kind = workplace.catalogue.item(part.item);
            QVERIFY(kind == nullptr || !kind->tags.has(catalogue::Tag::Latex));
            if (!part.insteadOf.empty())
                swaps[part.insteadOf.value] = part.item.value;
        }
        // job.md 2.8: the latex-avoiding box.
        const std::map<std::string, std::string> expected{
            {"bands", "loops"}, {"ball", "pouch"}, {"balloon", "scarf"}};
        QCOMPARE(swaps, expected);
        for (const workbench::Departure &departure : box->personal.departures)
            QVERIFY(departure.why == workbench::Why::Allergy);
        // Beside others it is the same box, and each has a code of its own.
        const auto several =
            usecase::boxesForChildren(workplace, *build, design, {"Lewis", "Anya"});
        QVERIFY(several.ok());
        QCOMPARE(several->front().box.code, std::string("K1"));
        QCOMPARE(several->back().box.code, std::string("K2"));
        QVERIFY(several->back().box.parts == box->box.parts);
        QVERIFY(several->back().personal == box->personal);
        QVERIFY(usecase::keepBox(workplace, *build, *box).ok());
        QVERIFY(!usecase::boxesForChildren(workplace, *build, design, {"Lewis", "Anya"}).ok());
        QCOMPARE(usecase::boxForChild(workplace, *build, design, "Anya").error().detail,
                 std::string("K1: is for that child already"));
    }

    void theDemosSpringBoxesCanBePackedAndBoughtFor()
    {
        auto morven = packer("Morven");
        usecase::Workplace workplace = morven->workplace();
        QVERIFY(usecase::layOutShelf(workplace).ok());
        const auto builds = usecase::keptBuilds(workplace);
        QCOMPARE(builds->size(), std::size_t{1});
        const auto sheet = usecase::buildSheetOf(workplace, builds->front().id);
        QVERIFY(std::holds_alternative<workbench::Sheet>(sheet->sheet));
        QVERIFY(std::get<workbench::Sheet>(sheet->sheet).spend.pence > 0);
        const auto supplies = usecase::keptSupplies(workplace);
        int special = 0;
        const auto designs = usecase::keptDesigns(workplace);
        for (const workbench::KeptBox &box : sheet->build.boxes) {
            QVERIFY(!workbench::conflictIn(box, workplace.catalogue, *supplies));
            special += workbench::isSpecial(box, &designs->begin()->second) ? 1 : 0;
        }
        QCOMPARE(sheet->build.boxes.size(), std::size_t{6});
        QCOMPARE(special, 3); // left hand, no latex, a child who mouths
        QVERIFY(rowsMatch(*morven));
    }

    /// Lewis's sister is 25 months old and mouths (job.md 4): nothing small is left in.
    void aHomeWithAMouthingChild()
    {
        auto morven = therapistWith({"Lewis"});
        usecase::Workplace workplace = morven->workplace();
        GoldenPhone golden(workplace);
        (void)golden.keepSupplies();
        const auto design = golden.keepDesign();
        const auto build = usecase::startBuild(
            workplace, {{}, "Spring boxes", *dayFrom({2027, 1, 4}), "GBP", 10, {}});
        const auto box = usecase::boxForChild(workplace, *build, design, "Lewis");
        QVERIFY(box.ok());
        for (const workbench::BoxPart &part : box->box.parts) {
            const auto *kind = workplace.catalogue.item(part.item);
            for (const auto tag : {catalogue::Tag::Small, catalogue::Tag::Balloon,
                                   catalogue::Tag::Elastic, catalogue::Tag::Cord})
                QVERIFY2(kind == nullptr || !kind->tags.has(tag), part.item.value.c_str());
        }
        QVERIFY(std::ranges::find(box->personal.departures,
                                  workbench::Departure{{"eyes"}, workbench::Why::Mouthing, {}}) !=
                box->personal.departures.end());
        QVERIFY(usecase::keepBox(workplace, *build, *box).ok());
    }
};

QTEST_GUILESS_MAIN(TestBookBuild)
#include "tst_book_build.moc"

#include <QTest>

#include "core/wording/build_words.h"
#include "core/workbench/sheet.h"

#include "golden_build.h"

#include <functional>

using namespace lidlark;
using namespace lidlark::workbench;

namespace {

/// The golden build with something wrong.
struct Spoilt {
    Build build = golden::build();
    std::vector<Supply> supplies = golden::supplies();

    Supply &supply(const char *item)
    {
        return *std::ranges::find(supplies, ItemId{item}, &Supply::item);
    }
    PackOffer &offer(const char *item) { return supply(item).offers.front(); }
    BoxPart &firstPart() { return build.boxes.front().parts.front(); }
    void makeBoxes(std::size_t boxes)
    {
        while (build.boxes.size() < boxes)
            build.boxes.push_back({"X" + std::to_string(build.boxes.size()), "", {}, {}});
    }
};

using Spoil = std::function<void(Spoilt &)>;

BuildProblems problemsOf(const Spoil &spoil)
{
    Spoilt spoilt;
    spoil(spoilt);
    const auto answer = sheetOf(spoilt.build, spoilt.supplies);
    const auto *problems = std::get_if<BuildProblems>(&answer);
    return problems ? *problems : BuildProblems();
}

} // namespace

Q_DECLARE_METATYPE(Spoil)

/// Bad input is refused with its field, in plain words; nothing is guessed.
class TestBuildProblems : public QObject
{
    Q_OBJECT

    static void wrong(const char *field, const char *sentence, const Spoil &spoil)
    {
        QTest::newRow(sentence) << spoil << std::string(field) << std::string(sentence);
    }

    static void wrongOffers()
    {
        const char *pieces = "items.pegs.offers.0.pieces";
        const char *pence = "items.pegs.offers.0.pence";
        wrong(pieces, "Clothes pegs: a pack holds 1 to 100000 pieces.",
              [](Spoilt &spoilt) { spoilt.offer("pegs").pieces = 0; });
        wrong(pieces, "Clothes pegs from Harbour Stores: a pack holds 1 to 100000 pieces.",
              [](Spoilt &spoilt) {
                  spoilt.offer("pegs").shop = "Harbour Stores";
                  spoilt.offer("pegs").pieces = 100'001;
              });
        wrong(pence, "Clothes pegs: a pack costs 0 to 10000000 pence.",
              [](Spoilt &spoilt) { spoilt.offer("pegs").pence = -1; });
        wrong("items.eyes.offers.0.pence", "Stick-on eyes: a pack costs 0 to 10000000 pence.",
              [](Spoilt &spoilt) { spoilt.offer("eyes").pence = 10'000'001; });
        wrong(pence, "Clothes pegs: there is no price yet. Look it up and add it.",
              [](Spoilt &spoilt) { spoilt.offer("pegs").pence.reset(); });
        wrong("items.pegs.offers.0.currency",
              "Clothes pegs: its price is in another currency than the build. Change the one or "
              "the other.",
              [](Spoilt &spoilt) { spoilt.offer("pegs").currency = "EUR"; });
    }

    static void wrongItems()
    {
        wrong("items.pegs.in_stock",
              "Clothes pegs: pieces in stock are 0 or more. Count the shelf again.",
              [](Spoilt &spoilt) { spoilt.supply("pegs").inStock = -1; });
        wrong("items.pegs.offers",
              "Clothes pegs: more is needed than lies on the shelf, and no shop is named. Add a "
              "pack with its price.",
              [](Spoilt &spoilt) { spoilt.supply("pegs").offers.clear(); });
        wrong("items.pegs.offers", "Clothes pegs: at most 50 packs to choose from. Take some out.",
              [](Spoilt &spoilt) {
                  spoilt.supply("pegs").offers.resize(51, {"", 1, 1, ""});
              });
        wrong("items.pegs", "Clothes pegs: listed twice among the items. Keep one.",
              [](Spoilt &spoilt) { spoilt.supplies.push_back(spoilt.supply("pegs")); });
        wrong("items", "One of the items has no name of its own. Say which item it is.",
              [](Spoilt &spoilt) {
                  spoilt.supplies.push_back({{}, "", {}, 0, false});
              });
    }

    static void wrongBoxes()
    {
        wrong("boxes.B0.parts.card", "Box B0, Lacing card: 1 to 1000 pieces.",
              [](Spoilt &spoilt) { spoilt.firstPart().pieces = -1; });
        wrong("boxes.B0.parts.card", "Box B0, Lacing card: 1 to 1000 pieces.",
              [](Spoilt &spoilt) { spoilt.firstPart().pieces = 0; });
        wrong("boxes.B0.parts.card", "Box B0, Lacing card: 1 to 1000 pieces.",
              [](Spoilt &spoilt) { spoilt.firstPart().pieces = 1'001; });
        wrong("boxes.B0.parts.kite",
              "Box B0 holds kite, which is not among the items. Add it there first.",
              [](Spoilt &spoilt) { spoilt.firstPart().item = {"kite"}; });
        wrong(
            "boxes.B0.parts.card", "Box B0 lists Lacing card twice. Keep one line.",
            [](Spoilt &spoilt) { spoilt.build.boxes.front().parts.push_back(spoilt.firstPart()); });
        wrong("boxes.B0.code", "Two boxes have the code B0. Give one of them another.",
              [](Spoilt &spoilt) { spoilt.build.boxes[1].code = "B0"; });
        wrong("boxes.1.code", "A box has no code. Give it one that no other box has.",
              [](Spoilt &spoilt) { spoilt.build.boxes[1].code.clear(); });
    }

private slots:
    void eachIsNamedWithItsField_data()
    {
        QTest::addColumn<Spoil>("spoil");
        QTest::addColumn<std::string>("field");
        QTest::addColumn<std::string>("sentence");
        wrongOffers();
        wrongItems();
        wrongBoxes();
        wrong("spares_percent", "Spares are 0 to 100 percent.",
              [](Spoilt &spoilt) { spoilt.build.sparesPercent = 101; });
        wrong("spares_percent", "Spares are 0 to 100 percent.",
              [](Spoilt &spoilt) { spoilt.build.sparesPercent = -1; });
        wrong("currency", "A currency is three capital letters, such as GBP.",
              [](Spoilt &spoilt) { spoilt.build.currency = "pounds"; });
        wrong("boxes", "A build holds at most 10000 boxes. Make two of it.",
              [](Spoilt &spoilt) { spoilt.makeBoxes(10'001); });
        wrong("items", "A build knows at most 1000 kinds of item. Take out those it does not need.",
              [](Spoilt &spoilt) { spoilt.supplies.resize(1'001); });
    }

    void eachIsNamedWithItsField()
    {
        QFETCH(Spoil, spoil);
        QFETCH(std::string, field);
        QFETCH(std::string, sentence);
        const BuildProblems problems = problemsOf(spoil);
        QCOMPARE(problems.size(), 1U);
        QCOMPARE(problems.front().field, field);
        QCOMPARE(wording::fill(wording::buildProblemSentence(problems.front())), sentence);
    }

    void whatIsJustAllowedIsReckoned()
    {
        QVERIFY(problemsOf([](Spoilt &) {}).empty());
        QVERIFY(problemsOf([](Spoilt &spoilt) { spoilt.makeBoxes(10'000); }).empty());
        QVERIFY(problemsOf([](Spoilt &spoilt) { spoilt.build.sparesPercent = 100; }).empty());
        QVERIFY(problemsOf([](Spoilt &spoilt) { spoilt.offer("pegs").pence = 0; }).empty());
        QVERIFY(problemsOf([](Spoilt &spoilt) { spoilt.offer("pegs").currency = "GBP"; }).empty());
    }

    void allThatIsWrongIsSaidAtOnce()
    {
        const BuildProblems problems = problemsOf([](Spoilt &spoilt) {
            spoilt.offer("pegs").pieces = 0;
            spoilt.supply("eyes").inStock = -3;
            spoilt.build.sparesPercent = 400;
        });
        QCOMPARE(problems.size(), 3U);
    }

    void whatTheBuildDoesNotNeedMayHaveNoPriceYet()
    {
        const BuildProblems problems = problemsOf([](Spoilt &spoilt) {
            spoilt.supplies.push_back(
                {{"kite"}, "kite", {{"", 1, std::nullopt, ""}, {"", 1, 90, "EUR"}}, 0, false});
        });
        QVERIFY(problems.empty());
    }
};

QTEST_APPLESS_MAIN(TestBuildProblems)
#include "tst_build_problems.moc"

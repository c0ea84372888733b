#include <QTest>

#include "core/workbench/one_more_box.h"
#include "core/workbench/sheet.h"

#include "glpk_packs.h"
#include "random_build.h"

#include <rapidcheck.h>

using namespace lidlark;
using namespace lidlark::workbench;
using samples::randomBuild;
using samples::RandomBuild;

namespace {

Sheet sheetOf(const RandomBuild &random)
{
    return std::get<Sheet>(sheetOf(random.build, random.supplies));
}

} // namespace

/// What holds of every build sheet, whatever the boxes and the packs.
class TestSheetProperties : public QObject
{
    Q_OBJECT

private slots:
    /// The formulas are those of reference/job.md 2.8.
    void everyLineAddsUp()
    {
        QVERIFY(rc::check("need is covered, nothing is below zero, sums agree", [] {
            const RandomBuild random = randomBuild();
            const Sheet sheet = sheetOf(random);
            std::int64_t total = 0;
            for (std::size_t i = 0; i < sheet.lines.size(); ++i) {
                const SheetLine &line = sheet.lines[i];
                const bool usedUp = random.supplies[i].usedUp;
                const std::int64_t hundredths =
                    usedUp ? line.need.pieces * random.build.sparesPercent : 0;
                RC_ASSERT(line.need.spares * 100 >= hundredths);
                RC_ASSERT((line.need.spares - 1) * 100 < hundredths || line.need.spares == 0);
                RC_ASSERT(line.inStock + line.bought >= line.need.pieces + line.need.spares);
                RC_ASSERT(line.leftover == line.inStock + line.bought - line.need.pieces);
                RC_ASSERT(line.leftover >= 0);
                std::int64_t spend = 0;
                std::int64_t pieces = 0;
                for (std::size_t offer = 0; offer < line.packs.size(); ++offer) {
                    RC_ASSERT(line.packs[offer] >= 0);
                    spend += line.packs[offer] * *random.supplies[i].offers[offer].pence;
                    pieces += line.packs[offer] * random.supplies[i].offers[offer].pieces;
                }
                RC_ASSERT(line.spend.pence == spend);
                RC_ASSERT(line.bought == pieces);
                total += spend;
            }
            RC_ASSERT(sheet.spend.pence == total);
            RC_ASSERT(sheet.boxes.size() == random.build.boxes.size());
        }));
    }

    void anotherSolverPaysAsMuchForTheWholeBuild()
    {
        QVERIFY(rc::check("GLPK pays as much", [] {
            const RandomBuild random = randomBuild();
            const Sheet sheet = sheetOf(random);
            judge::GlpkPacks glpk;
            for (std::size_t i = 0; i < sheet.lines.size(); ++i) {
                std::vector<PackPrice> offers;
                for (const PackOffer &offer : random.supplies[i].offers)
                    offers.push_back({offer.pieces, *offer.pence});
                const SheetLine &line = sheet.lines[i];
                glpk.addItem(offers, line.need.pieces + line.need.spares - line.inStock);
            }
            const auto least = glpk.least(60'000);
            RC_ASSERT(least.has_value());
            RC_ASSERT(sheet.spend.pence == *least);
        }));
    }

    void aBoxLessNeverCostsMore()
    {
        QVERIFY(rc::check("without a box the till asks for as much or less", [] {
            RandomBuild random = randomBuild();
            RC_PRE(!random.build.boxes.empty());
            const std::int64_t before = sheetOf(random).spend.pence;
            const int gone = *rc::gen::inRange(0, static_cast<int>(random.build.boxes.size()));
            random.build.boxes.erase(random.build.boxes.begin() + gone);
            RC_ASSERT(sheetOf(random).spend.pence <= before);
        }));
    }

    void oneMoreBoxIsTheSheetWithIt()
    {
        QVERIFY(rc::check("what one more box does is what the larger sheet says", [] {
            RandomBuild random = randomBuild();
            RC_PRE(!random.build.boxes.empty());
            BuildBox box = random.build.boxes.front();
            box.code = "one more";
            const auto answer = oneMoreBox(random.build, random.supplies, box);
            const auto &more = std::get<OneMoreBox>(answer);
            const Sheet before = sheetOf(random);
            random.build.boxes.push_back(box);
            const Sheet after = sheetOf(random);
            RC_ASSERT(more.spend == after.spend);
            RC_ASSERT(more.more.pence == after.spend.pence - before.spend.pence);
            RC_ASSERT(more.inTheBox == after.boxes.back());
            std::size_t different = 0;
            for (std::size_t i = 0; i < after.lines.size(); ++i)
                different += before.lines[i].packs != after.lines[i].packs ? 1 : 0;
            RC_ASSERT(more.changed.size() == different);
        }));
    }

    /// Reckoned once more over one denominator of 128 bits, which these small packs fit into.
    void theMaterialOfABoxIsRoundedOnceAndHalfUp()
    {
        __extension__ using Wide = __int128;
        QVERIFY(rc::check("the sum is exact", [] {
            const RandomBuild random = randomBuild();
            const Sheet sheet = sheetOf(random);
            for (std::size_t b = 0; b < sheet.boxes.size(); ++b) {
                Wide numerator = 0;
                Wide denominator = 1;
                for (const BoxPart &part : random.build.boxes[b].parts) {
                    const int item = std::stoi(part.item.value.substr(5));
                    const PiecePrice &piece = sheet.lines[static_cast<std::size_t>(item)].piece;
                    numerator = numerator * piece.pieces + piece.pence * part.pieces * denominator;
                    denominator *= piece.pieces;
                }
                const Wide twice = 2 * numerator + denominator;
                RC_ASSERT(sheet.boxes[b].material.pence ==
                          static_cast<std::int64_t>(twice / (2 * denominator)));
            }
        }));
    }

    /// Pack sizes are large primes: over one denominator the sum has hundreds of digits.
    void noDenominatorIsTooLong()
    {
        std::vector<Supply> supplies;
        Build build;
        build.sparesPercent = 0;
        build.boxes = {{"one", "", {}, {}}};
        // Each piece is half a penny but for a sixty-thousandth: the sum is just below 20 pence.
        for (const int prime :
             {60'013, 60'017, 60'029, 60'037, 60'041, 60'077, 60'083, 60'089, 60'091, 60'101,
              60'103, 60'107, 60'127, 60'133, 60'139, 60'149, 60'161, 60'167, 60'169, 60'209,
              60'217, 60'223, 60'251, 60'257, 60'259, 60'271, 60'289, 60'293, 60'317, 60'331,
              60'337, 60'343, 60'353, 60'373, 60'383, 60'397, 60'413, 60'427, 60'443}) {
            const ItemId item{std::to_string(prime)};
            supplies.push_back({item, "thing", {{"shop", prime, (prime - 1) / 2, ""}}, 0, false});
            build.boxes.front().parts.push_back({item, 1, {}});
        }
        // 39 halves are 19.5, which would round up; less a little they round down.
        QCOMPARE(std::get<Sheet>(sheetOf(build, supplies)).boxes.front().material.pence, 19);
    }

    void theLargestBuildIsReckoned()
    {
        std::vector<Supply> supplies;
        BuildBox box;
        for (int i = 0; i < 25; ++i) {
            const ItemId item{std::to_string(i)};
            supplies.push_back({item, "thing", {{"", 7, 100, ""}, {"", 50 + i, 640, ""}}, i, true});
            box.parts.push_back({item, 12, {}});
        }
        Build build;
        for (std::size_t i = 0; i < mostBoxes; ++i) {
            box.code = std::to_string(i);
            build.boxes.push_back(box);
        }
        const Sheet sheet = std::get<Sheet>(sheetOf(build, supplies));
        QCOMPARE(sheet.lines[3].need, (Need{120'000, 12'000}));
        QCOMPARE(sheet.boxes.size(), mostBoxes);
    }
};

QTEST_APPLESS_MAIN(TestSheetProperties)
#include "tst_sheet_properties.moc"

#include <QTest>

#include "core/wording/build_words.h"
#include "core/workbench/design_difference.h"

#include "golden_build.h"

using namespace lidlark;
using namespace lidlark::workbench;

namespace {

Design standard()
{
    return {{"standard"}, "Standard box", golden::box("standard", "").parts};
}

BoxPart &partOf(std::vector<BoxPart> &parts, const char *item)
{
    return *std::ranges::find(parts, ItemId{item}, &BoxPart::item);
}

wording::Argument nameOf(const ItemId &item)
{
    const auto supplies = golden::supplies();
    return wording::withSmall(std::ranges::find(supplies, item, &Supply::item)->name);
}

QStringList wordsOf(const std::vector<BoxPart> &parts)
{
    QStringList words;
    for (const DesignDifference &difference : differencesFrom(standard(), parts))
        words +=
            QString::fromStdString(wording::fill(wording::differenceSentence(difference, nameOf)));
    return words;
}

} // namespace

/// What is special about a box stands in words (reference/job.md T3).
class TestDesignDifference : public QObject
{
    Q_OBJECT

private slots:
    void aBoxAsDesignedHasNoneInWhateverOrder()
    {
        std::vector<BoxPart> parts = standard().parts;
        QVERIFY(wordsOf(parts).isEmpty());
        std::ranges::reverse(parts);
        QVERIFY(wordsOf(parts).isEmpty());
    }

    void theSwapsOfALatexAvoidingHome()
    {
        std::vector<BoxPart> parts = golden::box("latex_avoiding", "").parts;
        partOf(parts, "loops").insteadOf = {"bands"};
        partOf(parts, "pouch").insteadOf = {"ball"};
        partOf(parts, "scarf").insteadOf = {"balloon"};
        QCOMPARE(wordsOf(parts),
                 QStringList({"Silicone loops (latex-free) instead of rubber bands.",
                              "Slit felt pouch (latex-free) instead of slit ball.",
                              "Light scarf (1) instead of balloons (3)."}));
    }

    void wrongHandScissorsAreASwap()
    {
        const BuildBox box = golden::leftHanded(golden::box("standard", ""));
        QCOMPARE(wordsOf(box.parts),
                 QStringList("Child scissors, left instead of child scissors, right."));
    }

    void leftOutOtherCountAndAdded()
    {
        std::vector<BoxPart> parts = standard().parts;
        std::erase_if(parts, [](const BoxPart &part) { return part.item == ItemId{"pompoms"}; });
        partOf(parts, "pegs").pieces = 4;
        parts.push_back({{"lids"}, 4, {}});
        QCOMPARE(wordsOf(parts),
                 QStringList({"Clothes pegs: 4 instead of 6.", "Left out: pom-poms 25 mm.",
                              "Added: large lids 60 mm (4)."}));
    }

    void whatStandsInForAnItemThatIsStillThereIsAdded()
    {
        std::vector<BoxPart> parts = standard().parts;
        partOf(parts, "bands").pieces = 3;
        parts.push_back({{"loops"}, 3, {"bands"}});
        QCOMPARE(wordsOf(parts), QStringList({"Rubber bands: 3 instead of 6.",
                                              "Added: silicone loops (latex-free) (3)."}));
    }

    void twoThingsMayStandInForOne()
    {
        std::vector<BoxPart> parts = standard().parts;
        std::erase_if(parts, [](const BoxPart &part) { return part.item == ItemId{"balloon"}; });
        parts.push_back({{"scarf"}, 1, {"balloon"}});
        parts.push_back({{"lids"}, 2, {"balloon"}});
        QCOMPARE(wordsOf(parts), QStringList({"Light scarf (1) instead of balloons (3).",
                                              "Large lids 60 mm (2) instead of balloons (3)."}));
    }

    /// Nothing is ever lost between a design and a box: each item is as designed or spoken of.
    void everyItemThatDiffersIsSpokenOf()
    {
        const QStringList words = wordsOf(golden::box("mouthing", "").parts);
        QCOMPARE(words.filter("Left out").size(), 9);
        QCOMPARE(words.filter("Added").size(), 3);
    }
};

QTEST_APPLESS_MAIN(TestDesignDifference)
#include "tst_design_difference.moc"

#include <QTest>

#include "catalogue_samples.h"

using namespace samples;

// What the loader keeps and what it leaves out when files need each other: activities.md 1.3.

class TestCatalogueLoad : public QObject
{
    Q_OBJECT

private slots:
    void aSoundCatalogueLoadsWhole();
    void everyMistakeOfAFileIsNamed();
    void aBrokenFileTakesNoOtherDown();
    void whatNamesABrokenItemIsLeftOutWithItsOwnLine();
    void aChainOfSwapsFallsWhole();
    void twoFilesCannotHoldOneId();
    void twoEntriesCannotHaveOneNumber();
};

void TestCatalogueLoad::aSoundCatalogueLoadsWhole()
{
    const Catalogue catalogue = loadActivity(soundActivity);
    QVERIFY2(catalogue.problems().empty(), qPrintable(shown(catalogue.problems())));
    QCOMPARE(catalogue.items().size(), 5U);
    const Activity *activity = catalogue.activity({"pebble-post"});
    QVERIFY(activity);
    QCOMPARE(activity->invite, std::string("Will the pebble fit?"));
    QCOMPARE(activity->minutes, (Minutes{1, 5, 1}));
    QCOMPARE(activity->steps.size(), 2U);
    QVERIFY(!activity->steps[0].picture);
    QCOMPARE(activity->steps[1].picture->drawing, std::string("scene-pebble-post-2"));
    QCOMPARE(activity->items[0].countBack, 6);
    QCOMPARE(activity->items[1].role, Role::Nice);
    QCOMPARE(activity->family(), Skill::Pin);
    QCOMPARE(activity->cautions, TagSet{Tag::Small});
    QCOMPARE(activity->waysIn.oneHand, std::string("The pot stands on the towel."));
    QCOMPARE(activity->swaps[0].with, ItemId{"blocks"});
    QCOMPARE(catalogue.item({"beads"})->swap->with, ItemId{"blocks"});
    QVERIFY(!catalogue.item({"nothing"}));
    QVERIFY(!catalogue.activity({"nothing"}));
}

void TestCatalogueLoad::everyMistakeOfAFileIsNamed()
{
    std::string text = replaced(soundActivity, "mess: 0", "mess: 9");
    text = replaced(text, "space: table", "space: moon");
    text = replaced(text, "claim: customary\n", "");
    const Catalogue catalogue = loadActivity(text);
    QCOMPARE(catalogue.problems().size(), 3U);
    QCOMPARE(catalogue.problems()[0].text(),
             std::string("activities/pebble-post.yaml:1: claim: is missing"));
    QCOMPARE(catalogue.problems()[1].text(),
             std::string("activities/pebble-post.yaml:23: mess: must be 0 to 2"));
    QCOMPARE(catalogue.problems()[2].text(),
             std::string("activities/pebble-post.yaml:24: space: \"moon\" is not one of: lap, "
                         "table, mat, room"));
}

void TestCatalogueLoad::aBrokenFileTakesNoOtherDown()
{
    std::vector<SourceFile> files = items();
    files.push_back(itemFile("cone", "id: cone\n"));
    const std::vector<SourceFile> activities{activityFile(soundActivity)};
    const Catalogue catalogue = load(files, activities);
    QCOMPARE(catalogue.items().size(), items().size());
    QCOMPARE(catalogue.activities().size(), 1U);
    QVERIFY(std::all_of(catalogue.problems().begin(), catalogue.problems().end(),
                        [](const Problem &p) { return p.file == "items/cone.yaml"; }));
}

void TestCatalogueLoad::whatNamesABrokenItemIsLeftOutWithItsOwnLine()
{
    // The blocks break; the beads' swap needs them, and the activity needs the beads.
    std::vector<SourceFile> files = items();
    files[1].text = replaced(files[1].text, "version: 1", "version: one");
    const std::vector<SourceFile> activities{activityFile(soundActivity)};
    const Catalogue catalogue = load(files, activities);
    QCOMPARE(catalogue.items().size(), 3U);
    QVERIFY(catalogue.activities().empty());
    QCOMPARE(shown(catalogue.problems()),
             QString("items/blocks.yaml:2: version: must be a whole number\n"
                     "items/beads.yaml:17: swap.with: there is no sound item \"blocks\"\n"
                     "activities/pebble-post.yaml:14: items[1].item: there is no sound item "
                     "\"beads\"\n"
                     "activities/pebble-post.yaml:44: swaps[1].with: there is no sound item "
                     "\"blocks\"\n"));
}

void TestCatalogueLoad::aChainOfSwapsFallsWhole()
{
    const std::vector<SourceFile> files{
        itemFile("a", item("a", "box", "", "swap: {with: b, note: x}\n")),
        itemFile("b", item("b", "box", "", "swap: {with: c, note: x}\n")),
        itemFile("c", "id: c\n")};
    const Catalogue catalogue = load(files, {});
    QVERIFY2(catalogue.items().empty(), "an item stays whose swap does not");
}

void TestCatalogueLoad::twoFilesCannotHoldOneId()
{
    std::vector<SourceFile> files = items();
    files.push_back({"spare/blocks.yaml", item("blocks", "box", "SMALL")});
    const Catalogue catalogue = load(files, {});
    QCOMPARE(shown(catalogue.problems()),
             QString("spare/blocks.yaml:1: id: another file has this id already\n"));
    QVERIFY(catalogue.item({"blocks"})->tags.empty());
}

void TestCatalogueLoad::twoEntriesCannotHaveOneNumber()
{
    const std::vector<SourceFile> activities{
        activityFile(soundActivity),
        {"activities/pebble-pot.yaml",
         replaced(soundActivity, "id: pebble-post", "id: pebble-pot")}};
    const Catalogue catalogue = load(items(), activities);
    QCOMPARE(catalogue.activities().size(), 1U);
    QVERIFY(catalogue.activity({"pebble-post"}));
    QCOMPARE(
        shown(catalogue.problems()),
        QString("activities/pebble-pot.yaml:2: entry: is the number of pebble-post already\n"));
}

QTEST_APPLESS_MAIN(TestCatalogueLoad)
#include "tst_catalogue_load.moc"

#include <QTest>

#include "core/catalogue/tag_floor.h"

#include "gate_samples.h"

using namespace samples;

// What an admitted activity says of its things: which are used, and how they come home.
// Expectations from activities.md 1.1 (items), 1.3 and 1.4.

class TestAdmitItems : public QObject
{
    Q_OBJECT

private slots:
    void aNiceExtraIsUsedWhereTheHomeHasIt();
    void aNiceThingMayTakeTheLastPiece();
    void aThingComesHomeAsTheEntrySays();
    void aSwapThatIsUsedUpNeverComesHome();
    void crayonsAreWatchedWithoutTheirTag();
    void onlyTheTableHasFloors();
};

void TestAdmitItems::aNiceExtraIsUsedWhereTheHomeHasIt()
{
    Activity activity = activityWith({});
    use(activity, "paper", 1, Role::Nice);
    GateWorld world(items());
    QCOMPARE(form(world.judge(activity)).items(), activity.items);
    world.home.missingExtras = {{"paper"}};
    QVERIFY(form(world.judge(activity)).items().empty());
}

void TestAdmitItems::aNiceThingMayTakeTheLastPiece()
{
    Activity activity = activityWith({});
    use(activity, "chunky", 3, Role::Nice);
    GateWorld world(items());
    world.box.items[{"chunky"}].low = 3;
    QCOMPARE(form(world.judge(activity)).items(), activity.items);
    world.box.items[{"chunky"}].low = 2;
    QVERIFY(form(world.judge(activity)).items().empty());
}

/// Paper comes back in general; this entry cuts it up.
void TestAdmitItems::aThingComesHomeAsTheEntrySays()
{
    Activity activity = activityWith({});
    use(activity, "chunky", 2);
    activity.items.front().fate = Fate::UsedUp;
    activity.items.front().countBack = 0;
    const GateWorld world(items());
    QCOMPARE(form(world.judge(activity)).items(), activity.items);
}

void TestAdmitItems::aSwapThatIsUsedUpNeverComesHome()
{
    Activity activity = activityWith({});
    use(activity, "scarf", 2);
    allowSwap(activity, "scarf", "balloon");
    GateWorld world(items());
    world.box.items[{"scarf"}].low = 0;
    const ItemUse used{{"balloon"}, 2, Source::Box, Role::Must, Fate::UsedUp, 0};
    QCOMPARE(form(world.judge(activity)).items(), std::vector<ItemUse>{used});
}

/// safety.md SV-02 names crayons; those of one maker may be too large to be small parts.
void TestAdmitItems::crayonsAreWatchedWithoutTheirTag()
{
    for (const char *crayons : {"crayons", "chunky"}) {
        GateWorld world({kind(crayons, Source::Box, {})});
        Activity activity = activityWith({});
        activity.items.push_back({.item = {crayons}, .countBack = 1});
        world.isMonthsOld(71);
        QCOMPARE(form(world.judge(activity)).supervision(), Supervision::Reach);
        world.isMonthsOld(72);
        QCOMPARE(form(world.judge(activity)).supervision(), Supervision::Near);
    }
}

void TestAdmitItems::onlyTheTableHasFloors()
{
    // activities.md 1.4, column "Rule": these name no age.
    for (const Tag tag : {Tag::Latex, Tag::Wheat, Tag::Paper, Tag::Pet, Tag::Hyg, Tag::Scent,
                          Tag::Water, Tag::Breath, Tag::Edge, Tag::Trace, Tag::Pinch, Tag::Face,
                          Tag::Touch, Tag::Spin, Tag::Trip, Tag::Lift, Tag::Noise})
        QCOMPARE(floorMonthsOf(tag), 0);
}

QTEST_APPLESS_MAIN(TestAdmitItems)
#include "tst_admit_items.moc"

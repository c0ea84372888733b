#include <QTest>

#include "gate_samples.h"

using namespace samples;

// Which way of playing is taken when there are several, and what each way carries.
// Expectations from activities.md 1.3 (swaps), 2.1.4 and 2.1.7.

class TestAdmitWays : public QObject
{
    Q_OBJECT

private slots:
    void theLastPieceIsStillThere();
    void fewerSwapsComeFirst();
    void sixSwapsAreTriedAndNoMore();
    void theBoxSuggestsOnlyWhatIsThere();
    void aSwapThatIsSmallWaitsForTheFloor();
    void whatTheBodyDoesStays_data();
    void whatTheBodyDoesStays();
};

namespace {

using Swaps = std::map<ItemId, ItemId>;

/// A home with a baby who is away, in which small parts may be had, and a piece not yet found.
GateWorld worldWithAnOpenNote(std::vector<ItemKind> kinds)
{
    GateWorld world(std::move(kinds));
    world.addChild("Jamie", 9, Answer::Unanswered);
    world.room.present.emplace();
    world.home.highStorage = true;
    world.home.permissions.smallWhenAway = "asleep or out";
    world.box.floorNoteOpen = true;
    return world;
}

} // namespace

/// One piece left, one needed: the thing itself is used, not its swap.
void TestAdmitWays::theLastPieceIsStillThere()
{
    Activity activity = activityWith({});
    use(activity, "eyes", 1);
    allowSwap(activity, "eyes", "lids");
    GateWorld world(items());
    world.box.items[{"eyes"}].low = 1;
    QVERIFY(form(world.judge(activity)).swaps().empty());
}

/// "a" is gone. Its first swap takes the only "b", so that "b" and then "c" need swaps too: three.
/// Its second takes the only "d", which alone needs one: two.
void TestAdmitWays::fewerSwapsComeFirst()
{
    std::vector<ItemKind> kinds;
    for (const char *id : {"a", "b", "c", "d", "v", "w"})
        kinds.push_back(kind(id, Source::Box, {}));
    GateWorld world(kinds);
    for (auto &[item, stock] : world.box.items)
        stock.low = 1;
    world.box.items[{"a"}].low = 0;
    Activity activity = activityWith({});
    for (const char *id : {"a", "b", "c", "d"})
        use(activity, id, 1);
    allowSwap(activity, "a", "b");
    allowSwap(activity, "b", "c");
    allowSwap(activity, "c", "v");
    QCOMPARE(form(world.judge(activity)).swaps(),
             (Swaps{{{"a"}, {"b"}}, {{"b"}, {"c"}}, {{"c"}, {"v"}}}));
    allowSwap(activity, "a", "d");
    allowSwap(activity, "d", "w");
    QCOMPARE(form(world.judge(activity)).swaps(), (Swaps{{{"a"}, {"d"}}, {{"d"}, {"w"}}}));
}

/// activities.md 1.1: an entry lists at most six swaps; core/catalogue refuses more, and the gate
/// does not rely on it.
void TestAdmitWays::sixSwapsAreTriedAndNoMore()
{
    GateWorld world(items());
    Activity activity = activityWith({});
    use(activity, "eyes", 1);
    for (const char *gone : {"eyes", "ball", "pegs", "onepegs", "loops", "scarf"})
        world.box.items.erase({gone});
    for (const char *gone : {"ball", "pegs", "onepegs", "loops", "scarf"})
        allowSwap(activity, "eyes", gone);
    Activity withSix = activity;
    allowSwap(withSix, "eyes", "lids");
    QCOMPARE(form(world.judge(withSix)).swaps(), (Swaps{{{"eyes"}, {"lids"}}}));
    Activity withSeven = activity;
    allowSwap(withSeven, "eyes", "towel");
    world.home.missingExtras = {{"towel"}};
    allowSwap(withSeven, "eyes", "lids");
    QVERIFY(!isAdmitted(world.judge(withSeven)));
}

/// Neither the eyes nor the crayons are in the box: nothing small is at hand, so an open note does
/// not stand in the way of the lids.
void TestAdmitWays::theBoxSuggestsOnlyWhatIsThere()
{
    GateWorld world = worldWithAnOpenNote(items());
    Activity activity = activityWith({});
    use(activity, "eyes", 1);
    allowSwap(activity, "eyes", "crayons");
    allowSwap(activity, "eyes", "lids");
    world.box.items.erase({"eyes"});
    QVERIFY(!isAdmitted(world.judge(activity)));
    world.box.items.erase({"crayons"});
    QCOMPARE(form(world.judge(activity)).swaps(), (Swaps{{{"eyes"}, {"lids"}}}));
}

/// The box suggests the scented thing, which this child avoids; its swap is small. The note holds
/// for whoever is at home and under three, mouthing or not.
void TestAdmitWays::aSwapThatIsSmallWaitsForTheFloor()
{
    std::vector<ItemKind> kinds{kind("bead", Source::Box, {Tag::Small}),
                                kind("rose", Source::Box, {Tag::Scent})};
    GateWorld world = worldWithAnOpenNote(kinds);
    world.home.flags.avoidScent = true;
    world.home.people.clear();
    world.addChild("Jamie", 30, Answer::No);
    Activity activity = activityWith({Tag::Scent});
    activity.items.push_back({.item = {"rose"}, .countBack = 1});
    allowSwap(activity, "rose", "bead");
    QVERIFY(!isAdmitted(world.judge(activity)));
    world.box.floorNoteOpen = false;
    QCOMPARE(form(world.judge(activity)).swaps(), (Swaps{{{"rose"}, {"bead"}}}));
}

void TestAdmitWays::whatTheBodyDoesStays_data()
{
    QTest::addColumn<QString>("tag");
    // activities.md 1.4: the tags whose column "What it is" names a movement or a part of the body.
    for (const char *tag : {"BREATH", "FACE", "TOUCH", "SPIN", "TRIP", "LIFT", "NOISE"})
        QTest::newRow(tag) << tag;
}

/// Whether or not the entry itself lists the tag of the thing.
void TestAdmitWays::whatTheBodyDoesStays()
{
    QFETCH(QString, tag);
    const TagSet tags{tagNamed(tag)};
    GateWorld world(
        {kind("other", Source::Box, {}), kind("thing", Source::Box, tags | TagSet{Tag::Edge})});
    world.box.items[{"thing"}].low = 0;
    for (const TagSet written : {TagSet{}, tags | TagSet{Tag::Edge}}) {
        Activity activity = activityWith(written);
        activity.items.push_back({.item = {"thing"}, .countBack = 1});
        allowSwap(activity, "thing", "other");
        QVERIFY(form(world.judge(activity)).cautions() == tags);
    }
}

QTEST_APPLESS_MAIN(TestAdmitWays)
#include "tst_admit_ways.moc"

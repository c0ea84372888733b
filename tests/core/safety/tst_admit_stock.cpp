#include <QTest>

#include "gate_samples.h"

using namespace samples;

// Expectations are copied by hand from activities.md 2.1.6; each
// row names its line there. The reference gives its own sources as [E...] in its section 7.

class TestAdmitStock : public QObject
{
    Q_OBJECT

private slots:
    void whatTheBoxMustHold_data();
    void whatTheBoxMustHold();
    void aNiceItemNeverRefuses();
};

void TestAdmitStock::whatTheBoxMustHold_data()
{
    QTest::addColumn<int>("low"); // -1: not on the lid list.
    QTest::addColumn<bool>("pastDate");
    QTest::addColumn<bool>("here");
    QTest::addColumn<int>("code"); // -1: admitted.
    const auto row = [](const char *name, int low, bool pastDate, bool here, int code) {
        QTest::newRow(name) << low << pastDate << here << code;
    };
    // activities.md 2.1.6; four pieces are needed.
    row("as many as needed", 4, false, true, -1);
    row("one too few", 3, false, true, static_cast<int>(ReasonCode::ItemUsedUp));
    row("none left", 0, false, true, static_cast<int>(ReasonCode::ItemUsedUp));
    row("not in this box", -1, false, true, static_cast<int>(ReasonCode::ItemMissing));
    row("dried out", 4, true, true, static_cast<int>(ReasonCode::ItemPastDate));
    row("in the other home", 4, false, false, static_cast<int>(ReasonCode::BoxElsewhere));
}

void TestAdmitStock::whatTheBoxMustHold()
{
    QFETCH(int, low);
    QFETCH(bool, pastDate);
    QFETCH(bool, here);
    QFETCH(int, code);
    Activity activity = activityWith({});
    use(activity, "eyes", 4);
    GateWorld world(items());
    world.box.here = here;
    world.box.place = "at Mum's";
    world.box.items[{"eyes"}] = {std::max(low, 0), pastDate};
    if (low < 0)
        world.box.items.erase({"eyes"});
    const Admission admission = world.judge(activity);
    QCOMPARE(isAdmitted(admission), code < 0);
    if (code >= 0)
        QVERIFY(refusedFor(admission, static_cast<ReasonCode>(code)));

    // safety.md HY-01: set aside and washed before it is used again.
    if (code < 0) {
        world.box.items[{"eyes"}].toWash = true;
        QVERIFY(refusedWith(world.judge(activity),
                            {.code = ReasonCode::ItemToWash, .item = ItemId{"eyes"}}));
    }

    // A household extra: there unless the home has said it lacks it.
    Activity household = activityWith({});
    use(household, "paper", 1);
    QVERIFY(isAdmitted(world.judge(household)));
    world.home.missingExtras = {{"paper"}};
    QVERIFY(refusedWith(world.judge(household),
                        {.code = ReasonCode::HomeLacksExtra, .item = ItemId{"paper"}}));
}

void TestAdmitStock::aNiceItemNeverRefuses()
{
    Activity activity = activityWith({});
    use(activity, "paper", 1);
    use(activity, "eyes", 3, Role::Nice);
    GateWorld world(items());
    QCOMPARE(form(world.judge(activity)).items().size(), 2U);
    world.box.items.erase({"eyes"});
    QVERIFY(isAdmitted(world.judge(activity)));
    QCOMPARE(form(world.judge(activity)).items().size(), 1U);
    world.box.here = false;
    world.box.items[{"eyes"}] = {3, false};
    QCOMPARE(form(world.judge(activity)).items().size(), 1U);
    world.box.here = true;
    world.box.items[{"eyes"}] = {3, true};
    QCOMPARE(form(world.judge(activity)).items().size(), 1U);
    world.box.items[{"eyes"}] = {3, false, true};
    QCOMPARE(form(world.judge(activity)).items().size(), 1U);
    world.box.items.erase({"eyes"});
    // It cannot be told from here that nobody takes the eyes all the same.
    QVERIFY(form(world.judge(activity)).cautions().has(Tag::Small));
    // What must be there comes first: four chunky crayons in place of short ones leave two of six.
    Activity drawing = activityWith({});
    use(drawing, "crayons", 4);
    use(drawing, "chunky", 3, Role::Nice);
    allowSwap(drawing, "crayons", "chunky");
    world.room.visitorUnderThree = true;
    world.box.items[{"chunky"}] = {6, false};
    QCOMPARE(form(world.judge(drawing)).items().size(), 1U);
    world.box.items[{"chunky"}] = {7, false};
    QCOMPARE(form(world.judge(drawing)).items().size(), 2U);
}

QTEST_APPLESS_MAIN(TestAdmitStock)
#include "tst_admit_stock.moc"

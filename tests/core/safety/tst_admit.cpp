#include <QTest>

#include "gate_samples.h"

using namespace samples;

// Expectations are copied by hand from activities.md 2.1.2 and 2.1.8; each
// row names its line there. The reference gives its own sources as [E...] in its section 7.

class TestAdmit : public QObject
{
    Q_OBJECT

private slots:
    void onlyPublishedEntriesAreOffered_data();
    void onlyPublishedEntriesAreOffered();
    void everyReasonIsCollected();
    void theWholeCatalogueIsJudgedInItsOrder();
};

void TestAdmit::onlyPublishedEntriesAreOffered_data()
{
    QTest::addColumn<QString>("status");
    QTest::addColumn<bool>("reviewedOnly");
    QTest::addColumn<bool>("admitted");
    // activities.md 2.1.2.
    QTest::newRow("draft") << "draft" << false << false;
    QTest::newRow("withdrawn") << "withdrawn" << false << false;
    QTest::newRow("awaiting review") << "awaiting-review" << false << true;
    QTest::newRow("awaiting review, reviewed only") << "awaiting-review" << true << false;
    QTest::newRow("reviewed, reviewed only") << "reviewed" << true << true;
    QTest::newRow("draft, reviewed only") << "draft" << true << false;
}

void TestAdmit::onlyPublishedEntriesAreOffered()
{
    QFETCH(QString, status);
    QFETCH(bool, reviewedOnly);
    Activity activity = activityWith({});
    activity.status = *statusNames.parse(status.toStdString());
    GateWorld world(items());
    world.home.reviewedOnly = reviewedOnly;
    QTEST(isAdmitted(world.judge(activity)), "admitted");
}

void TestAdmit::everyReasonIsCollected()
{
    // activities.md 2.1.8: "Everything hidden has a reason an adult can read."
    Activity activity = activityWith({Tag::Trip, Tag::Noise});
    activity.ageFloorMonths = 60;
    activity.supervision = Supervision::Beside;
    use(activity, "bands", 6);
    use(activity, "eyes", 6);
    GateWorld world(items());
    world.isMonthsOld(50);
    world.addChild("Mirren", 25, Answer::Unanswered);
    world.home.avoidances.latex = Answer::Yes;
    world.room.adultCanBe = Supervision::Near;
    world.room.quietNow = true;
    world.box.items[{"eyes"}] = {5, false};
    const Refusal expected{
        {.code = ReasonCode::BelowFloor, .number = 60},
        {.code = ReasonCode::BelowTagFloor, .tag = Tag::Elastic, .number = 60},
        {.code = ReasonCode::UnderThreeInRoom, .tag = Tag::Small, .name = "Mirren"},
        {.code = ReasonCode::UnderThreeInRoom, .tag = Tag::Elastic, .name = "Mirren"},
        {.code = ReasonCode::MoutherInRoom, .tag = Tag::Small, .name = "Mirren"},
        {.code = ReasonCode::MoutherInRoom, .tag = Tag::Elastic, .name = "Mirren"},
        {.code = ReasonCode::SmallInHome, .tag = Tag::Small},
        {.code = ReasonCode::NoHighPlace, .tag = Tag::Small},
        {.code = ReasonCode::LatexInHome, .item = ItemId{"bands"}},
        {.code = ReasonCode::QuietNow, .tag = Tag::Noise},
        {.code = ReasonCode::NeedsCloserAdult, .supervision = Supervision::Beside},
        {.code = ReasonCode::ItemUsedUp, .item = ItemId{"eyes"}, .number = 6}};
    QVERIFY(std::get<Refusal>(world.judge(activity)) == expected);
}

void TestAdmit::theWholeCatalogueIsJudgedInItsOrder()
{
    Activity first = activityWith({});
    first.id = {"a-safe"};
    Activity second = activityWith({Tag::Small});
    second.id = {"b-small"};
    Activity third = activityWith({});
    third.id = {"c-safe"};
    GateWorld world(items());
    world.room.visitorMouther = true;
    const Catalogue catalogue(items(), {first, second, third}, {});
    const Gated gated =
        admitAll({world.child, &world.home, world.room, world.box, catalogue, world.today});
    QCOMPARE(gated.admitted.size(), 2U);
    QCOMPARE(gated.admitted[0].activity().id, first.id);
    QCOMPARE(gated.admitted[1].activity().id, third.id);
    QCOMPARE(gated.heldBack.size(), 1U);
    QCOMPARE(gated.heldBack[0].activity->id, second.id);
    QVERIFY(!gated.heldBack[0].reasons.empty());
}

QTEST_APPLESS_MAIN(TestAdmit)
#include "tst_admit.moc"

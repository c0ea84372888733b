#include <QTest>

#include "gate_samples.h"
#include "tests/core/tag_floors.h"

using namespace samples;

// Expectations are copied by hand from activities.md 1.4 (floors), 2.1.1 and 2.1.3; each
// row names its line there. The reference gives its own sources as [E...] in its section 7.

class TestAdmitAge : public QObject
{
    Q_OBJECT

private slots:
    void aTagHasItsFloor_data();
    void aTagHasItsFloor();
    void anEntryHasItsFloor();
    void notKnowingRefuses_data();
    void notKnowingRefuses();
};

void TestAdmitAge::aTagHasItsFloor_data()
{
    addTagFloorRows();
}

void TestAdmitAge::aTagHasItsFloor()
{
    QFETCH(QString, tag);
    QFETCH(int, floor);
    const Activity activity = activityWith({tagNamed(tag)});
    GateWorld world(items());
    world.addChild("child", floor, Answer::No);
    world.isMonthsOld(floor);
    QVERIFY(isAdmitted(world.judge(activity)));
    world.isMonthsOld(floor - 1);
    QVERIFY(
        refusedWith(world.judge(activity),
                    {.code = ReasonCode::BelowTagFloor, .tag = tagNamed(tag), .number = floor}));
    // The sheet may know better than the child's own record: the youngest counts.
    world.isMonthsOld(floor);
    world.home.people.front().age = child::ageFromMonths(floor - 1, world.today);
    QVERIFY(!isAdmitted(world.judge(activity)));
}

void TestAdmitAge::anEntryHasItsFloor()
{
    // activities.md 2.1.3, "Age below floor: hide".
    Activity activity = activityWith({});
    activity.ageFloorMonths = 72;
    GateWorld world(items());
    world.isMonthsOld(72);
    QVERIFY(isAdmitted(world.judge(activity)));
    world.isMonthsOld(71);
    QVERIFY(refusedWith(world.judge(activity), {.code = ReasonCode::BelowFloor, .number = 72}));
    world.isMonthsOld(-1);
    QVERIFY(!isAdmitted(world.judge(activity)));
}

void TestAdmitAge::notKnowingRefuses_data()
{
    QTest::addColumn<QString>("unknown");
    QTest::addColumn<int>("floor");
    QTest::addColumn<QString>("tag");
    QTest::addColumn<bool>("admitted");
    // activities.md 2.1.1: "Unknown age or unanswered allergy question: offer only entries with
    // floor 18, no hard tag, no TRACE, no WATER and no TOUCH."
    for (const char *unknown : {"age", "latex", "wheat", "coeliac", "home"}) {
        const auto row = [unknown](const char *what, int floor, const char *tag, bool admitted) {
            QTest::newRow(qPrintable(QString("%1 unknown, %2").arg(unknown, what)))
                << unknown << floor << tag << admitted;
        };
        row("floor 18, no tag", 18, "", true);
        row("floor 19", 19, "", false);
        for (const char *notice : {"TRIP", "LIFT", "NOISE", "FACE", "PINCH", "EDGE", "PAPER"})
            row(notice, 18, notice, true);
        for (const char *barred :
             {"SMALL", "BALLOON", "LATEX", "ELASTIC", "BAND", "CORD", "SHARP", "COIN", "FOAM",
              "FOIL", "STRAW", "DOUGH", "WHEAT", "STICKER", "TRACE", "WATER", "TOUCH"})
            row(barred, 18, barred, false);
    }
}

void TestAdmitAge::notKnowingRefuses()
{
    QFETCH(QString, unknown);
    QFETCH(int, floor);
    QFETCH(QString, tag);
    GateWorld world(items());
    world.room.present.emplace();
    world.room.besideSaid = true;
    if (unknown == "age")
        world.child.age = std::nullopt;
    if (unknown == "latex")
        world.home.avoidances.latex = Answer::Unanswered;
    if (unknown == "wheat")
        world.home.avoidances.wheat = Answer::Unanswered;
    if (unknown == "coeliac")
        world.home.avoidances.coeliac = Answer::Unanswered;
    world.hasHome = unknown != "home";
    Activity activity = activityWith(tag.isEmpty() ? TagSet{} : TagSet{tagNamed(tag)});
    activity.ageFloorMonths = floor;
    const Admission admission = world.judge(activity);
    QTEST(isAdmitted(admission), "admitted");
    if (!isAdmitted(admission))
        QVERIFY(refusedFor(admission, unknown == "age" ? ReasonCode::AgeUnknown
                                                       : ReasonCode::AllergyUnanswered));
}

QTEST_APPLESS_MAIN(TestAdmitAge)
#include "tst_admit_age.moc"

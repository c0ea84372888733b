#include <QTest>

#include "gate_samples.h"

using namespace samples;

// Expectations are copied by hand from safety.md SV-01, SV-02, SP-01 and activities.md 2.1.5; each
// row names its line there. The reference gives its own sources as [E...] in its section 7.

class TestAdmitSupervision : public QObject
{
    Q_OBJECT

private slots:
    void howCloseAnAdultMustBe_data();
    void howCloseAnAdultMustBe();
    void aLooserAdultIsRefused();
};

void TestAdmitSupervision::howCloseAnAdultMustBe_data()
{
    QTest::addColumn<int>("months");
    QTest::addColumn<QString>("tags");
    QTest::addColumn<QString>("item");
    QTest::addColumn<QString>("nearby"); // A mouther in the room, or a small one who is away.
    QTest::addColumn<QString>("needed");
    const auto row = [](const char *name, int months, const char *tags, const char *item,
                        const char *nearby, const char *needed) {
        QTest::newRow(name) << months << tags << item << nearby << needed;
    };
    // safety.md SV-01: "child under 36 months with anything".
    row("35 months, nothing", 35, "", "", "", "beside");
    row("36 months, nothing", 36, "", "", "", "near");
    // SV-01: "any age with balloon, band, cord, coin, foam, scissors under 6 years".
    for (const char *tag : {"BALLOON", "BAND", "ELASTIC", "CORD", "COIN", "FOAM"})
        row(tag, 120, tag, "", "", "beside");
    row("scissors, 71 months", 71, "SHARP", "", "", "beside");
    // activities.md 1.4, SHARP "floor 36, seated, beside", WATER "beside": stricter than SV-01.
    row("scissors, ten years", 120, "SHARP", "", "", "beside");
    row("water, ten years", 120, "WATER", "", "", "beside");
    // SV-02: "3 to under 6 years with small parts, crayons, dough, tweezers, pegs".
    row("small parts, 71 months", 71, "SMALL", "", "", "reach");
    row("small parts, 72 months", 72, "SMALL", "", "", "near");
    row("dough, 36 months", 36, "DOUGH", "", "", "reach");
    row("pegs, 48 months", 48, "PINCH", "", "", "reach");
    row("chunky crayons, 48 months", 48, "", "chunky", "", "reach");
    row("chunky crayons, 72 months", 72, "", "chunky", "", "near");
    row("paper, 48 months", 48, "PAPER", "", "", "near");
    // activities.md 1.4, PAPER: "with a mouther present: supervision becomes beside".
    row("paper, a mouther here", 120, "PAPER", "", "mouther", "beside");
    row("trip, a mouther here", 120, "TRIP", "", "mouther", "near");
    // SP-01: the under-three of the home is asleep or out: adult beside.
    row("small parts, a small one away", 120, "SMALL", "", "away", "beside");
    row("small parts, a mouther of five away", 120, "SMALL", "", "mouther away", "beside");
    row("coins, a small one away", 120, "COIN", "", "away", "beside");
    row("dough, a small one away", 120, "DOUGH", "", "away", "near");
}

void TestAdmitSupervision::howCloseAnAdultMustBe()
{
    QFETCH(int, months);
    QFETCH(QString, tags);
    QFETCH(QString, item);
    QFETCH(QString, nearby);
    QFETCH(QString, needed);
    GateWorld world(items());
    world.isMonthsOld(months);
    world.room.present.emplace();
    if (nearby == "mouther") {
        world.addChild("Tam", 60, Answer::Yes);
        world.room.present->push_back({"Tam"});
    }
    if (nearby == "mouther away")
        world.addChild("Tam", 60, Answer::Yes);
    if (nearby == "away")
        world.addChild("Mirren", 25, Answer::Unanswered);
    world.mayHoldSmallParts();
    Activity activity = activityWith(tags.isEmpty() ? TagSet{} : TagSet{tagNamed(tags)});
    if (!item.isEmpty())
        use(activity, item.toStdString(), 1);
    const Supervision expected = *supervisionNames.parse(needed.toStdString());
    QVERIFY(isAdmitted(world.judge(activity)));
    QCOMPARE(form(world.judge(activity)).supervision(), expected);
    // "The safety gate raises it, never lowers it."
    activity.supervision = Supervision::Beside;
    QCOMPARE(form(world.judge(activity)).supervision(), Supervision::Beside);
}

void TestAdmitSupervision::aLooserAdultIsRefused()
{
    // activities.md 2.1.5.
    GateWorld world(items());
    Activity activity = activityWith({});
    for (const Supervision needed : {Supervision::Near, Supervision::Reach, Supervision::Beside}) {
        activity.supervision = needed;
        for (const Supervision offered :
             {Supervision::Near, Supervision::Reach, Supervision::Beside}) {
            world.room.adultCanBe = offered;
            const Admission admission = world.judge(activity);
            QCOMPARE(isAdmitted(admission), offered >= needed);
            QCOMPARE(refusedWith(admission,
                                 {.code = ReasonCode::NeedsCloserAdult, .supervision = needed}),
                     offered < needed);
        }
    }
}

QTEST_APPLESS_MAIN(TestAdmitSupervision)
#include "tst_admit_supervision.moc"

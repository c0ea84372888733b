#include <QTest>

#include "gate_oracle.h"
#include "gate_random.h"

using namespace lidlark;
using namespace lidlark::catalogue;

// Random children, homes, rooms, boxes and activities, judged by the gate and by a second reading
// of activities.md (gate_oracle.h): nothing the second reading forbids is ever let through, nothing
// it allows is ever held back.

namespace {

/// How many cases of each sort were seen, so that none of them is judged in theory only.
struct Tally {
    int admitted = 0;
    int swapped = 0;
    int refused = 0;
};

void compare(const GateWorld &world, const Activity &activity, Tally &tally)
{
    const safety::Admission admission = world.judge(activity);
    const oracle::Judge judge(world, activity);
    const auto *form = std::get_if<safety::Admitted>(&admission);
    if (!form) {
        ++tally.refused;
        RC_ASSERT(!judge.allows()); // Over-hiding.
        RC_ASSERT(!std::get<safety::Refusal>(admission).empty());
        return;
    }
    ++(form->swaps().empty() ? tally.admitted : tally.swapped);
    RC_ASSERT(judge.allowsWith(form->swaps())); // Unsafe.
    RC_ASSERT(oracle::tagsOf(form->cautions()) == judge.tagsWith(form->swaps()));
    RC_ASSERT(form->supervision() == judge.supervisionWith(form->swaps()));
    for (const ItemUse &use : form->items()) {
        if (use.source == Source::Box)
            RC_ASSERT(world.box.here && world.box.items.at(use.item).low >= use.quantity);
    }
}

} // namespace

class TestAdmitProperties : public QObject
{
    Q_OBJECT

private slots:
    void initTestCase();
    void theGateAgreesWithTheTable();
    void nobodyWhoComesInOpensTheGate();
};

void TestAdmitProperties::initTestCase()
{
    if (!qEnvironmentVariableIsSet("RC_PARAMS"))
        qputenv("RC_PARAMS", "max_success=20000");
}

void TestAdmitProperties::theGateAgreesWithTheTable()
{
    Tally tally;
    QVERIFY(rc::check("admit and the second reading agree", [&tally] {
        const GateWorld world = drawn::aWorld();
        compare(world, drawn::anActivity(world), tally);
    }));
    qInfo("admitted %d, in a swapped form %d, refused %d", tally.admitted, tally.swapped,
          tally.refused);
    const int all = tally.admitted + tally.swapped + tally.refused;
    QVERIFY(tally.admitted * 10 > all);
    QVERIFY(tally.swapped * 100 > all);
    QVERIFY(tally.refused * 10 > all);
}

void TestAdmitProperties::nobodyWhoComesInOpensTheGate()
{
    QVERIFY(rc::check("one more small one in the room hides more, never less", [] {
        GateWorld world = drawn::aWorld();
        const Activity activity = drawn::anActivity(world);
        const bool before = std::holds_alternative<safety::Admitted>(world.judge(activity));
        world.room.visitorUnderThree = world.room.visitorUnderThree || drawn::chance(50);
        world.room.visitorMouther = true;
        const bool after = std::holds_alternative<safety::Admitted>(world.judge(activity));
        RC_ASSERT(before || !after);
    }));
}

QTEST_APPLESS_MAIN(TestAdmitProperties)
#include "tst_admit_properties.moc"

#include <QRandomGenerator>
#include <QTest>

#include "gate_comparison.h"
#include "gate_random.h"

#include <thread>

using namespace lidlark;
using namespace lidlark::catalogue;

// Random children, homes, rooms, boxes and activities, judged by the gate and by a second reading
// of activities.md (gate_oracle.h): nothing the second reading forbids is ever let through, nothing
// it allows is ever held back. RapidCheck draws 200,000 cases, two dice draw 10 million more with
// LIDLARK_LONG=1; RC_PARAMS overrules the number and the seed of the former.

namespace {

constexpr int longCasesEach = 5'000'000;

void judgeMany(std::uint64_t seed, int cases, comparison::Tally &tally, QString &problem)
{
    drawn::WithDice dice(seed);
    for (int i = 0; i < cases && problem.isEmpty(); ++i) {
        dice.begin(i);
        const GateWorld world = drawn::aWorld();
        const Activity activity = drawn::anActivity(world);
        if (const char *what = comparison::disagreement(world, activity, tally))
            problem = QString("seed %1, case %2: %3").arg(seed).arg(i).arg(what);
    }
}

void report(const comparison::Tally &tally)
{
    qInfo("admitted %d, in a swapped form %d, refused %d", tally.admitted, tally.swapped,
          tally.refused);
    QVERIFY(tally.admitted * 10LL > tally.all());
    QVERIFY(tally.swapped * 100LL > tally.all());
    QVERIFY(tally.refused * 10LL > tally.all());
}

} // namespace

class TestAdmitProperties : public QObject
{
    Q_OBJECT

private slots:
    void initTestCase();
    void theGateAgreesWithTheTable();
    void theGateAgreesTenMillionTimes();
    void nobodyWhoComesInOpensTheGate();
};

void TestAdmitProperties::initTestCase()
{
    if (!qEnvironmentVariableIsSet("RC_PARAMS"))
        qputenv("RC_PARAMS", "max_success=200000");
}

void TestAdmitProperties::theGateAgreesWithTheTable()
{
    comparison::Tally tally;
    QVERIFY(rc::check("admit and the second reading agree", [&tally] {
        const GateWorld world = drawn::aWorld();
        const char *what = comparison::disagreement(world, drawn::anActivity(world), tally);
        if (what)
            RC_FAIL(what);
    }));
    report(tally);
}

/// New cases every time: the seed of a disagreement is told.
void TestAdmitProperties::theGateAgreesTenMillionTimes()
{
    if (!qEnvironmentVariableIsSet("LIDLARK_LONG"))
        QSKIP("only with LIDLARK_LONG=1");
    const auto seed = static_cast<std::uint64_t>(QRandomGenerator::system()->generate64());
    comparison::Tally first;
    comparison::Tally second;
    QString problems[2];
    std::thread other([&] { judgeMany(seed + 1, longCasesEach, second, problems[1]); });
    judgeMany(seed, longCasesEach, first, problems[0]);
    other.join();
    QVERIFY2(problems[0].isEmpty(), qPrintable(problems[0]));
    QVERIFY2(problems[1].isEmpty(), qPrintable(problems[1]));
    first.add(second);
    QCOMPARE(first.all(), 2 * longCasesEach);
    report(first);
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

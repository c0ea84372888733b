#include <QTest>

#include "gate_samples.h"

using namespace samples;

// Who is named among the small ones of a room and of a home. Expectations from activities.md 1.4
// (the two facts) and 2.1: what nobody knows counts as the worst.

class TestCompany : public QObject
{
    Q_OBJECT

private slots:
    void allAreNamed();
    void whoHasNoNameIsCountedAllTheSame();
    void thePlayingChildNeedsNoSheetToBeKnown();
    void anUnknownHomeHasBoth();
};

namespace {

using Names = std::vector<std::string>;

Company inTheRoom(const GateWorld &world)
{
    return companyIn(world.room, &world.home, world.child, world.today);
}

} // namespace

void TestCompany::allAreNamed()
{
    GateWorld world(items());
    world.isMonthsOld(30);
    world.addChild("Mirren", 20, Answer::No);
    world.addChild("Tam", 60, Answer::No);
    QCOMPARE(inTheRoom(world).underThreeNames, (Names{"Fin", "Mirren"}));
    QVERIFY(refusedWith(
        world.judge(activityWith({Tag::Foil})),
        {.code = ReasonCode::UnderThreeInRoom, .tag = Tag::Foil, .name = "Fin, Mirren"}));
}

void TestCompany::whoHasNoNameIsCountedAllTheSame()
{
    GateWorld world(items());
    world.room.present = {{"nobody-knows"}};
    const Company company = inTheRoom(world);
    QVERIFY(company.underThree && company.mouther);
    QVERIFY(company.underThreeNames.empty() && company.moutherNames.empty());
}

void TestCompany::thePlayingChildNeedsNoSheetToBeKnown()
{
    GateWorld world(items());
    world.room.present = {{world.child.id.value}};
    const Company company = inTheRoom(world);
    QVERIFY(!company.underThree && !company.mouther);
}

void TestCompany::anUnknownHomeHasBoth()
{
    const GateWorld world(items());
    const Company company = companyOfHome(nullptr, world.child, world.today);
    QVERIFY(company.underThree && company.mouther);
}

QTEST_APPLESS_MAIN(TestCompany)
#include "tst_company.moc"

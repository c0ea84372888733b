#include <QTest>

#include "gate_samples.h"

using namespace samples;

// Expectations are copied by hand from activities.md 1.4 (caution tags) and 2.1.7; each
// row names its line there. The reference gives its own sources as [E...] in its section 7.

class TestAdmitCompany : public QObject
{
    Q_OBJECT

private slots:
    void aTagIsHiddenForTheRoom_data();
    void aTagIsHiddenForTheRoom();
    void aBalloonIsHiddenWhereASmallChildLives_data();
    void aBalloonIsHiddenWhereASmallChildLives();
    void waterWithAnUnderThreeNeedsBesideNow();
    void aLostSmallPartHidesSmallThings_data();
    void aLostSmallPartHidesSmallThings();
    void aLostBalloonPieceHidesBalloons();
};

void TestAdmitCompany::aTagIsHiddenForTheRoom_data()
{
    QTest::addColumn<QString>("tag");
    QTest::addColumn<bool>("hiddenForUnderThree");
    QTest::addColumn<bool>("hiddenForMouther");
    const auto row = [](const char *tag, bool underThree, bool mouther) {
        QTest::newRow(tag) << tag << underThree << mouther;
    };
    // activities.md 1.4: "SMALL, COIN, BALLOON, ELASTIC, FOAM, FOIL, STRAW and CORD are hidden for
    // an under-three or a mouther. STICKER and DOUGH ... are hidden for a mouther only".
    row("SMALL", true, true);   // [E8]
    row("BALLOON", true, true); // [E8, E9]; safety.md BL-01
    row("ELASTIC", true, true);
    row("CORD", true, true); // [E11]
    row("COIN", true, true); // safety.md CN-01
    row("FOAM", true, true);
    row("FOIL", true, true);
    row("STRAW", true, true); // [E12]
    row("DOUGH", false, true);
    row("STICKER", false, true);
    // The other lines of the table name no company; WATER has a test of its own.
    for (const char *tag :
         {"LATEX", "BAND", "SHARP", "WHEAT", "PAPER", "FORK", "PET", "HYG", "SCENT", "BREATH",
          "EDGE", "TRACE", "PINCH", "FACE", "TOUCH", "SPIN", "TRIP", "LIFT", "NOISE"})
        row(tag, false, false);
}

void TestAdmitCompany::aTagIsHiddenForTheRoom()
{
    QFETCH(QString, tag);
    QFETCH(bool, hiddenForUnderThree);
    QFETCH(bool, hiddenForMouther);
    const Activity activity = activityWith({tagNamed(tag)});
    GateWorld nobody(items());
    QVERIFY(isAdmitted(nobody.judge(activity)));

    GateWorld underThree(items()); // Two and a half, and no longer puts things in the mouth.
    underThree.addChild("Mirren", 30, Answer::No);
    QCOMPARE(isAdmitted(underThree.judge(activity)), !hiddenForUnderThree);
    QCOMPARE(
        refusedWith(underThree.judge(activity),
                    {.code = ReasonCode::UnderThreeInRoom, .tag = tagNamed(tag), .name = "Mirren"}),
        hiddenForUnderThree);
    QVERIFY(!refusedFor(underThree.judge(activity), ReasonCode::MoutherInRoom));

    GateWorld mouther(items()); // Five, and still does.
    mouther.addChild("Tam", 60, Answer::Yes);
    QCOMPARE(isAdmitted(mouther.judge(activity)), !hiddenForMouther);
    QCOMPARE(refusedWith(mouther.judge(activity),
                         {.code = ReasonCode::MoutherInRoom, .tag = tagNamed(tag), .name = "Tam"}),
             hiddenForMouther);

    GateWorld both(items());
    both.addChild("Mirren", 25, Answer::Unanswered);
    QCOMPARE(isAdmitted(both.judge(activity)), !hiddenForUnderThree && !hiddenForMouther);

    // The playing child is one of the room.
    GateWorld player(items());
    player.addChild("child", 120, Answer::Yes);
    QCOMPARE(isAdmitted(player.judge(activity)), !hiddenForMouther);
}

void TestAdmitCompany::aBalloonIsHiddenWhereASmallChildLives_data()
{
    QTest::addColumn<int>("months");
    QTest::addColumn<QString>("answer");
    QTest::addColumn<bool>("visits");
    QTest::addColumn<bool>("hidden");
    // activities.md 1.4, BALLOON: "hidden if an under-three or a mouther lives in the home, present
    // or not". The child is not in the room here.
    QTest::newRow("a baby lives here") << 9 << "unanswered" << false << true;
    QTest::newRow("a two-year-old who no longer mouths") << 30 << "no" << false << true;
    QTest::newRow("a mouther of five") << 60 << "yes" << false << true;
    QTest::newRow("a three-year-old") << 36 << "unanswered" << false << false;
    QTest::newRow("a baby that visits, not today") << 9 << "unanswered" << true << false;
}

void TestAdmitCompany::aBalloonIsHiddenWhereASmallChildLives()
{
    QFETCH(int, months);
    QFETCH(QString, answer);
    QFETCH(bool, visits);
    QFETCH(bool, hidden);
    GateWorld world(items());
    world.addChild("Jamie", months, *child::answerNames.parse(answer.toStdString())).visits =
        visits;
    world.room.present.emplace();
    const Admission admission = world.judge(activityWith({Tag::Balloon}));
    QCOMPARE(isAdmitted(admission), !hidden);
    QCOMPARE(
        refusedWith(admission,
                    {.code = ReasonCode::SmallChildInHome, .tag = Tag::Balloon, .name = "Jamie"}),
        hidden);
    // Under the therapist's condition nothing else reads who lives here but is away.
    world.mayHoldSmallParts();
    QVERIFY(isAdmitted(
        world.judge(activityWith({Tag::Small, Tag::Coin, Tag::Elastic, Tag::Foam, Tag::Foil,
                                  Tag::Straw, Tag::Cord, Tag::Sticker, Tag::Dough}))));
}

void TestAdmitCompany::waterWithAnUnderThreeNeedsBesideNow()
{
    // activities.md 1.4, WATER: "Child under 36 months: hidden unless an adult has said 'beside
    // now'".
    const Activity activity = activityWith({Tag::Water});
    GateWorld world(items());
    QVERIFY(isAdmitted(world.judge(activity)));
    world.addChild("Tam", 60, Answer::Yes);
    QVERIFY(isAdmitted(world.judge(activity)));
    world.addChild("Mirren", 30, Answer::No);
    QVERIFY(
        refusedWith(world.judge(activity),
                    {.code = ReasonCode::WaterUnderThree, .tag = Tag::Water, .name = "Mirren"}));
    world.room.besideSaid = true;
    QVERIFY(isAdmitted(world.judge(activity)));
}

void TestAdmitCompany::aLostSmallPartHidesSmallThings_data()
{
    QTest::addColumn<QString>("item");
    QTest::addColumn<QString>("who");
    QTest::addColumn<bool>("hidden");
    // activities.md 2.1.7: "An open lost-small-part note with an under-three or a mouther in that
    // home: hide everything with SMALL or COIN"; job.md scenario 5: "also if someone later answers
    // 'Mirren out'".
    QTest::newRow("eyes, the small one is out") << "eyes"
                                                << "out" << true;
    QTest::newRow("coins, the small one is out") << "coins"
                                                 << "out" << true;
    QTest::newRow("dough, the small one is out") << "dough"
                                                 << "out" << false;
    QTest::newRow("eyes, a small visitor") << "eyes"
                                           << "visitor" << true;
    QTest::newRow("eyes, a mouther of five is out") << "eyes"
                                                    << "mouther out" << true;
    QTest::newRow("eyes, nobody small in this home") << "eyes"
                                                     << "nobody" << false;
}

void TestAdmitCompany::aLostSmallPartHidesSmallThings()
{
    QFETCH(QString, item);
    QFETCH(QString, who);
    QFETCH(bool, hidden);
    Activity activity = activityWith({});
    use(activity, item.toStdString(), 1);
    GateWorld world(items());
    world.room.present.emplace();
    if (who == "out")
        world.addChild("Mirren", 25, Answer::Unanswered);
    if (who == "mouther out")
        world.addChild("Tam", 60, Answer::Yes);
    world.room.visitorUnderThree = who == "visitor";
    world.mayHoldSmallParts();
    if (who != "visitor")
        QVERIFY(isAdmitted(world.judge(activity)));
    world.box.floorNoteOpen = true;
    const Admission admission = world.judge(activity);
    QCOMPARE(isAdmitted(admission), !hidden);
    QCOMPARE(refusedFor(admission, ReasonCode::FloorNoteOpen), hidden);

    // COIN counts by itself, for coins too large to be small parts.
    QCOMPARE(isAdmitted(world.judge(activityWith({Tag::Coin}))), who == "nobody");

    // No way round by a swap while the small thing itself is still there ...
    if (item != "dough")
        allowSwap(activity, item.toStdString(), "lids");
    QCOMPARE(isAdmitted(world.judge(activity)), !hidden);
    // ... but a box that never held it is none of the note's business.
    world.box.items.erase({"eyes"});
    world.home.missingExtras = {{"coins"}};
    QVERIFY(isAdmitted(world.judge(activity)));
}

void TestAdmitCompany::aLostBalloonPieceHidesBalloons()
{
    // job.md scenario 2: "'Can't find' => balloon entries hidden until checked".
    Activity activity = activityWith({});
    use(activity, "balloon", 1);
    GateWorld world(items());
    QVERIFY(isAdmitted(world.judge(activity)));
    world.box.balloonNoteOpen = true;
    QVERIFY(refusedWith(world.judge(activity),
                        {.code = ReasonCode::FloorNoteOpen, .tag = Tag::Balloon}));
    QVERIFY(isAdmitted(world.judge(activityWith({Tag::Small}))));
}

QTEST_APPLESS_MAIN(TestAdmitCompany)
#include "tst_admit_company.moc"

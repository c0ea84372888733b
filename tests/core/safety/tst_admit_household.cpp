#include <QTest>

#include "gate_samples.h"

using namespace samples;

// Expectations are copied by hand from activities.md 1.3 and 1.4 (LATEX, WHEAT, soft tags); each
// row names its line there. The reference gives its own sources as [E...] in its section 7.

class TestAdmitHousehold : public QObject
{
    Q_OBJECT

private slots:
    void whatTheHomeMustAvoid_data();
    void whatTheHomeMustAvoid();
    void milkNeedsANo_data();
    void milkNeedsANo();
    void flagsAndLikes_data();
    void flagsAndLikes();
};

void TestAdmitHousehold::whatTheHomeMustAvoid_data()
{
    // safety.md BL-04 (latex balloons), MD-01 (dough with wheat).
    QTest::addColumn<QString>("avoids");
    QTest::addColumn<QString>("item");
    QTest::addColumn<bool>("admitted");
    // activities.md 1.4: LATEX "any latex allergy or avoidance in the home removes the item" [E6];
    // WHEAT "wheat allergy of anyone at home", "Coeliac disease: swapped too" [E13]. 1.3: ball,
    // balloon and bands carry LATEX, dough WHEAT; loops and ricedough do not.
    QTest::newRow("latex: ball") << "latex"
                                 << "ball" << false;
    QTest::newRow("latex: balloon") << "latex"
                                    << "balloon" << false;
    QTest::newRow("latex: bands") << "latex"
                                  << "bands" << false;
    QTest::newRow("latex: loops") << "latex"
                                  << "loops" << true;
    QTest::newRow("latex: dough") << "latex"
                                  << "dough" << true;
    QTest::newRow("wheat: dough") << "wheat"
                                  << "dough" << false;
    QTest::newRow("wheat: wheat-free dough") << "wheat"
                                             << "ricedough" << true;
    QTest::newRow("coeliac: dough") << "coeliac"
                                    << "dough" << false;
    QTest::newRow("coeliac: wheat-free dough") << "coeliac"
                                               << "ricedough" << true;
    QTest::newRow("coeliac: ball") << "coeliac"
                                   << "ball" << true;
    QTest::newRow("milk: dough") << "milk"
                                 << "dough" << true;
}

void TestAdmitHousehold::whatTheHomeMustAvoid()
{
    QFETCH(QString, avoids);
    QFETCH(QString, item);
    QFETCH(bool, admitted);
    Activity activity = activityWith({});
    use(activity, item.toStdString(), 1);
    GateWorld world(items());
    QVERIFY(isAdmitted(world.judge(activity)));
    child::Avoidances &avoidances = world.home.avoidances;
    (avoids == "latex"   ? avoidances.latex
     : avoids == "wheat" ? avoidances.wheat
     : avoids == "milk"  ? avoidances.milk
                         : avoidances.coeliac) = Answer::Yes;
    const Admission admission = world.judge(activity);
    QCOMPARE(isAdmitted(admission), admitted);
    const ReasonCode code = avoids == "latex" ? ReasonCode::LatexInHome : ReasonCode::WheatInHome;
    QCOMPARE(refusedWith(admission, {.code = code, .item = ItemId{item.toStdString()}}), !admitted);
}

void TestAdmitHousehold::milkNeedsANo_data()
{
    QTest::addColumn<QString>("answer");
    QTest::addColumn<bool>("admitted");
    // activities.md 1.3, foam: "plain yoghurt, HYG, and only if nobody at home avoids milk".
    QTest::newRow("nobody avoids milk") << "no" << true;
    QTest::newRow("somebody does") << "yes" << false;
    QTest::newRow("nobody has said") << "unanswered" << false;
}

void TestAdmitHousehold::milkNeedsANo()
{
    QFETCH(QString, answer);
    Activity activity = activityWith({});
    use(activity, "yoghurt", 1);
    GateWorld world(items());
    world.home.avoidances.milk = *child::answerNames.parse(answer.toStdString());
    QTEST(isAdmitted(world.judge(activity)), "admitted");
}

void TestAdmitHousehold::flagsAndLikes_data()
{
    QTest::addColumn<QString>("tag");
    QTest::addColumn<QString>("flag");
    QTest::addColumn<bool>("permissionHelps");
    // activities.md 1.4, the soft tags and STRAW, FOAM.
    QTest::newRow("SPIN: seizure, shunt or neck") << "SPIN"
                                                  << "seizure" << true;
    QTest::newRow("BREATH: heart, lung or shunt") << "BREATH"
                                                  << "heart" << true;
    QTest::newRow("LIFT: joint or heart") << "LIFT"
                                          << "joint" << true;
    QTest::newRow("STRAW: mouth surgery or swallowing") << "STRAW"
                                                        << "mouth" << true;
    QTest::newRow("FOAM: broken skin") << "FOAM"
                                       << "skin" << false;
    QTest::newRow("SCENT: eczema, asthma, dislike") << "SCENT"
                                                    << "scent" << false;
    QTest::newRow("NOISE: sound-sensitive child") << "NOISE"
                                                  << "sound" << false;
    QTest::newRow("NOISE: quiet now") << "NOISE"
                                      << "quiet" << false;
    QTest::newRow("TOUCH: not liked") << "TOUCH"
                                      << "touch-no" << false;
    QTest::newRow("TOUCH: unanswered counts as no") << "TOUCH"
                                                    << "touch-unanswered" << false;
}

void TestAdmitHousehold::flagsAndLikes()
{
    QFETCH(QString, tag);
    QFETCH(QString, flag);
    QFETCH(bool, permissionHelps);
    const Tag about = tagNamed(tag);
    GateWorld world(items());
    QVERIFY(isAdmitted(world.judge(activityWith({about}))));
    child::MedicalFlags &flags = world.home.flags;
    flags.seizureShuntOrNeck = flag == "seizure";
    flags.heartLungOrShunt = flag == "heart";
    flags.jointOrHeart = flag == "joint";
    flags.mouthOrSwallowing = flag == "mouth";
    flags.brokenSkin = flag == "skin";
    flags.avoidScent = flag == "scent";
    flags.soundSensitive = flag == "sound";
    world.room.quietNow = flag == "quiet";
    if (flag == "touch-no")
        world.home.likesTouch = Answer::No;
    if (flag == "touch-unanswered")
        world.home.likesTouch = Answer::Unanswered;
    QVERIFY(!isAdmitted(world.judge(activityWith({about}))));
    // A flag is about its own tag.
    TagSet others;
    for (const Tag other : {Tag::Spin, Tag::Breath, Tag::Lift, Tag::Straw, Tag::Foam, Tag::Scent,
                            Tag::Noise, Tag::Touch}) {
        if (other != about)
            others.add(other);
    }
    QVERIFY(isAdmitted(world.judge(activityWith(others))));
    world.home.permissions = {true, true, true, true, {}};
    QCOMPARE(isAdmitted(world.judge(activityWith({about}))), permissionHelps);
    if (about == Tag::Touch) {
        world.hasHome = false; // Unanswered too.
        QVERIFY(refusedFor(world.judge(activityWith({about})), ReasonCode::TouchNotLiked));
    }
}

QTEST_APPLESS_MAIN(TestAdmitHousehold)
#include "tst_admit_household.moc"

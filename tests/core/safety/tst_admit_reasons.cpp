#include <QTest>

#include "gate_samples.h"

using namespace samples;

// What the gate says, word for word, where one thing alone stands in the way: the code, and the
// item, tag or number that a sentence for people is made of (core/wording). Which thing has which
// reason: core/safety/reason.h; when it applies: activities.md 1.4 and 2.1.

class TestAdmitReasons : public QObject
{
    Q_OBJECT

private slots:
    void theTherapistsFlagsNameTheirTag_data();
    void theTherapistsFlagsNameTheirTag();
    void publicationIsNamed();
    void whatIsNotKnownIsNamed();
    void aThingIsNamed();
    void anAllergenIsNamed();
    void aTagOfTheActivityAloneNamesNoThing();
};

namespace {

bool isRefusedOnlyFor(const GateWorld &world, const Activity &activity, const Reason &reason)
{
    const Admission admission = world.judge(activity);
    const auto *refusal = std::get_if<Refusal>(&admission);
    return refusal && *refusal == Refusal{reason};
}

Activity usingOne(const std::string &item)
{
    Activity activity = activityWith({});
    use(activity, item, 1);
    return activity;
}

} // namespace

void TestAdmitReasons::theTherapistsFlagsNameTheirTag_data()
{
    QTest::addColumn<QString>("tag");
    QTest::addColumn<int>("code");
    const auto row = [](const char *tag, ReasonCode code) {
        QTest::newRow(tag) << tag << static_cast<int>(code);
    };
    row("SPIN", ReasonCode::NeedsTherapist);
    row("BREATH", ReasonCode::NeedsTherapist);
    row("LIFT", ReasonCode::NeedsTherapist);
    row("STRAW", ReasonCode::NeedsTherapist);
    row("FOAM", ReasonCode::BrokenSkin);
    row("SCENT", ReasonCode::ScentAvoided);
    row("NOISE", ReasonCode::QuietNow);
    row("TOUCH", ReasonCode::TouchNotLiked);
}

void TestAdmitReasons::theTherapistsFlagsNameTheirTag()
{
    QFETCH(QString, tag);
    QFETCH(int, code);
    GateWorld world(items());
    world.home.flags = {true, true, true, true, true, true, true};
    world.home.likesTouch = Answer::No;
    QVERIFY(isRefusedOnlyFor(world, activityWith({tagNamed(tag)}),
                             {.code = static_cast<ReasonCode>(code), .tag = tagNamed(tag)}));
}

void TestAdmitReasons::publicationIsNamed()
{
    GateWorld world(items());
    Activity activity = activityWith({});
    for (const Status status : {Status::Draft, Status::Withdrawn}) {
        activity.status = status;
        QVERIFY(isRefusedOnlyFor(world, activity, {.code = ReasonCode::NotPublished}));
    }
    activity.status = Status::AwaitingReview;
    QVERIFY(isAdmitted(world.judge(activity)));
    world.home.reviewedOnly = true;
    QVERIFY(isRefusedOnlyFor(world, activity, {.code = ReasonCode::NotReviewed}));
}

void TestAdmitReasons::whatIsNotKnownIsNamed()
{
    Activity activity = activityWith({});
    activity.ageFloorMonths = 19;
    GateWorld nameless(items());
    nameless.child.age = std::nullopt;
    nameless.home.people.clear();
    QVERIFY(isRefusedOnlyFor(nameless, activity, {.code = ReasonCode::AgeUnknown}));
    GateWorld unasked(items());
    unasked.home.avoidances.coeliac = Answer::Unanswered;
    QVERIFY(isRefusedOnlyFor(unasked, activity, {.code = ReasonCode::AllergyUnanswered}));
}

void TestAdmitReasons::aThingIsNamed()
{
    const ItemId chunky{"chunky"};
    GateWorld world(items());
    world.box.items.erase(chunky);
    QVERIFY(isRefusedOnlyFor(world, usingOne("chunky"),
                             {.code = ReasonCode::ItemMissing, .item = chunky}));
    world.box.items[chunky] = {0, false};
    QVERIFY(isRefusedOnlyFor(world, usingOne("chunky"),
                             {.code = ReasonCode::ItemUsedUp, .item = chunky, .number = 1}));
    world.box.items[chunky] = {1, true};
    QVERIFY(isRefusedOnlyFor(world, usingOne("chunky"),
                             {.code = ReasonCode::ItemPastDate, .item = chunky}));
    world.box.items[chunky] = {1, false};
    world.box.here = false;
    world.box.place = "at school";
    QVERIFY(isRefusedOnlyFor(world, usingOne("chunky"),
                             {.code = ReasonCode::BoxElsewhere, .name = "at school"}));
    // A thing that no catalogue knows, needed or not.
    const ItemId unknown{"buttons"};
    QVERIFY(isRefusedOnlyFor(GateWorld(items()), usingOne("buttons"),
                             {.code = ReasonCode::ItemMissing, .item = unknown}));
}

void TestAdmitReasons::anAllergenIsNamed()
{
    GateWorld world(items());
    world.home.avoidances.milk = Answer::Yes;
    QVERIFY(isRefusedOnlyFor(world, usingOne("yoghurt"),
                             {.code = ReasonCode::MilkInHome, .item = ItemId{"yoghurt"}}));
    // activities.md 1.4: latex and wheat are told by their tags; nobody is asked a second time.
    std::vector<ItemKind> tagged = items();
    for (ItemKind &item : tagged)
        item.allergens = {"latex", "wheat"};
    QVERIFY(isAdmitted(GateWorld(tagged).judge(usingOne("chunky"))));
}

void TestAdmitReasons::aTagOfTheActivityAloneNamesNoThing()
{
    GateWorld world(items());
    world.home.avoidances.wheat = Answer::Yes;
    QVERIFY(isRefusedOnlyFor(world, activityWith({Tag::Wheat}), {.code = ReasonCode::WheatInHome}));
}

QTEST_APPLESS_MAIN(TestAdmitReasons)
#include "tst_admit_reasons.moc"

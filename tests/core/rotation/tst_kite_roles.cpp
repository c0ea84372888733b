#include <QtTest>

#include "core/rotation/order_offers.h"
#include "tests/core/rotation/menu_samples.h"

using namespace lidlark;
using namespace lidlark::rotation;
using namespace lidlark::rotation::samples;
using catalogue::Activity;
using catalogue::Effect;
using catalogue::Skill;
using catalogue::Space;
using checkin::Kite;

Q_DECLARE_METATYPE(lidlark::checkin::Kite)

namespace {

/// One entry for each role of each state of checkin.md 4, and some that fill none.
Shelf tableOfStates()
{
    Shelf shelf;
    const auto add = [&](const char *id, Skill skill, Effect effect, Space space) {
        shelf.add(id, [=](Activity &a) {
            a.skillsMain = {skill};
            a.effect = effect;
            a.space = space;
            a.hands = 2;
        });
    };
    add("stamp-about", Skill::Rhy, Effect::Alerting, Space::Room);
    add("push-the-wall", Skill::Pro, Effect::Either, Space::Mat);
    shelf.add("liked-lap-play", [](Activity &a) {
        a.skillsMain = {Skill::Vpe};
        a.effect = Effect::Settling;
        a.space = Space::Lap;
    });
    add("slow-mat-play", Skill::Bod, Effect::Settling, Space::Mat);
    add("table-play", Skill::Vmi, Effect::Settling, Space::Table);
    add("goal-play", Skill::Bil, Effect::Settling, Space::Table);
    add("either-at-table", Skill::For, Effect::Either, Space::Table);
    return shelf;
}

const child::Child &childWithGoal()
{
    static const child::Child child = [] {
        child::Child made{{"fin"}, "Fin", std::nullopt, false, {}};
        child::Goal goal;
        goal.shortWords = "opening his lunch tub";
        goal.skills = {Skill::Bil};
        made.goals = {goal};
        return made;
    }();
    return child;
}

std::vector<std::string> offersFor(Kite kite)
{
    const Shelf shelf = tableOfStates();
    Question question = questionFor(childWithGoal());
    question.kite = kite;
    question.minutesThisWeek.fill(60);
    for (std::size_t i = 0; i < shelf.size(); ++i) {
        Record &record = question.records[shelf.at(i).id];
        record = playedOnce();
        record.plays = shelf.at(i).id.value == "table-play" ? 1 : 3;
    }
    for (const char *id :
         {"stamp-about", "push-the-wall", "slow-mat-play", "goal-play", "either-at-table"}) {
        question.records[{id}].plays = 1;
    }
    const auto candidates = shelf.candidates();
    return idsOf(draftMenu(candidates, question), candidates);
}

ToOrder offer(int worth, KiteRoles roles, bool heldBack = false)
{
    return {worth, roles, heldBack};
}

using Order = std::vector<std::size_t>;

} // namespace

class TestKiteRoles : public QObject
{
    Q_OBJECT

private slots:
    // Source: checkin.md 4, the column "first three offers" of the state table, in its order.
    void eachStateHasItsThreeOffersInOrder_data()
    {
        QTest::addColumn<Kite>("kite");
        QTest::addColumn<QStringList>("offers");
        QTest::newRow("resting: moving, push and pull, a friend")
            << Kite::Resting << QStringList{"stamp-about", "push-the-wall", "liked-lap-play"};
        QTest::newRow("whirling: push and pull, big and slow, a settling friend")
            << Kite::Whirling << QStringList{"push-the-wall", "slow-mat-play", "liked-lap-play"};
    }
    void eachStateHasItsThreeOffersInOrder()
    {
        QFETCH(Kite, kite);
        QStringList shown;
        for (const std::string &id : offersFor(kite))
            shown.append(QString::fromStdString(id));
        QTEST(shown, "offers");
    }

    void steadyLeadsWithTheGoalAndEndsWithAFriend()
    {
        const auto offers = offersFor(Kite::Steady);
        QCOMPARE(offers.front(), std::string("goal-play"));
        QCOMPARE(offers.back(), std::string("liked-lap-play"));
    }

    void cloudsLeadWithAFriendThenAnEitherEntry()
    {
        const auto offers = offersFor(Kite::Clouds);
        QCOMPARE(offers[0], std::string("liked-lap-play"));
        QVERIFY(offers[1] == "push-the-wall" || offers[1] == "either-at-table");
    }

    // Source: checkin.md 4: for a child who tires fast, low-energy alerting entries.
    void aWakingEntryIsFirstForAChildWhoTiresFastOnlyWhenLowInEnergy()
    {
        Shelf shelf;
        shelf.add("stamp", [](Activity &a) {
            a.effect = Effect::Alerting;
            a.energy = catalogue::Energy::Medium;
        });
        child::Child child{{"mairead"}, "Mairead", std::nullopt, false, {}};
        Question question = questionFor(child);
        question.kite = Kite::Resting;
        const Candidate stamp = shelf.candidates().front();
        QCOMPARE(kiteRolesOf(stamp, question)[0], true);
        child.energyLimited = true;
        QCOMPARE(kiteRolesOf(stamp, question)[0], false);
    }

    void fitIsThreePointsForTheFirstTwoRolesAndTwoForTheThird()
    {
        QCOMPARE(kiteFitOf({true, false, false}), 30);
        QCOMPARE(kiteFitOf({false, true, true}), 30);
        QCOMPARE(kiteFitOf({false, false, true}), 20);
        QCOMPARE(kiteFitOf({false, false, false}), 0);
    }

    void withoutRolesWorthLeadsAndRankBreaksTies()
    {
        QVERIFY((orderOffers(std::vector{offer(10, {}), offer(30, {}), offer(10, {})}) ==
                 Order{1, 0, 2}));
    }

    void asManyRolesAsCanBeAreFilledByDifferentOffers()
    {
        // The worthier one could take either role; the other only the first.
        QVERIFY((orderOffers(std::vector{offer(50, {true, true, false}),
                                         offer(10, {true, false, false})}) == Order{1, 0}));
    }

    void anOfferWithoutARoleComesAfterThoseWithOneAndAHeldBackOneLast()
    {
        QVERIFY((orderOffers(std::vector{offer(90, {}, true), offer(80, {}),
                                         offer(10, {false, false, true})}) == Order{2, 1, 0}));
    }
};

QTEST_APPLESS_MAIN(TestKiteRoles)
#include "tst_kite_roles.moc"

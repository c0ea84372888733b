#include <QtTest>

#include "crew_log.h"

using namespace lidlark;
using namespace lidlark::crew;
using namespace lidlark::test;

namespace {

const journal::Lane goals{journal::LaneKind::Goals, "b-fin"};

std::set<DeviceId> devices(const std::vector<std::string> &names)
{
    std::set<DeviceId> all;
    for (const std::string &name : names)
        all.insert({name});
    return all;
}

} // namespace

/// Under which key a lane goes on (events.md 10: epochs), whatever the order in which it was heard.
class TestOpenings : public QObject
{
    Q_OBJECT

private:
    CrewLog m_log;

    [[nodiscard]] std::vector<Opening> openings(unsigned seed) const
    {
        return openingsAmong(m_log.shuffled(seed), m_log.fold());
    }
    void headsAre(const std::set<Digest> &ids, const Strand &strand = {box, {}})
    {
        for (unsigned seed = 1; seed <= 20; ++seed) {
            const auto all = openings(seed);
            std::set<Digest> heads;
            for (const Opening *head : headsOf(strand, all))
                heads.insert(head->id);
            QCOMPARE(heads, ids);
        }
    }
    /// @param id of the one under which the lane goes on; nothing: none, until another is opened.
    void inForceIs(const std::optional<Digest> &id, bool renew,
                   const std::vector<std::string> &entitled)
    {
        for (unsigned seed = 1; seed <= 20; ++seed) {
            const auto all = openings(seed);
            const InForce found = inForce({box, {}}, all, devices(entitled));
            QCOMPARE(found.opening != nullptr, id.has_value());
            QVERIFY(!id || found.opening->id == *id);
            QCOMPARE(found.renew, renew);
        }
    }

private slots:
    void init()
    {
        m_log = {};
        m_log.found(memberOf("morven", Role::Therapist));
        m_log.letIn("morven", memberOf("ruth", Role::Parent, "h-fin"));
        m_log.letIn("ruth", memberOf("gran", Role::Caregiver, "h-fin"));
        m_log.letIn("ruth", memberOf("archie", Role::Guest, "h-fin"));
    }

    void withoutAnyOneHasToBeOpened() { inForceIs(std::nullopt, true, {"morven"}); }

    void theOneThatNoOtherFollows()
    {
        const Digest first = m_log.open("morven", box, {"morven"});
        const Digest second = m_log.open("morven", box, {"morven", "ruth"}, {first});
        const Digest third = m_log.open("ruth", box, {"gran", "morven", "ruth"}, {second});
        headsAre({third});
        inForceIs(third, false, {"gran", "morven", "ruth"});
        const auto all = openings(3);
        QVERIFY(follows(third, first, all));
        QVERIFY(follows(second, first, all));
        QVERIFY(!follows(first, third, all));
        QVERIFY(!follows(third, third, all));
        QCOMPARE(allBefore(third, all), (std::set<Digest>{first, second}));
    }

    void whatIsNotForJustThoseEntitledIsFollowed()
    {
        const Digest first = m_log.open("morven", box, {"morven", "ruth"});
        inForceIs(first, true, {"gran", "morven", "ruth"}); // somebody came
        inForceIs(first, true, {"morven"});                 // somebody went
    }

    /// "With equal members the smaller hash is used."
    void ofTwoForTheSameTheSmallerHash()
    {
        const Digest first = m_log.open("morven", box, {"morven", "ruth"});
        const Digest one = m_log.open("morven", box, {"gran", "morven", "ruth"}, {first});
        const Digest other = m_log.open("ruth", box, {"gran", "morven", "ruth"}, {first});
        headsAre({one, other});
        inForceIs(std::min(one, other), false, {"gran", "morven", "ruth"});
    }

    /// "With different members nobody publishes until a member ... opens the next one."
    void ofTwoForDifferentOnesNoneUntilOneFollowsBoth()
    {
        const Digest one = m_log.open("morven", box, {"morven", "ruth"});
        const Digest other = m_log.open("ruth", box, {"gran", "morven", "ruth"});
        inForceIs(std::nullopt, true, {"gran", "morven", "ruth"});
        const Digest next = m_log.open("ruth", box, {"gran", "morven", "ruth"}, {one, other});
        headsAre({next});
        inForceIs(next, false, {"gran", "morven", "ruth"});
    }

    void aLaneKnowsNothingOfAnother()
    {
        const Digest ofBox = m_log.open("morven", box, {"morven"});
        const Digest ofGoals = m_log.open("morven", goals, {"morven"});
        headsAre({ofBox});
        headsAre({ofGoals}, {goals, {}});
        headsAre({}, {box, {"archie"}});
    }

    /// Whoever opens what it may not read, or is nobody, opens nothing.
    void whoMayNotOpensNothing()
    {
        const Digest first = m_log.open("morven", box, {"morven"});
        (void)m_log.open("archie", box, {"archie", "ruth"}, {first});
        (void)m_log.open("stranger", box, {"stranger"}, {first});
        (void)m_log.open("gran", goals, {"gran"});
        headsAre({first});
        headsAre({}, {goals, {}});
    }

    /// One that names itself before it, or those round in a circle, hold up nobody.
    void namesThatAreNobodysHoldNothingUp()
    {
        const Digest unknown = blake2b("no such epoch");
        const Digest first = m_log.open("morven", box, {"morven"}, {unknown});
        headsAre({first});
        QCOMPARE(allBefore(first, openings(1)), std::set<Digest>{unknown});
        std::vector<Opening> circle{{blake2b("a"), box, {"ruth"}, {}, {}, {blake2b("b")}},
                                    {blake2b("b"), box, {"ruth"}, {}, {}, {blake2b("a")}}};
        QCOMPARE(allBefore(blake2b("a"), circle), (std::set<Digest>{blake2b("a"), blake2b("b")}));
        QVERIFY(headsOf({box, {}}, circle).empty());
    }

    /// A guest's time is over for everybody once a later key left him out, whatever the clocks say.
    void aGuestWhoWasLeftOutIsOut()
    {
        const Digest with = m_log.open("ruth", box, {"archie", "morven", "ruth"});
        QVERIFY(guestsLeftOut(box, openings(1), m_log.fold()).empty());
        (void)m_log.open("morven", box, {"morven", "ruth"}); // beside it, not after it
        QVERIFY(guestsLeftOut(box, openings(1), m_log.fold()).empty());
        (void)m_log.open("gran", box, {"gran", "ruth"}, {with}); // Morven is no guest
        for (unsigned seed = 1; seed <= 20; ++seed)
            QCOMPARE(guestsLeftOut(box, openings(seed), m_log.fold()), devices({"archie"}));
        QVERIFY(guestsLeftOut(goals, openings(1), m_log.fold()).empty());
    }
};

QTEST_APPLESS_MAIN(TestOpenings)
#include "tst_openings.moc"

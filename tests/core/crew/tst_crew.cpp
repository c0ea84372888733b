#include <QtTest>

#include "crew_log.h"

using namespace lidlark;
using namespace lidlark::crew;
using namespace lidlark::test;

namespace {

QString namesIn(const Crew &crew)
{
    std::string names;
    for (const Member &member : crew.present())
        names += member.device.value + " ";
    return QString::fromStdString(names);
}

} // namespace

/// Who is in a crew (events.md 10), whatever the order in which it was heard.
class TestCrew : public QObject
{
    Q_OBJECT

private:
    CrewLog m_log;

    void areIn(const QString &names)
    {
        QCOMPARE(namesIn(m_log.fold()), names);
        for (unsigned seed = 1; seed <= 30; ++seed)
            QCOMPARE(namesIn(m_log.foldShuffled(seed)), names);
    }

private slots:
    void init()
    {
        m_log = {};
        m_log.found(memberOf("morven", Role::Therapist));
        m_log.letIn("morven", memberOf("ruth", Role::Parent, "h-fin"));
        m_log.letIn("ruth", memberOf("gran", Role::Caregiver, "h-fin"));
        m_log.letIn("morven", memberOf("dad", Role::Parent, "h-dad"));
        m_log.allMeet();
    }

    void whoWasLetInIsIn() { areIn("dad gran morven ruth "); }

    /// Ruth's phone, its clock behind, had seen Dad's letting-in of the childminder; the therapist
    /// had seen neither. By twos each of the three is later than one of the others: the crew was
    /// never folded to an end.
    void threeLettingsInThatAreEachLaterThanTheNextComeToAnEnd()
    {
        const auto phone = [](const char *person) {
            crew::Member member = memberOf("minder", Role::Caregiver, "h-fin");
            member.person = person;
            return member;
        };
        const auto letInAt = [&](const char *by, std::int64_t minutes, const crew::Member &member) {
            m_log.say(by, journal::Kind::Member, fieldsOf(member)).instant.ms +=
                minutes * msPerMinute;
        };
        letInAt("dad", 9, phone("by dad"));
        letInAt("morven", 5, phone("by morven"));
        m_log.say("ruth", journal::Kind::Met, journal::metFields({{"dad", 99}}));
        letInAt("ruth", 1, phone("by ruth"));
        areIn("dad gran minder morven ruth ");
        for (unsigned seed = 1; seed <= 30; ++seed)
            QCOMPARE(m_log.foldShuffled(seed).member({"minder"})->person, std::string("by morven"));
    }

    void whoLetsItselfInIsNobodyWhereThereIsAFounderAndNoRole()
    {
        m_log.found(memberOf("nan", Role::Caregiver, "h-fin"));
        areIn("dad gran morven ruth ");
    }

    void aCaregiverAndAGuestLetNobodyIn()
    {
        m_log.letIn("gran", memberOf("friend", Role::Caregiver, "h-fin"));
        m_log.letIn("ruth", memberOf("archie", Role::Guest, "h-fin"));
        m_log.letIn("archie", memberOf("another", Role::Guest, "h-fin"));
        areIn("archie dad gran morven ruth ");
    }

    void whoWasLetInByNobodyLetsNobodyIn()
    {
        m_log.letIn("stranger", memberOf("friend", Role::Parent, "h-fin"));
        areIn("dad gran morven ruth ");
    }

    void aGuestWithoutAnEndIsNoMember()
    {
        Member endless = memberOf("archie", Role::Guest, "h-fin");
        endless.until = std::nullopt;
        m_log.letIn("ruth", endless);
        areIn("dad gran morven ruth ");
    }

    void aParentRemovesDevicesOfTheOwnHomeAlone()
    {
        m_log.remove("ruth", "gran");
        m_log.remove("ruth", "dad");
        m_log.remove("ruth", "morven");
        areIn("dad morven ruth ");
    }

    void theTherapistRemovesAny()
    {
        m_log.remove("morven", "dad");
        areIn("gran morven ruth ");
    }

    void everybodyMayLeaveAndACaregiverRemovesNobodyElse()
    {
        m_log.remove("gran", "ruth");
        m_log.remove("gran", "gran");
        areIn("dad morven ruth ");
    }

    void whoIsRemovedNeverReturns()
    {
        m_log.remove("ruth", "gran");
        m_log.allMeet();
        m_log.letIn("ruth", memberOf("gran", Role::Caregiver, "h-fin"));
        m_log.letIn("morven", memberOf("gran", Role::Caregiver, "h-fin"));
        areIn("dad morven ruth ");
    }

    void removalWinsOverALettingInAtTheSameTime()
    {
        m_log.letIn("morven", memberOf("gran", Role::Caregiver, "h-fin"));
        m_log.remove("ruth", "gran");
        areIn("dad morven ruth ");
    }

    /// Ruth's stolen phone, removed up to what was here: whom the thief lets in is nobody, and whom
    /// the thief removes stays.
    void aThiefLetsNobodyInAndNobodyOut()
    {
        m_log.letIn("morven", memberOf("ruth2", Role::Parent, "h-fin"));
        m_log.allMeet();
        m_log.remove("ruth2", "ruth");
        m_log.letIn("ruth", memberOf("thief", Role::Parent, "h-fin"));
        m_log.letIn("thief", memberOf("friend", Role::Parent, "h-fin"));
        m_log.remove("ruth", "gran");
        m_log.remove("thief", "gran");
        areIn("dad gran morven ruth2 ");
    }

    /// What the removed one did before counts on, also what became of it.
    void whomARemovedOneHadLetInStays()
    {
        m_log.remove("morven", "ruth");
        areIn("dad gran morven ");
    }

    void twoThatRemoveEachOtherAtTheSameTimeAreBothOut()
    {
        m_log.letIn("morven", memberOf("ruth2", Role::Parent, "h-fin"));
        m_log.allMeet();
        m_log.remove("ruth", "ruth2");
        m_log.remove("ruth2", "ruth");
        areIn("dad gran morven ");
    }

    void removalsInACircleAllStand()
    {
        m_log.letIn("morven", memberOf("ruth2", Role::Parent, "h-fin"));
        m_log.letIn("morven", memberOf("ruth3", Role::Parent, "h-fin"));
        m_log.allMeet();
        m_log.remove("ruth", "ruth2");
        m_log.remove("ruth2", "ruth3");
        m_log.remove("ruth3", "ruth");
        areIn("dad gran morven ");
    }

    /// Whom one of a circle wanted out besides stays: the circle stands, so that counts no more.
    void whoIsInTheCirclePutsNobodyElseOut()
    {
        m_log.letIn("morven", memberOf("ruth2", Role::Parent, "h-fin"));
        m_log.allMeet();
        m_log.remove("ruth", "ruth2");
        m_log.remove("ruth", "gran");
        m_log.remove("ruth2", "ruth");
        areIn("dad gran morven ");
    }

    /// Two circles at once, one of which hangs on the other: what the first voids falls, and frees
    /// whom that had voided.
    void aCircleThatHangsOnAnotherFallsWithIt()
    {
        for (const char *name : {"ruth2", "ruth3"})
            m_log.letIn("morven", memberOf(name, Role::Parent, "h-fin"));
        m_log.allMeet();
        m_log.remove("ruth", "ruth2");
        m_log.remove("ruth2", "ruth");
        m_log.remove("ruth2", "ruth3");
        m_log.remove("ruth3", "gran");
        areIn("dad morven ruth3 ");
    }

    /// Gran may remove nobody; that she says it too tells that she had heard it, and no answer.
    void anAnswerToWhatWasPassedOnFalls()
    {
        m_log.letIn("morven", memberOf("ruth2", Role::Parent, "h-fin"));
        m_log.allMeet();
        m_log.remove("ruth2", "ruth");
        m_log.remove("gran", "ruth");
        m_log.remove("ruth", "ruth2");
        m_log.remove("ruth", "gran");
        areIn("dad gran morven ruth2 ");
    }

    void whereBothWerePassedOnBothAreOut()
    {
        m_log.letIn("morven", memberOf("ruth2", Role::Parent, "h-fin"));
        m_log.allMeet();
        m_log.remove("ruth2", "ruth");
        m_log.remove("ruth", "ruth2");
        m_log.remove("gran", "ruth");
        m_log.remove("dad", "ruth2");
        areIn("dad gran morven ");
    }

    /// One of the two themselves, a guest, a stranger, or whom the removed one let in since.
    void notEverybodyPassesOn()
    {
        m_log.letIn("morven", memberOf("ruth2", Role::Parent, "h-fin"));
        m_log.letIn("ruth2", memberOf("archie", Role::Guest, "h-fin"));
        m_log.allMeet();
        m_log.remove("ruth2", "ruth");
        m_log.remove("ruth", "ruth2");
        m_log.letIn("ruth", memberOf("friend", Role::Caregiver, "h-fin"));
        for (const char *name : {"ruth", "ruth2", "archie", "stranger", "friend"})
            m_log.remove(name, "ruth");
        areIn("archie dad gran morven ");
    }

    /// It had heard of it when it answered, and says so.
    void whatWasPassedOnIsNoShieldAgainstWhatItHadSeen()
    {
        m_log.letIn("morven", memberOf("ruth2", Role::Parent, "h-fin"));
        m_log.allMeet();
        m_log.remove("ruth", "ruth2");
        m_log.say("ruth2", journal::Kind::Met, journal::metFields({{"ruth", 99}}));
        m_log.remove("ruth2", "ruth", 99);
        m_log.remove("gran", "ruth");
        areIn("dad gran morven ruth ");
    }

    void twoParentsRemoveOneDeviceEachAtTheSameTime()
    {
        m_log.letIn("dad", memberOf("tablet", Role::Caregiver, "h-dad"));
        m_log.allMeet();
        m_log.remove("ruth", "gran");
        m_log.remove("dad", "tablet");
        areIn("dad morven ruth ");
    }

    /// Two remove one device and accept different parts of it: the least counts.
    void ofTwoRemovalsTheOneThatAcceptsLessCounts()
    {
        m_log.remove("ruth", "gran", 7);
        m_log.remove("morven", "gran", 3);
        areIn("dad morven ruth ");
        QCOMPARE(m_log.fold().acceptedUpTo({"gran"}, box), std::uint64_t{3});
        QCOMPARE(m_log.foldShuffled(5).acceptedUpTo({"gran"}, box), std::uint64_t{3});
    }

    void aRemovalSaysWhatIsAcceptedByLane()
    {
        m_log.remove("ruth", "gran", 7);
        const Crew crew = m_log.fold();
        const journal::Lane home{journal::LaneKind::Home, "h-fin"};
        QCOMPARE(crew.acceptedUpTo({"gran"}, box), std::uint64_t{7});
        QCOMPARE(crew.acceptedUpTo({"gran"}, home), std::numeric_limits<std::uint64_t>::max());
        QVERIFY(crew.member({"gran"}) != nullptr);
        QVERIFY(!crew.has({"gran"}));
    }

    /// A phone that ignores its own rules can at most waste its breath.
    void aCaregiverTakesNothingFromTheFounderAndRisesNowhere()
    {
        m_log.letIn("gran", memberOf("morven", Role::Caregiver, "h-fin"));
        m_log.letIn("gran", memberOf("gran", Role::Parent, "h-fin"));
        m_log.letIn("gran", memberOf("friend", Role::Parent, "h-fin"));
        areIn("dad gran morven ruth ");
        QCOMPARE(m_log.fold().member({"gran"})->role, Role::Caregiver);
        QCOMPARE(m_log.fold().member({"morven"})->role, Role::Therapist);
    }

    /// Two let the same phone in at the same time, as different people: whom it lets in is in, for
    /// everybody, whichever of the two is heard of first.
    void whatOneLetInAnewLetsInDoesNotHangOnTheOrder()
    {
        m_log.letIn("morven", memberOf("aunt", Role::Parent, "h-fin"));
        m_log.letIn("ruth", memberOf("aunt", Role::Caregiver, "h-fin"));
        m_log.letIn("aunt", memberOf("friend", Role::Caregiver, "h-fin"));
        areIn("aunt dad friend gran morven ruth ");
        for (unsigned seed = 1; seed <= 30; ++seed)
            QCOMPARE(m_log.foldShuffled(seed).member({"aunt"})->role, Role::Caregiver);
    }

    /// Who lies about what it has seen can make each of two the later one: the fold still ends, and
    /// says the same everywhere.
    void liesAboutWhatWasSeenGoRoundInNoCircle()
    {
        const std::map<std::string, std::uint64_t> all{{"ruth", 1000}, {"morven", 1000}};
        for (const char *liar : {"ruth", "morven"})
            m_log.say(liar, journal::Kind::Met, journal::metFields(all));
        m_log.letIn("morven", memberOf("aunt", Role::Caregiver, "h-fin"));
        m_log.letIn("ruth", memberOf("aunt", Role::Parent, "h-fin"));
        areIn("aunt dad gran morven ruth ");
        for (unsigned seed = 1; seed <= 30; ++seed)
            QCOMPARE(m_log.foldShuffled(seed).member({"aunt"})->role, Role::Parent);
    }

    void aFounderWhoIsRemovedIsOut()
    {
        m_log.remove("morven", "morven");
        areIn("dad gran ruth ");
    }
};

QTEST_APPLESS_MAIN(TestCrew)
#include "tst_crew.moc"

#include <QtTest>

#include "core/store/crew_repository.h"
#include "core/sync/leave.h"

#include "tests/support/hostile_crew.h"

using namespace lidlark;
using namespace lidlark::sync;
using namespace lidlark::test;
using journal::Event;
using journal::Kind;

namespace {

const std::string brokenPeg = R"({"count":1,"exception":"broken","item":"pegs"})";

} // namespace

/// Ruth's phone is stolen and Morven removes it. Whoever has it holds its secret and every key up
/// to then, and the storage is theirs too (design.md 9, events.md 10).
class TestHostileRemoved : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<HostileCrew> m_crew;
    std::unique_ptr<CrewPhone> m_rob;    ///< The other parent of the home.
    std::unique_ptr<Forger> m_thief;     ///< In the box's lane, as things stood before the removal.
    std::unique_ptr<Forger> m_homeThief; ///< In the home's.

    /// For everybody who looks. (It is told once alone: what lies there is asked after by itself.)
    void isRefused(const Place &place, const std::string &bytes)
    {
        m_crew->folder.write(place, bytes);
        for (CrewPhone *phone : {&m_crew->morven, m_rob.get(), &m_crew->gran}) {
            const std::string before = stateOf(phone->database);
            const Findings found = m_crew->findingsOf(*phone);
            const bool reads = place == m_thief->nextPlace() || phone != &m_crew->morven;
            QCOMPARE(kindsOf(found, m_crew->ruth.device.id),
                     std::vector<FindingKind>(reads ? 1 : 0, FindingKind::Intruder));
            QCOMPARE(m_crew->look(*phone).received, 0);
            QCOMPARE(stateOf(phone->database), before);
        }
        m_crew->folder.remove(place);
    }
    void remove()
    {
        Post morven = m_crew->morven.post();
        QVERIFY(removeMember(morven, finsBox, m_crew->ruth.device.id).ok());
        othersVisit();
    }
    void othersVisit()
    {
        for (int time = 0; time < 2; ++time) {
            for (CrewPhone *phone : {&m_crew->morven, m_rob.get(), &m_crew->gran})
                (void)m_crew->visit(*phone);
        }
    }
    /// What a thief would like to say in another's name: that Gran has gone.
    [[nodiscard]] Event gransLeaving() const
    {
        Event event = m_thief->event(Kind::MemberRemoved,
                                     crew::fieldsOf(crew::Removal{m_crew->gran.device.id, {}}));
        event.device = m_crew->gran.device.id;
        event.counter = 500;
        return event;
    }

private slots:
    void init()
    {
        m_crew = std::make_unique<HostileCrew>();
        QVERIFY(m_crew->ready);
        m_rob = std::make_unique<CrewPhone>("Rob", store::Role::Parent, "h-fin");
        QVERIFY(m_crew->ruth.letIn(*m_rob, finsBox).ok());
        QVERIFY(m_crew->counts(m_crew->ruth, 5));
        usecase::Workplace ruths = m_crew->ruth.workplace();
        const auto play = usecase::startPlay(ruths, {"Fin", {"dough-forecast"}, {}, {}});
        QVERIFY(play && usecase::putBack(ruths, *play, {}, {}));
        QVERIFY(m_crew->everybodyVisits());
        (void)m_crew->visit(*m_rob);
        QVERIFY(m_crew->everybodyVisits());
        m_thief = std::make_unique<Forger>(m_crew->ruth, finsBox, finsBoxLane);
        m_homeThief = std::make_unique<Forger>(m_crew->ruth, finsBox, finsHomeLane);
    }
    /// It has not heard of it yet: the storage showed it an old state.
    void whatItWroteBeforeItKnewIsRefused()
    {
        const auto before = m_crew->folder.files();
        remove();
        const auto after = m_crew->folder.files();
        m_crew->folder.setBackTo(before);
        QVERIFY(m_crew->counts(m_crew->ruth, 1));
        QCOMPARE(m_crew->visit(m_crew->ruth).out, false);
        const std::string bytes = m_crew->folder.read(m_thief->nextPlace());
        QVERIFY(!bytes.empty());
        m_crew->folder.setBackTo(after);
        isRefused(m_thief->nextPlace(), bytes);
        QCOMPARE(m_crew->pegsOf(m_crew->morven), 5);
        QVERIFY(m_crew->goesOn(m_crew->morven, m_crew->gran));
    }

    /// What it hands on and tells again has no counter that would tell when: it says what it likes.
    void whatItWritesAfterwardsIsRefused()
    {
        remove();
        isRefused(m_thief->nextPlace(),
                  m_thief->sealed({m_thief->event(Kind::Exception, brokenPeg)}));
        for (const std::uint64_t says :
             {std::uint64_t{1}, m_thief->nextCounter() - 1, m_thief->nextCounter()}) {
            auto header = m_thief->header(1, handedOnEvents);
            header.firstCounter = says;
            isRefused(m_thief->nextPlace(),
                      m_thief->sealed(journal::canonicalText(gransLeaving()) + "\n", header));
        }
        Event past = m_thief->event(Kind::Exception, brokenPeg);
        past.counter = 1;
        auto header = m_thief->header(1, toldAgain);
        header.firstCounter = 1;
        isRefused(m_thief->nextPlace(),
                  m_thief->sealed(journal::canonicalText(past) + "\n", header));
        // Morven cannot read the home's lane, so her removal does not say how far it goes there;
        // Rob's phone does.
        isRefused(m_homeThief->nextPlace(),
                  m_homeThief->sealed(
                      {m_homeThief->event(Kind::Reaction, R"({"play":"p-1","text":"was here"})")}));
        QVERIFY(m_crew->goesOn(m_crew->gran, m_crew->morven));
    }

    /// Who has left by itself said with which word; nothing after that is heard.
    void whoHasLeftWritesNothingMore()
    {
        Post ruth = m_crew->ruth.post();
        QVERIFY(leave(ruth, finsBox).ok());
        QVERIFY(m_crew->visit(m_crew->ruth).out);
        othersVisit();
        const Forger after(m_crew->ruth, m_thief->held());
        const auto lie = after.event(Kind::Exception, brokenPeg);
        m_crew->folder.write(after.nextPlace(), after.sealed({lie}));
        const std::string before = stateOf(m_crew->gran.database);
        QCOMPARE(kindsOf(m_crew->look(m_crew->gran).findings, m_crew->ruth.device.id),
                 std::vector{FindingKind::Intruder});
        QCOMPARE(stateOf(m_crew->gran.database), before);
        QVERIFY(m_crew->goesOn(m_crew->gran, m_crew->morven));
    }

    /// A newcomer is given the history, with what Ruth had written before.
    void whatItWroteBeforeIsKept()
    {
        remove();
        QCOMPARE(m_crew->pegsOf(m_crew->morven), 5);
        CrewPhone aunt("Aunt", store::Role::Parent, "h-fin");
        QVERIFY(m_crew->morven.letIn(aunt, finsBox).ok());
        othersVisit();
        (void)m_crew->visit(aunt);
        using enum journal::LaneKind;
        QVERIFY(eventsIn(aunt.database, Home).find("dough-forecast") != std::string::npos);
        QCOMPARE(m_crew->pegsOf(aunt), 5);
        const auto crew = store::CrewRepository(aunt.database).crewOf(finsBox);
        QVERIFY(crew && crew->removed(m_crew->ruth.device.id) && crew->has(aunt.device.id));
        m_crew->folder.write(m_thief->nextPlace(),
                             m_thief->sealed({gransLeaving()}, handedOnEvents));
        QCOMPARE(kindsOf(m_crew->look(aunt).findings, m_crew->ruth.device.id),
                 std::vector{FindingKind::Intruder});
        QVERIFY(m_crew->goesOn(aunt, m_crew->gran));
    }
};

QTEST_APPLESS_MAIN(TestHostileRemoved)
#include "tst_hostile_removed.moc"

#include <QtTest>

#include "tests/support/hostile_crew.h"

#include <random>

using namespace lidlark;
using namespace lidlark::sync;
using namespace lidlark::test;

namespace {

/// Who is in, for a store that heard the events of @p from in another order, a few at a time.
std::string membersInAnotherOrder(CrewPhone &from, unsigned seed)
{
    CrewPhone other("Other", store::Role::Parent, "h-fin");
    other.clock.moveTo(from.clock.nowMs());
    auto events = *store::EventRepository(from.database).all();
    std::mt19937 random(seed);
    std::shuffle(events.begin(), events.end(), random);
    for (std::size_t next = 0; next < events.size();) {
        auto recording = store::Recording::begin(other.database, other.device, other.clock);
        for (const std::size_t end = std::min(next + 1 + random() % 9, events.size()); next < end;
             ++next)
            (void)recording->receive(events[next]);
        (void)recording->commit();
    }
    return membersOf(other);
}

} // namespace

/// Two who remove each other, or one third, at the same time: who holds the same events says the
/// same, in any order (events.md 10).
class TestHostileFights : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<HostileCrew> m_crew;
    std::unique_ptr<CrewPhone> m_rob;

    void visitInTurn(const std::vector<CrewPhone *> &phones)
    {
        for (int time = 0; time < 4; ++time) {
            for (CrewPhone *phone : phones)
                (void)m_crew->visit(*phone);
        }
    }
    static void removes(CrewPhone &one, const CrewPhone &other)
    {
        Post post = one.post();
        QVERIFY(removeMember(post, finsBox, other.device.id).ok());
    }
    void allSayTheSame(const std::vector<CrewPhone *> &phones)
    {
        const std::string members = membersOf(*phones.front());
        for (CrewPhone *phone : phones) {
            QCOMPARE(membersOf(*phone), members);
            const auto refolded = store::Projector(phone->database).matchesRefold();
            QVERIFY(refolded && *refolded);
        }
        for (unsigned seed = 1; seed <= 4; ++seed)
            QCOMPARE(membersInAnotherOrder(*phones.front(), seed), members);
    }

private slots:
    void init()
    {
        m_crew = std::make_unique<HostileCrew>();
        QVERIFY(m_crew->ready);
        m_rob = std::make_unique<CrewPhone>("Rob", store::Role::Parent, "h-fin");
        QVERIFY(m_crew->ruth.letIn(*m_rob, finsBox).ok());
        visitInTurn({&m_crew->ruth, m_rob.get(), &m_crew->morven, &m_crew->gran});
    }

    void twoParentsRemoveEachOther_data()
    {
        QTest::addColumn<bool>("ruthFirst");
        QTest::newRow("Ruth is heard first") << true;
        QTest::newRow("Rob is heard first") << false;
    }
    void twoParentsRemoveEachOther()
    {
        QFETCH(bool, ruthFirst);
        removes(m_crew->ruth, *m_rob);
        removes(*m_rob, m_crew->ruth);
        std::vector<CrewPhone *> phones{&m_crew->ruth, m_rob.get(), &m_crew->morven, &m_crew->gran};
        if (!ruthFirst)
            std::ranges::reverse(phones);
        visitInTurn(phones);
        allSayTheSame({&m_crew->morven, &m_crew->gran});
        const auto crew = store::CrewRepository(m_crew->morven.database).crewOf(finsBox);
        QVERIFY(crew->removed(m_crew->ruth.device.id) && crew->removed(m_rob->device.id));
        for (CrewPhone *phone : {&m_crew->ruth, m_rob.get()}) {
            QVERIFY(m_crew->counts(*phone, 1));
            (void)m_crew->visit(*phone);
            QCOMPARE(m_crew->look(m_crew->morven).received, 0);
            QVERIFY(m_crew->pegsOf(m_crew->morven) != 1);
        }
        QVERIFY(m_crew->goesOn(m_crew->morven, m_crew->gran));
        QVERIFY(m_crew->goesOn(m_crew->gran, m_crew->morven));
    }

    /// Morven has heard less of Gran than Ruth: what both accept counts.
    void twoRemoveAThird()
    {
        QVERIFY(m_crew->counts(m_crew->gran, 4));
        (void)m_crew->visit(m_crew->gran);
        (void)m_crew->visit(m_crew->ruth);
        removes(m_crew->morven, m_crew->gran);
        removes(m_crew->ruth, m_crew->gran);
        visitInTurn({m_rob.get(), &m_crew->ruth, &m_crew->morven});
        allSayTheSame({&m_crew->morven, &m_crew->ruth, m_rob.get()});
        const auto crew = store::CrewRepository(m_rob->database).crewOf(finsBox);
        QVERIFY(crew->removed(m_crew->gran.device.id));
        QCOMPARE(m_crew->pegsOf(m_crew->ruth), m_crew->pegsOf(m_crew->morven));
        QCOMPARE(m_crew->pegsOf(*m_rob), m_crew->pegsOf(m_crew->morven));
        QVERIFY(m_crew->visit(m_crew->gran).out);
        QVERIFY(m_crew->goesOn(m_crew->ruth, m_crew->morven));
        QVERIFY(m_crew->goesOn(m_crew->morven, *m_rob));
    }
};

QTEST_APPLESS_MAIN(TestHostileFights)
#include "tst_hostile_fights.moc"

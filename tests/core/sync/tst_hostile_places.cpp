#include <QtTest>

#include "tests/support/hostile_crew.h"

using namespace lidlark;
using namespace lidlark::sync;
using namespace lidlark::test;
using journal::LaneKind;

/// A storage that puts true segments where they do not belong (design.md 9: reordered, replayed and
/// foreign segments are detected, reported and never applied).
class TestHostilePlaces : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<HostileCrew> m_crew;
    Place m_next; ///< Where Ruth looks for Gran's next word about the box.
    std::string m_nextBytes;

    /// True bytes lie where Ruth looks for Gran's next ones.
    void liesThere(const std::string &bytes)
    {
        QVERIFY(headerOf(bytes).has_value());
        const std::string before = stateOf(m_crew->ruth.database);
        m_crew->folder.write(m_next, bytes);
        const Exchanged report = m_crew->look(m_crew->ruth);
        QCOMPARE(kindsOf(report.findings, m_crew->gran.device.id),
                 std::vector{FindingKind::Damaged});
        QCOMPARE(report.received, 0);
        QCOMPARE(stateOf(m_crew->ruth.database), before);
    }
    std::string lastOf(CrewPhone &phone, const std::string &box, const journal::Lane &lane)
    {
        const Forger forger(phone, box, lane);
        return forger.nextSequence() > 1
                   ? m_crew->folder.read(forger.placeOf(forger.nextSequence() - 1))
                   : std::string();
    }

private slots:
    void initTestCase()
    {
        m_crew = std::make_unique<HostileCrew>();
        QVERIFY(m_crew->ready);
        QVERIFY(m_crew->counts(m_crew->ruth, 5));
        usecase::Workplace grans = m_crew->gran.workplace();
        const auto play = usecase::startPlay(grans, {"Fin", {"dough-forecast"}, {}, {}});
        QVERIFY(play && usecase::putBack(grans, *play, {}, {}));
        QVERIFY(m_crew->counts(m_crew->gran, 4));
        QVERIFY(m_crew->everybodyVisits());
        m_next = Forger(m_crew->gran, finsBox, finsBoxLane).nextPlace();
        QVERIFY(m_crew->counts(m_crew->gran, 3));
        (void)m_crew->visit(m_crew->gran);
        m_nextBytes = m_crew->folder.read(m_next);
        QVERIFY(!m_nextBytes.empty());
    }

    /// Morven's box of Rory lies in the same folder; Gran is in its crew too.
    void ofAnotherCrew()
    {
        usecase::Workplace morvens = m_crew->morven.workplace();
        QVERIFY(usecase::issueBox(morvens, familyOf("Rory")).ok());
        QVERIFY(m_crew->morven.found("b-rory").ok());
        (void)m_crew->morven.exchange("b-rory", m_crew->folder.storage());
        liesThere(lastOf(m_crew->morven, "b-rory", {LaneKind::Box, "b-rory"}));
    }
    void ofAnotherDevice() { liesThere(lastOf(m_crew->ruth, finsBox, finsBoxLane)); }
    void ofAnotherLane() { liesThere(lastOf(m_crew->gran, finsBox, finsHomeLane)); }

    /// Of each key that the box's lane ever had, by whomever.
    void ofAnotherEpoch()
    {
        const auto book = CrewBook::open(m_crew->ruth.post(), finsBox);
        int tried = 0;
        for (const HeldEpoch &held : book->held()) {
            if (held.epoch.lane != finsBoxLane ||
                held.epoch.id == Forger(m_crew->gran, finsBox, finsBoxLane).epoch().id)
                continue;
            for (CrewPhone *phone : m_crew->phones()) {
                const std::string bytes = m_crew->folder.read(Forger(*phone, held).placeOf(1));
                if (bytes.empty())
                    continue;
                liesThere(bytes);
                ++tried;
            }
        }
        QVERIFY(tried > 0);
    }

    /// Gran's own one before, once more: replayed under the next name.
    void anOldOneUnderTheNextName()
    {
        const Forger gran(m_crew->gran, finsBox, finsBoxLane);
        QVERIFY(gran.nextSequence() > 2);
        for (std::uint64_t old = 1; old + 1 < gran.nextSequence(); ++old)
            liesThere(m_crew->folder.read(gran.placeOf(old)));
    }

    void theOneAfterNextUnderTheNextName()
    {
        QVERIFY(m_crew->counts(m_crew->gran, 2));
        m_crew->folder.write(m_next, m_nextBytes);
        const Place after = Forger(m_crew->gran, finsBox, finsBoxLane).nextPlace();
        (void)m_crew->visit(m_crew->gran);
        const std::string afterBytes = m_crew->folder.read(after);
        liesThere(afterBytes);
        m_crew->folder.write(after, m_nextBytes); // and the other way round
        liesThere(afterBytes);
        m_crew->folder.write(after, afterBytes);
    }

    /// Under every name of the folder: what is in its place is taken, and nothing else.
    void theTrueOnesAreTakenAfterwards()
    {
        m_crew->folder.write(m_next, m_nextBytes);
        QVERIFY(m_crew->visit(m_crew->ruth).findings.empty());
        QCOMPARE(m_crew->pegsOf(m_crew->ruth), 2);
        QVERIFY(m_crew->everybodyVisits());
        QVERIFY(m_crew->goesOn(m_crew->ruth, m_crew->gran));
    }
};

QTEST_APPLESS_MAIN(TestHostilePlaces)
#include "tst_hostile_places.moc"

#include <QtTest>

#include "core/box/box_events.h"

#include "tests/support/hostile_crew.h"

using namespace lidlark;
using namespace lidlark::sync;
using namespace lidlark::test;
using journal::Event;
using journal::Kind;

namespace {

std::string pegs(int inBox)
{
    return box::fieldsOf(box::Counted{{"pegs"}, inBox, 0});
}

} // namespace

/// A storage that shows less than there is, or not the same to all (design.md 9: a missing number
/// or a chain that went back is told apart from "not arrived yet").
class TestHostileStorage : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<HostileCrew> m_crew;

    /// Gran says it, and brings it.
    void gransCount(int inBox)
    {
        QVERIFY(m_crew->counts(m_crew->gran, inBox));
        QVERIFY(m_crew->visit(m_crew->gran).shared > 0);
    }
    void isMissing(CrewPhone &phone)
    {
        const std::string before = stateOf(phone.database);
        const Exchanged report = m_crew->look(phone);
        const auto kinds = kindsOf(report.findings, m_crew->gran.device.id);
        QVERIFY(!kinds.empty());
        QCOMPARE(kinds, std::vector<FindingKind>(kinds.size(), FindingKind::Missing));
        QCOMPARE(m_crew->look(phone).received, 0);
        QVERIFY(report.received > 0 || stateOf(phone.database) == before);
        QCOMPARE(m_crew->pegsOf(phone), 5);
    }
    void aDayGoesBy()
    {
        for (CrewPhone *phone : m_crew->phones())
            phone->clock.moveTo(phone->clock.nowMs() + msPerDay);
    }

private slots:
    void init()
    {
        m_crew = std::make_unique<HostileCrew>();
        QVERIFY(m_crew->ready);
        gransCount(5);
        QVERIFY(m_crew->everybodyVisits());
    }

    /// Everybody has seen more than there is now: each brings its own again, and nothing of anybody
    /// is lost for a newcomer.
    void aStorageThatWasSetBack()
    {
        const auto then = m_crew->folder.files();
        gransCount(4);
        QVERIFY(m_crew->everybodyVisits());
        const auto now = m_crew->folder.files();
        m_crew->folder.setBackTo(then);
        aDayGoesBy();
        for (CrewPhone *phone : m_crew->phones()) {
            const auto kinds = kindsOf(m_crew->visit(*phone).findings, phone->device.id);
            QVERIFY(!kinds.empty());
            QCOMPARE(kinds, std::vector<FindingKind>(kinds.size(), FindingKind::WentBack));
            QCOMPARE(m_crew->pegsOf(*phone), 4);
        }
        const auto again = m_crew->folder.files();
        for (const auto &[place, bytes] : now)
            QVERIFY(again.contains(place) && again.at(place) == bytes);
        QVERIFY(m_crew->everybodyVisits());
        QVERIFY(m_crew->goesOn(m_crew->gran, m_crew->morven));
    }

    void oneInTheMiddleIsWithheld()
    {
        const Place middle = Forger(m_crew->gran, finsBox, finsBoxLane).nextPlace();
        gransCount(4);
        gransCount(3);
        const std::string bytes = m_crew->folder.read(middle);
        m_crew->folder.remove(middle);
        aDayGoesBy(); // folders are looked through once a day
        isMissing(m_crew->ruth);
        m_crew->folder.write(middle, bytes);
        QVERIFY(m_crew->everybodyVisits());
        QCOMPARE(m_crew->pegsOf(m_crew->ruth), 3);
    }

    /// Nothing that lies there tells of it, but Morven has seen it and says so.
    void theLastOnesAreWithheld()
    {
        const Place last = Forger(m_crew->gran, finsBox, finsBoxLane).nextPlace();
        gransCount(4);
        (void)m_crew->visit(m_crew->morven);
        const std::string bytes = m_crew->folder.read(last);
        m_crew->folder.remove(last);
        isMissing(m_crew->ruth);
        m_crew->folder.write(last, bytes);
        QVERIFY(m_crew->everybodyVisits());
        QCOMPARE(m_crew->pegsOf(m_crew->ruth), 4);
    }

    /// Ruth is shown one continuation of Gran's chain and Morven another. Whichever Gran goes on
    /// with, it does not follow for the other.
    void twoContinuationsForTwoPhones()
    {
        const Forger gran(m_crew->gran, finsBox, finsBoxLane);
        const std::string other = gran.sealed({gran.event(Kind::Count, pegs(1))});
        gransCount(4);
        const std::string one = m_crew->folder.read(gran.nextPlace());
        (void)m_crew->visit(m_crew->ruth);
        QCOMPARE(m_crew->pegsOf(m_crew->ruth), 4);
        m_crew->folder.write(gran.nextPlace(), other);
        (void)m_crew->look(m_crew->morven);
        QCOMPARE(m_crew->pegsOf(m_crew->morven), 1);
        m_crew->folder.write(gran.nextPlace(), one);
        gransCount(3);
        const std::string before = stateOf(m_crew->morven.database);
        const Exchanged report = m_crew->look(m_crew->morven);
        QCOMPARE(kindsOf(report.findings, m_crew->gran.device.id),
                 std::vector{FindingKind::Broken});
        QCOMPARE(stateOf(m_crew->morven.database), before);
        (void)m_crew->visit(m_crew->ruth);
        QCOMPARE(m_crew->pegsOf(m_crew->ruth), 3);
        QVERIFY(m_crew->goesOn(m_crew->morven, m_crew->ruth)); // the two still hear each other
    }

    /// Other bytes lie under the name of Gran's next segment: she overwrites nothing and says so.
    void herNameIsTaken()
    {
        const Forger gran(m_crew->gran, finsBox, finsBoxLane);
        const std::string other = gran.sealed({gran.event(Kind::Count, pegs(1))});
        m_crew->folder.write(gran.nextPlace(), other);
        QVERIFY(m_crew->counts(m_crew->gran, 4));
        const auto before = m_crew->folder.files();
        const Exchanged report = m_crew->visit(m_crew->gran);
        QVERIFY(report.copied);
        QVERIFY(report.waiting > 0);
        QCOMPARE(m_crew->folder.files(), before);
        QCOMPARE(m_crew->pegsOf(m_crew->gran), 4);
        QVERIFY(m_crew->goesOn(m_crew->morven, m_crew->ruth));
    }
};

QTEST_APPLESS_MAIN(TestHostileStorage)
#include "tst_hostile_storage.moc"

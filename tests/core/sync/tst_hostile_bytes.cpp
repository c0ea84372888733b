#include <QtTest>

#include "core/sync/fetch.h"

#include "tests/support/hostile_crew.h"

using namespace lidlark;
using namespace lidlark::sync;
using namespace lidlark::test;

/// A storage that spoils bytes (design.md 9: half-uploaded or corrupt segments are detected,
/// reported and never applied): every single one of them, each length, and what was never ours.
class TestHostileBytes : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<HostileCrew> m_crew;
    std::optional<CrewBook> m_book; ///< Ruth's.
    Place m_place;
    std::string m_bytes;
    std::string m_before;

    /// What Gran's next segment is found to be; nothing where it is believed, or another is blamed.
    std::optional<FindingKind> found(const std::string &bytes)
    {
        m_crew->folder.write(m_place, bytes);
        Post ruth = m_crew->ruth.post();
        const auto caught = fetchNew(ruth, *m_book, m_crew->folder.storage());
        const bool one =
            caught && caught->findings.size() == 1 && caught->segments.empty() && !caught->trouble;
        const bool named = one && caught->findings.front().device == m_crew->gran.device.id &&
                           caught->findings.front().lane == finsBoxLane &&
                           caught->findings.front().sequence > 0;
        return named ? std::optional(caught->findings.front().kind) : std::nullopt;
    }
    /// A whole exchange over what was found last says the same, and applies nothing.
    void nothingIsApplied()
    {
        const Exchanged report = m_crew->visit(m_crew->ruth);
        QCOMPARE(kindsOf(report.findings, m_crew->gran.device.id),
                 std::vector{FindingKind::Damaged});
        QCOMPARE(report.received, 0);
        QCOMPARE(stateOf(m_crew->ruth.database), m_before);
    }

private slots:
    void initTestCase()
    {
        m_crew = std::make_unique<HostileCrew>();
        QVERIFY(m_crew->ready);
        m_book = *CrewBook::open(m_crew->ruth.post(), finsBox);
        m_before = stateOf(m_crew->ruth.database);
        const Forger gran(m_crew->gran, finsBox, finsBoxLane);
        m_place = gran.nextPlace();
        QVERIFY(m_crew->counts(m_crew->gran, 5));
        QCOMPARE(m_crew->visit(m_crew->gran).shared > 0, true);
        m_bytes = m_crew->folder.read(m_place);
        QVERIFY(m_bytes.size() > headerSize);
    }

    /// The format number alone (byte 7) may be a later one's; what it is is the reader's to learn.
    void aFlipOfAnyByteIsFound()
    {
        for (std::size_t at = 0; at < m_bytes.size(); ++at) {
            std::string flipped = m_bytes;
            flipped[at] = static_cast<char>(~flipped[at]);
            QVERIFY2(found(flipped) == (at == 7 ? FindingKind::Newer : FindingKind::Damaged),
                     qPrintable(QString::number(at)));
        }
        nothingIsApplied();
        qInfo("%zu bytes, each flipped", m_bytes.size());
    }

    void anyOtherLengthIsFound()
    {
        for (std::size_t size = 0; size < m_bytes.size(); ++size)
            QVERIFY2(found(m_bytes.substr(0, size)) == FindingKind::Damaged,
                     qPrintable(QString::number(size)));
        for (const std::size_t more : {1U, 16U, 64U, 1'000'000U})
            QVERIFY(found(m_bytes + std::string(more, '\0')) == FindingKind::Damaged);
        QVERIFY(found(m_bytes + m_bytes) == FindingKind::Damaged);
        nothingIsApplied();
    }

    void whatWasNeverOursIsFound()
    {
        QVERIFY(found("<html><body>Please log in</body></html>") == FindingKind::Damaged);
        QVERIFY(found(std::string(700, '\0')) == FindingKind::Damaged);
        nothingIsApplied();
    }

    /// No state is left behind by any of it: the true bytes are taken as if nothing had been.
    void theTrueBytesAreTakenAfterwards()
    {
        m_crew->folder.write(m_place, m_bytes);
        QVERIFY(m_crew->visit(m_crew->ruth).findings.empty());
        QCOMPARE(m_crew->pegsOf(m_crew->ruth), 5);
        QVERIFY(m_crew->everybodyVisits());
        QVERIFY(m_crew->goesOn(m_crew->ruth, m_crew->gran));
    }
};

QTEST_APPLESS_MAIN(TestHostileBytes)
#include "tst_hostile_bytes.moc"

#include <QTest>

#include "core/sync/chain.h"
#include "segment_samples.h"

using namespace lidlark;
using namespace lidlark::sync;

/// Guards that a chain of segments is followed from its beginning, and that what is late, repeated,
/// copied or cut off is told apart (design.md 9, events.md 2).
class TestChain : public QObject
{
    Q_OBJECT

private:
    /// Three segments, each naming the one before.
    std::vector<std::string> m_bytes;
    std::vector<Segment> m_segments;

    static Chain chainOf(const std::vector<Segment> &segments)
    {
        Chain chain;
        for (const Segment &segment : segments)
            extend(chain, segment);
        return chain;
    }

private slots:
    void initTestCase()
    {
        Link link;
        for (const std::uint64_t first : {1, 3, 4}) {
            const std::uint64_t last = first == 1 ? 2 : first;
            m_bytes.push_back(samples::sealed(link, first, last));
            m_segments.push_back(samples::opened(m_bytes.back()));
            link = {link.sequence + 1, m_segments.back().hash};
        }
    }

    void oneAfterTheOtherIsNext()
    {
        Chain chain;
        for (const Segment &segment : m_segments) {
            QCOMPARE(standingOf(segment, chain), Standing::Next);
            extend(chain, segment);
        }
        QCOMPARE(chain.lastCounter, std::uint64_t{4});
    }

    void whatIsHereIsKnownAndWhatIsLateWaits()
    {
        QCOMPARE(standingOf(m_segments[0], chainOf(m_segments)), Standing::Known);
        QCOMPARE(standingOf(m_segments[2], chainOf({m_segments[0]})), Standing::NotYet);
        QCOMPARE(standingOf(m_segments[1], Chain{}), Standing::NotYet);
    }

    /// A phone that was copied writes its own second segment.
    void aForkIsSeen()
    {
        const Link again{2, m_segments[0].hash};
        const Segment other = samples::opened(samples::sealed(again, 3, 5));
        QCOMPARE(standingOf(other, chainOf({m_segments[0]})), Standing::Next);
        QCOMPARE(standingOf(other, chainOf(m_segments)), Standing::Forked);
    }

    void whatNamesAnotherBeforeItIsBroken()
    {
        const Segment other = samples::opened(samples::sealed({2, samples::filled(7)}, 3, 3));
        QCOMPARE(standingOf(other, chainOf({m_segments[0]})), Standing::Broken);
        const Segment first = samples::opened(samples::sealed({1, samples::filled(7)}, 1, 1));
        QCOMPARE(standingOf(first, Chain{}), Standing::Broken);
        const Segment none = samples::opened(samples::sealed({0, {}}, 1, 1));
        QCOMPARE(standingOf(none, Chain{}), Standing::Broken);
    }

    void eventsThatAreMissingAreMissed()
    {
        const Segment later = samples::opened(samples::sealed({2, m_segments[0].hash}, 4, 4));
        QCOMPARE(standingOf(later, chainOf({m_segments[0]})), Standing::CounterGap);
        const Segment again = samples::opened(samples::sealed({2, m_segments[0].hash}, 2, 2));
        QCOMPARE(standingOf(again, chainOf({m_segments[0]})), Standing::CounterGap);
    }
};

QTEST_APPLESS_MAIN(TestChain)
#include "tst_chain.moc"

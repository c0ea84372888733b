#include <QtTest>

#include "tests/core/box/writing_phone.h"

using namespace lidlark;
using namespace lidlark::test;
using journal::ClockGaps;
using journal::Event;
using Order = journal::Meetings::Order;

using Phone = WritingPhone;

/// Guards events.md 3.4 and 3.5: whose clocks are known to differ, and what may be ordered.
class TestClockGaps : public QObject
{
    Q_OBJECT

private:
    std::vector<Event> m_log;

    static Event at(Phone &phone, std::int64_t ms)
    {
        return phone.say(journal::Kind::Found, fieldsOf(box::Found{eyes, 1}), ms);
    }

private slots:
    void init() { m_log.clear(); }

    void nothingRecordedIsNoGap()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        const Event a = at(ruth, hourMs);
        const Event b = at(gran, hourMs);
        QCOMPARE(ClockGaps(m_log).between(a, b), std::int64_t{0});
        QCOMPARE(ClockGaps(m_log).largest(), std::int64_t{0});
    }

    void oneRecordHoldsBetweenThoseTwoAlone()
    {
        Phone tablet("tablet", m_log);
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        const Event ahead = at(tablet, 2 * dayMs);
        ruth.meets(tablet, hourMs, 2 * dayMs);
        const Event later = at(tablet, 2 * dayMs + hourMs); // written after the record
        const Event ruths = at(ruth, 2 * hourMs);
        const Event grans = at(gran, 2 * hourMs);
        const ClockGaps gaps(m_log);
        QCOMPARE(gaps.between(ahead, ruths), 2 * dayMs);
        QCOMPARE(gaps.between(ruths, ahead), 2 * dayMs);
        QCOMPARE(gaps.between(ahead, grans), std::int64_t{0});
        QCOMPARE(gaps.between(later, ruths), std::int64_t{0});
        QCOMPARE(gaps.largest(), 2 * dayMs);
    }

    void twoRecordsHoldAgainstEverybody()
    {
        Phone tablet("tablet", m_log);
        Phone ruth("ruth", m_log);
        Phone aaron("aaron", m_log);
        Phone gran("gran", m_log);
        const Event ahead = at(tablet, 2 * dayMs);
        ruth.meets(tablet, hourMs, 2 * dayMs);
        aaron.meets(tablet, hourMs, 2 * dayMs - hourMs);
        const Event grans = at(gran, 2 * hourMs);
        QCOMPARE(ClockGaps(m_log).between(ahead, grans), 2 * dayMs);
    }

    void seenBeatsTheClockAndTwoHoursAreNotOrdered()
    {
        Phone ruth("ruth", m_log);
        Phone gran("gran", m_log);
        const Event first = at(gran, 10 * hourMs);
        const Event close = at(ruth, 10 * hourMs + 90 * minuteMs);
        const Event later = at(ruth, 10 * hourMs + 121 * minuteMs);
        ruth.meets(gran, 11 * hourMs);
        const Event knowing = at(ruth, 9 * hourMs); // its clock went back, but it had seen
        const journal::Meetings meetings(m_log);
        QVERIFY(meetings.orderOf(close, first) == Order::Open);
        QVERIFY(meetings.orderOf(later, first) == Order::After);
        QVERIFY(meetings.orderOf(first, later) == Order::Before);
        QVERIFY(meetings.orderOf(knowing, first) == Order::After);
        QVERIFY(meetings.orderOf(first, knowing) == Order::Before);
    }

    /// A hostile record moves nothing: numbers that are none, below zero, beyond any calendar.
    void absurdRecordsAreNotBelieved_data()
    {
        QTest::addColumn<QByteArray>("ahead");
        QTest::newRow("text") << QByteArray(R"("two days")");
        QTest::newRow("below zero") << QByteArray("-5");
        QTest::newRow("beyond the year 3000") << QByteArray("9223372036854775807");
        QTest::newRow("beyond every number") << QByteArray("18446744073709551615");
        QTest::newRow("a list") << QByteArray("[1]");
    }
    void absurdRecordsAreNotBelieved()
    {
        QFETCH(QByteArray, ahead);
        Phone tablet("tablet", m_log);
        Phone ruth("ruth", m_log);
        const Event a = at(tablet, hourMs);
        ruth.say(journal::Kind::Met,
                 R"({"ahead":{"tablet":)" + ahead.toStdString() + R"(},"covered":{"tablet":1}})",
                 hourMs);
        const Event b = at(ruth, hourMs);
        QCOMPARE(ClockGaps(m_log).between(a, b), std::int64_t{0});
    }
};

QTEST_APPLESS_MAIN(TestClockGaps)
#include "tst_clock_gaps.moc"

#include <QtTest>

#include "core/base/instant.h"
#include "core/base/part_of_day.h"

using namespace lidlark;

/// Guards days, parts of day (events.md 11) and the clock of events (events.md 3.3).
class TestInstant : public QObject
{
    Q_OBJECT

private slots:
    /// Milliseconds computed outside the project: CPython 3.11,
    /// int(datetime.fromisoformat(text).timestamp() * 1000).
    void textAndMillisecondsAgree_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<qint64>("ms");
        QTest::newRow("the epoch") << QByteArray("1970-01-01T00:00:00Z") << qint64(0);
        QTest::newRow("day 1 of the island")
            << QByteArray("2027-01-11T18:25:00Z") << qint64(1799691900000);
        QTest::newRow("leap day") << QByteArray("2028-02-29T23:59:59Z") << qint64(1835481599000);
        QTest::newRow("with an offset")
            << QByteArray("2027-07-01T00:30:00+01:00") << qint64(1814398200000);
        QTest::newRow("before the epoch") << QByteArray("1969-12-31T23:59:00Z") << qint64(-60000);
    }

    void textAndMillisecondsAgree()
    {
        QFETCH(QByteArray, text);
        QFETCH(qint64, ms);
        QCOMPARE(msFromText(text.toStdString()).value_or(-1), ms);
        QCOMPARE(msFromText(textFromMs(ms)).value_or(-1), ms);
    }

    void whatIsNoInstantIsRefused_data()
    {
        QTest::addColumn<QByteArray>("text");
        for (const char *text : {"", "2027-01-11", "2027-01-11 18:25:00Z", "2027-13-11T18:25:00Z",
                                 "2027-01-11T24:00:00Z", "2027-01-11T18:60:00Z",
                                 "2027-01-11T18:25:00", "2027-01-11T18:25:00+1:00", "yesterday"})
            QTest::newRow(text) << QByteArray(text);
    }

    void whatIsNoInstantIsRefused()
    {
        QFETCH(QByteArray, text);
        QVERIFY(!msFromText(text.toStdString()));
    }

    /// events.md 11: a day runs 04:00 to 04:00, morning to 12:00, afternoon to 17:00.
    void theDayOfAFamilyBeginsAtFour_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<int>("offset");
        QTest::addColumn<QByteArray>("day");
        QTest::addColumn<int>("part");
        const int morning = 0, afternoon = 1, evening = 2;
        QTest::newRow("03:59 is still yesterday's evening")
            << QByteArray("2027-01-12T03:59:00Z") << 0 << QByteArray("2027-01-11") << evening;
        QTest::newRow("04:00") << QByteArray("2027-01-12T04:00:00Z") << 0
                               << QByteArray("2027-01-12") << morning;
        QTest::newRow("11:59") << QByteArray("2027-01-12T11:59:00Z") << 0
                               << QByteArray("2027-01-12") << morning;
        QTest::newRow("12:00") << QByteArray("2027-01-12T12:00:00Z") << 0
                               << QByteArray("2027-01-12") << afternoon;
        QTest::newRow("17:00") << QByteArray("2027-01-12T17:00:00Z") << 0
                               << QByteArray("2027-01-12") << evening;
        QTest::newRow("the author's offset decides")
            << QByteArray("2027-07-01T03:30:00Z") << 60 << QByteArray("2027-07-01") << morning;
    }

    void theDayOfAFamilyBeginsAtFour()
    {
        QFETCH(QByteArray, text);
        QFETCH(int, offset);
        QFETCH(QByteArray, day);
        QFETCH(int, part);
        const DayPart when = dayPartAt(*msFromText(text.toStdString()), offset);
        QCOMPARE(QByteArray::fromStdString(toText(when.day)), day);
        QCOMPARE(static_cast<int>(when.part), part);
    }

    void theFirstMomentOfAPartLiesInThatPart()
    {
        for (const PartOfDay part :
             {PartOfDay::Morning, PartOfDay::Afternoon, PartOfDay::Evening}) {
            const DayPart when{*dayFrom({2027, 1, 11}), part};
            QVERIFY(dayPartAt(firstMomentMs(when, 60), 60) == when);
            QVERIFY(!(dayPartAt(firstMomentMs(when, 60) - 1, 60) == when));
        }
    }

    /// Kulkarni et al. 2014, figure 5: never below the physical clock, strictly rising.
    void instantsOfOneDeviceStrictlyRise()
    {
        Instant last{};
        for (const std::int64_t physical : {1000, 1000, 900, 1001, 1001, 5, 2000}) {
            const Instant next = nextInstant(physical, last, {});
            QVERIFY(last < next);
            QVERIFY(next.ms >= physical);
            last = next;
        }
    }

    void aClockFarAheadDoesNotSpread()
    {
        const std::int64_t now = *msFromText("2027-01-11T18:00:00Z");
        const Instant twoDaysAhead{now + 2 * 86'400'000LL, 0};
        const Instant anHourAhead{now + 3'600'000LL, 0};
        QCOMPARE(nextInstant(now, {}, twoDaysAhead).ms, now);
        QCOMPARE(nextInstant(now, {}, anHourAhead).ms, anHourAhead.ms);
    }

    void ownFarFutureDoesNotStick()
    {
        const std::int64_t now = *msFromText("2027-01-11T18:00:00Z");
        const Instant own{now + 400 * 86'400'000LL, 7}; // the clock stood in 2028 for a while
        QCOMPARE(nextInstant(now, own, {}).ms, now);
    }
};

QTEST_APPLESS_MAIN(TestInstant)
#include "tst_instant.moc"

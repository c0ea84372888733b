#include <QtTest>

#include "core/base/instant.h"
#include "core/base/part_of_day.h"
#include "core/reminder/remind_when.h"
#include "core/wording/reminder_words.h"

#include <rapidcheck.h>

using namespace lidlark;
using namespace lidlark::reminder;

namespace {

std::int64_t at(const char *text)
{
    const auto ms = msFromText(text);
    return ms ? *ms : -1;
}

Reminder bathAt(int hour, int minute)
{
    Reminder reminder;
    reminder.on = true;
    reminder.minuteOfDay = hour * 60 + minute;
    return reminder;
}

RemindQuestion asked(const Reminder &reminder, const char *now)
{
    return {reminder, at(now), 0, std::nullopt, false};
}

Day january(int day)
{
    return *dayFrom({2027, 1, day});
}

} // namespace

/// Guards job.md F10: at most one quiet reminder a day, off at the start, never of days missed.
/// Days run from 04:00 to 04:00 (events.md 11).
class TestRemindWhen : public QObject
{
    Q_OBJECT

private slots:
    void offAtTheStartAndSilent()
    {
        const RemindAnswer answer = whenToRemind(asked(Reminder{}, "2027-01-11T18:30:00Z"));
        QVERIFY(!answer.due);
        QVERIFY(!answer.nextMs);
    }

    void itsMomentAndNotASecondBefore_data()
    {
        QTest::addColumn<QByteArray>("now");
        QTest::addColumn<bool>("due");
        QTest::addColumn<QByteArray>("next");
        QTest::newRow("a second before")
            << QByteArray("2027-01-11T18:29:59Z") << false << QByteArray("2027-01-11T18:30:00Z");
        QTest::newRow("its moment")
            << QByteArray("2027-01-11T18:30:00Z") << true << QByteArray("2027-01-12T18:30:00Z");
        QTest::newRow("within the hour")
            << QByteArray("2027-01-11T19:29:59Z") << true << QByteArray("2027-01-12T18:30:00Z");
        QTest::newRow("the moment is past, and nothing is said of it")
            << QByteArray("2027-01-11T19:30:00Z") << false << QByteArray("2027-01-12T18:30:00Z");
        QTest::newRow("after midnight it is still the evening of that day")
            << QByteArray("2027-01-12T03:59:59Z") << false << QByteArray("2027-01-12T18:30:00Z");
        QTest::newRow("at four a new day begins")
            << QByteArray("2027-01-12T04:00:00Z") << false << QByteArray("2027-01-12T18:30:00Z");
    }
    void itsMomentAndNotASecondBefore()
    {
        QFETCH(QByteArray, now);
        QFETCH(QByteArray, next);
        const RemindAnswer answer = whenToRemind(asked(bathAt(18, 30), now.constData()));
        QTEST(answer.due, "due");
        QCOMPARE(answer.nextMs, std::optional(at(next.constData())));
    }

    /// A family that works nights: 01:00 belongs to the day before (events.md 11).
    void aMomentAfterMidnightBelongsToTheEvening()
    {
        RemindQuestion question = asked(bathAt(1, 0), "2027-01-12T01:00:00Z");
        QVERIFY(whenToRemind(question).due);
        question.lastSaid = january(11);
        QVERIFY(!whenToRemind(question).due);
        QCOMPARE(whenToRemind(question).nextMs, std::optional(at("2027-01-13T01:00:00Z")));
        question.lastSaid = january(10);
        QVERIFY(whenToRemind(question).due);
    }

    void onceADay()
    {
        RemindQuestion question = asked(bathAt(18, 30), "2027-01-11T18:40:00Z");
        question.lastSaid = january(11);
        QVERIFY(!whenToRemind(question).due);
        question.lastSaid = january(10);
        QVERIFY(whenToRemind(question).due);
    }

    void noneOnADayWithPlay()
    {
        RemindQuestion question = asked(bathAt(18, 30), "2027-01-11T18:40:00Z");
        question.playedToday = true;
        QVERIFY(!whenToRemind(question).due);
        QCOMPARE(whenToRemind(question).nextMs, std::optional(at("2027-01-12T18:30:00Z")));
    }

    /// Set back over midnight, the same evening is not said twice; a clock that once stood in 2100
    /// does not silence the phone for ever.
    void aClockSetBack()
    {
        RemindQuestion question = asked(bathAt(18, 30), "2027-01-11T18:40:00Z");
        question.lastSaid = january(12);
        QVERIFY(!whenToRemind(question).due);
        question.lastSaid = january(13);
        QVERIFY(whenToRemind(question).due);
        question.lastSaid = *dayFrom({2099, 1, 1});
        QVERIFY(whenToRemind(question).due);
    }

    /// The phone's own local time decides, also where it is half an hour beside the full one.
    void localTime()
    {
        RemindQuestion question = asked(bathAt(18, 30), "2027-01-11T13:00:00Z");
        QVERIFY(!whenToRemind(question).due);
        question.offsetMinutes = 5 * 60 + 30;
        QVERIFY(whenToRemind(question).due);
    }

    /// Whatever the moment and the time: asking again at the named instant, on a day without play
    /// or words, is always due there, and never twice on one day.
    void theNextInstantIsOne()
    {
        const bool holds = rc::check("the next instant is due", [] {
            RemindQuestion question;
            question.reminder = bathAt(0, 0);
            question.reminder.minuteOfDay = *rc::gen::inRange(0, 1440);
            question.offsetMinutes = 15 * *rc::gen::inRange(-48, 57);
            question.nowMs =
                at("2027-01-01T00:00:00Z") + *rc::gen::inRange(0, 90 * 1440) * msPerMinute;
            const Day today = dayPartAt(question.nowMs, question.offsetMinutes).day;
            if (*rc::gen::arbitrary<bool>())
                question.lastSaid = today;
            const RemindAnswer answer = whenToRemind(question);
            RC_ASSERT(!(answer.due && question.lastSaid == today));
            RC_ASSERT(*answer.nextMs > question.nowMs);
            RC_ASSERT(*answer.nextMs <= question.nowMs + 2 * msPerDay);
            question.nowMs = *answer.nextMs;
            question.lastSaid.reset();
            RC_ASSERT(whenToRemind(question).due);
        });
        QVERIFY(holds);
    }

    /// D9: a locked screen names nobody.
    void namesNobody_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<bool>("names");
        QTest::newRow("a moment") << QStringLiteral("After the ferry") << false;
        QTest::newRow("the child") << QStringLiteral("After Fin's bath") << true;
        QTest::newRow("in small letters") << QStringLiteral("after fin has eaten") << true;
        QTest::newRow("inside another word") << QStringLiteral("After finishing tea") << false;
        QTest::newRow("one letter that is a name") << QStringLiteral("When A is home") << true;
        QTest::newRow("one letter that is a word") << QStringLiteral("After a walk") << false;
        QTest::newRow("another alphabet") << QStringLiteral("Żanna po kąpieli") << true;
        QTest::newRow("the same letters within a word") << QStringLiteral("poŻanna") << false;
    }
    void namesNobody()
    {
        QFETCH(QString, line);
        const std::vector<std::string> aliases{"Fin", "A", "Żanna"};
        QTEST(namesSomebody(line.toStdString(), aliases), "names");
        Reminder own;
        own.hook = Hook::Own;
        own.ownLine = line.toStdString();
        const std::string said = wording::fill(wording::reminderLine(own, aliases));
        QFETCH(bool, names);
        QCOMPARE(said,
                 names ? "Five minutes to play?" : line.toStdString() + ": five minutes to play?");
    }
};

QTEST_APPLESS_MAIN(TestRemindWhen)
#include "tst_remind_when.moc"

#include <QTest>

#include "core/base/day.h"

using namespace lidlark;

namespace {

Day day(int year, int month, int dayOfMonth)
{
    return *dayFrom({year, month, dayOfMonth});
}

} // namespace

class TestDay : public QObject
{
    Q_OBJECT

private slots:
    void aDateHasItsNumber_data();
    void aDateHasItsNumber();
    void aDateThatDoesNotExistIsNothing_data();
    void aDateThatDoesNotExistIsNothing();
    void textIsAnIsoDateOrNothing_data();
    void textIsAnIsoDateOrNothing();
    void monthsAreCountedInFull_data();
    void monthsAreCountedInFull();
    void theLatestDayWithMonthsIsTheLatest();
};

void TestDay::aDateHasItsNumber_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<int>("number");
    // Source: Python 3.11 datetime, (date(y, m, d) - date(1970, 1, 1)).days.
    QTest::newRow("the first day there is") << "0001-01-01" << -719162;
    QTest::newRow("Gregorian calendar, first day of use") << "1582-10-15" << -141427;
    QTest::newRow("1600 was a leap year") << "1600-02-29" << -135081;
    QTest::newRow("end of 1899") << "1899-12-31" << -25568;
    QTest::newRow("1900 was none: last of February") << "1900-02-28" << -25509;
    QTest::newRow("1900 was none: first of March") << "1900-03-01" << -25508;
    QTest::newRow("the day before the first") << "1969-12-31" << -1;
    QTest::newRow("the first") << "1970-01-01" << 0;
    QTest::newRow("2000 was a leap year") << "2000-02-29" << 11016;
    QTest::newRow("2024 was a leap year") << "2024-02-29" << 19782;
    QTest::newRow("end of 2026") << "2026-12-31" << 20818;
    QTest::newRow("day 1 of the island") << "2027-01-11" << 20829;
    QTest::newRow("2100 will be none: last of February") << "2100-02-28" << 47540;
    QTest::newRow("2100 will be none: first of March") << "2100-03-01" << 47541;
    QTest::newRow("the last day there is") << "9999-12-31" << 2932896;
}

void TestDay::aDateHasItsNumber()
{
    QFETCH(QString, text);
    const auto parsed = dayFromText(text.toStdString());
    QVERIFY(parsed.has_value());
    QTEST(parsed->number, "number");
    QCOMPARE(QString::fromStdString(toText(*parsed)), text);
    QCOMPARE(dayFrom(civilFrom(*parsed)), parsed);
}

void TestDay::aDateThatDoesNotExistIsNothing_data()
{
    QTest::addColumn<int>("year");
    QTest::addColumn<int>("month");
    QTest::addColumn<int>("dayOfMonth");
    // Source: Python 3.11 datetime.date raises ValueError for each of these.
    QTest::newRow("30 February") << 2024 << 2 << 30;
    QTest::newRow("29 February of a common year") << 2023 << 2 << 29;
    QTest::newRow("29 February 1900") << 1900 << 2 << 29;
    QTest::newRow("31 April") << 2027 << 4 << 31;
    QTest::newRow("month 0") << 2027 << 0 << 1;
    QTest::newRow("month 13") << 2027 << 13 << 1;
    QTest::newRow("day 0") << 2027 << 1 << 0;
    QTest::newRow("year 0") << 0 << 1 << 1;
    QTest::newRow("year 10000") << 10000 << 1 << 1;
}

void TestDay::aDateThatDoesNotExistIsNothing()
{
    QFETCH(int, year);
    QFETCH(int, month);
    QFETCH(int, dayOfMonth);
    QVERIFY(!dayFrom({year, month, dayOfMonth}));
}

void TestDay::textIsAnIsoDateOrNothing_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<bool>("isDate");
    // Source: ISO 8601 calendar date, extended format YYYY-MM-DD (also RFC 3339 full-date).
    QTest::newRow("a date") << "2027-01-11" << true;
    QTest::newRow("no leading zero") << "2027-1-11" << false;
    QTest::newRow("basic format") << "20270111" << false;
    QTest::newRow("slashes") << "2027/01/11" << false;
    QTest::newRow("a space in front") << " 2027-01-11" << false;
    QTest::newRow("more behind it") << "2027-01-11T00:00" << false;
    QTest::newRow("a sign") << "+027-01-11" << false;
    QTest::newRow("letters") << "2027-Ja-11" << false;
    QTest::newRow("no such day") << "2027-02-29" << false;
    QTest::newRow("nothing") << "" << false;
}

void TestDay::textIsAnIsoDateOrNothing()
{
    QFETCH(QString, text);
    QTEST(dayFromText(text.toStdString()).has_value(), "isDate");
}

void TestDay::monthsAreCountedInFull_data()
{
    QTest::addColumn<QString>("from");
    QTest::addColumn<QString>("to");
    QTest::addColumn<int>("months");
    // Source: python-dateutil 2.9 relativedelta(to, from), years * 12 + months.
    QTest::newRow("on the day") << "2020-11-11"
                                << "2027-01-11" << 74;
    QTest::newRow("a day short") << "2020-11-12"
                                 << "2027-01-11" << 73;
    QTest::newRow("25 months on the day") << "2024-12-11"
                                          << "2027-01-11" << 25;
    QTest::newRow("three years tomorrow") << "2024-01-12"
                                          << "2027-01-11" << 35;
    QTest::newRow("three years today") << "2024-01-11"
                                       << "2027-01-11" << 36;
    QTest::newRow("three years yesterday") << "2024-01-10"
                                           << "2027-01-11" << 36;
    QTest::newRow("born on 29 February, a year later") << "2024-02-29"
                                                       << "2025-02-28" << 12;
    QTest::newRow("end of June, a day short") << "2022-06-30"
                                              << "2026-06-29" << 47;
    QTest::newRow("first to last of a month") << "2022-06-01"
                                              << "2026-05-31" << 47;
    QTest::newRow("over the new year") << "1999-12-31"
                                       << "2000-01-01" << 0;
    QTest::newRow("the same day") << "2026-03-15"
                                  << "2026-03-15" << 0;
    // Source: Dodds v Walker [1981] UKHL: four months from 30 September 1978 end on 30 January
    // 1979, the date of the same number, and not on the 31st.
    QTest::newRow("four months from 30 September") << "1978-09-30"
                                                   << "1979-01-30" << 4;
    QTest::newRow("a day before that") << "1978-09-30"
                                       << "1979-01-29" << 3;
    // Source: the corresponding date rule as told at alisongrahamwells.wordpress.com (2012): a
    // month from 28, 29, 30 or 31 January ends on 28 February, in a leap year on 29 February.
    QTest::newRow("a month from 28 January") << "2027-01-28"
                                             << "2027-02-28" << 1;
    QTest::newRow("a month from 31 January") << "2027-01-31"
                                             << "2027-02-28" << 1;
    QTest::newRow("not a day before") << "2027-01-31"
                                      << "2027-02-27" << 0;
    QTest::newRow("in a leap year not on the 28th") << "2028-01-31"
                                                    << "2028-02-28" << 0;
    QTest::newRow("in a leap year on the 29th") << "2028-01-31"
                                                << "2028-02-29" << 1;
}

void TestDay::monthsAreCountedInFull()
{
    QFETCH(QString, from);
    QFETCH(QString, to);
    QFETCH(int, months);
    const Day start = *dayFromText(from.toStdString());
    const Day end = *dayFromText(to.toStdString());
    QCOMPARE(wholeMonthsBetween(start, end), months);
    QCOMPARE(wholeMonthsBetween(end, start), -months);
}

void TestDay::theLatestDayWithMonthsIsTheLatest()
{
    // By its definition in the header, for every day of a leap cycle and the ages of this app.
    for (Day today = day(2024, 1, 1); today < day(2028, 2, 1); today = today + 1) {
        for (const int months : {0, 1, 9, 24, 35, 36, 96, 131}) {
            const Day latest = latestDayWithMonths(today, months);
            QCOMPARE(wholeMonthsBetween(latest, today), months);
            QVERIFY(wholeMonthsBetween(latest + 1, today) < months);
        }
    }
}

QTEST_APPLESS_MAIN(TestDay)
#include "tst_day.moc"

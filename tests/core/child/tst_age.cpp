#include <QtTest>

#include "core/child/child.h"

using namespace lidlark;

/// Guards what a first run makes of "five, birthday in March": never an older child than the words
/// allow, since safety reads the youngest possible. Expected days by the calendar of January 2027.
class TestAge : public QObject
{
    Q_OBJECT

private slots:
    void yearsAndMonth_data()
    {
        QTest::addColumn<int>("years");
        QTest::addColumn<int>("month");
        QTest::addColumn<QString>("latestBirth");
        QTest::newRow("month not said: born by this day five years ago") << 5 << 0 << "2022-01-11";
        QTest::newRow("birthday still to come this year") << 5 << 3 << "2021-03-31";
        QTest::newRow("birthday in December, just past") << 5 << 12 << "2021-12-31";
        QTest::newRow("birthday this month, and had it") << 5 << 1 << "2022-01-11";
        QTest::newRow("a baby with a birthday in summer") << 0 << 7 << "2026-07-31";
        QTest::newRow("a baby, month not said") << 0 << 0 << "2027-01-11";
        QTest::newRow("no such month") << 5 << 13 << "2022-01-11";
    }

    void yearsAndMonth()
    {
        QFETCH(int, years);
        QFETCH(int, month);
        const Day today = *dayFrom({2027, 1, 11});
        const child::Age age = child::ageFromYears(years, month, today);
        QTEST(QString::fromStdString(toText(age.latestBirth)), "latestBirth");
        QCOMPARE(age.youngestMonths(today) / 12, years);
    }
};

QTEST_APPLESS_MAIN(TestAge)
#include "tst_age.moc"

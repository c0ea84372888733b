#include <QTest>

#include "core/catalogue/same_numbers.h"

using namespace lidlark;

/// Guards that a translation gives the measures of its English, in whichever digits it writes them.
/// U+06F0 to U+06F9 are the digits of Urdu (The Unicode Standard, chapter 9.2).
class TestSameNumbers : public QObject
{
    Q_OBJECT

private:
    static int findingsFor(const char *english, const char *translated)
    {
        catalogue::Findings findings("sample.yaml");
        catalogue::checkSameNumbers(english, translated, "text", findings);
        return static_cast<int>(findings.take().size());
    }

private slots:
    void measuresAreCompared_data()
    {
        QTest::addColumn<QByteArray>("english");
        QTest::addColumn<QByteArray>("translated");
        QTest::addColumn<int>("findings");
        QTest::newRow("the same") << QByteArray("12 cm, 3 times") << QByteArray("3 razy, 12 cm")
                                  << 0;
        QTest::newRow("another") << QByteArray("12 cm") << QByteArray("21 cm") << 1;
        QTest::newRow("Urdu") << QByteArray("45 mm, 6 cm")
                              << QByteArray("۶ سینٹی میٹر، ۴۵ ملی میٹر") << 0;
        QTest::newRow("Urdu, another") << QByteArray("45 mm") << QByteArray("۵۴ ملی میٹر") << 1;
        QTest::newRow("Urdu, none") << QByteArray("45 mm") << QByteArray("ملی میٹر") << 1;
        QTest::newRow("a part of a millimetre")
            << QByteArray("1.5 cm") << QByteArray("۱٫۵ سینٹی میٹر") << 0;
    }
    void measuresAreCompared()
    {
        QFETCH(QByteArray, english);
        QFETCH(QByteArray, translated);
        QTEST(findingsFor(english.constData(), translated.constData()), "findings");
    }
};

QTEST_APPLESS_MAIN(TestSameNumbers)
#include "tst_same_numbers.moc"

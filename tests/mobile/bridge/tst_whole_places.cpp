#include <QtTest>

#include "mobile/bridge/whole_places.h"

using lidlark::mobile::withWholePlaces;

/// Guards that a Latin name or a number does not turn an Urdu line round (job.md A6).
class TestWholePlaces : public QObject
{
    Q_OBJECT

private slots:
    void aLineThatBeginsWithALatinNameBeginsAtTheRight()
    {
        const QString words = QStringLiteral("%1 کا ڈبا");
        QVERIFY(!words.arg(QStringLiteral("Zoya")).isRightToLeft()); // what it would be
        QVERIFY(withWholePlaces(words).arg(QStringLiteral("Zoya")).isRightToLeft());
    }

    void aLineOfNothingButPlacesBeginsAtTheRight()
    {
        const QString line = withWholePlaces(QStringLiteral("%1: %2"))
                                 .arg(QStringLiteral("کھیل کا آٹا"), QStringLiteral("نرم ہے؟"));
        QVERIFY(line.isRightToLeft());
    }

    /// UAX #9 (Unicode 15), table 4: FSI U+2068, PDI U+2069; section 2.6: RLM U+200F.
    void eachPlaceIsIsolated_data()
    {
        QTest::addColumn<QString>("words");
        QTest::addColumn<QString>("whole");
        QTest::newRow("in the middle")
            << QStringLiteral("ڈبا %1 ہے") << QStringLiteral("ڈبا \u2068%1\u2069 ہے");
        QTest::newRow("first") << QStringLiteral("%2 ہے")
                               << QStringLiteral("\u200F\u2068%2\u2069 ہے");
        QTest::newRow("a count") << QStringLiteral("کل %n") << QStringLiteral("کل \u2068%n\u2069");
        QTest::newRow("a localised number")
            << QStringLiteral("کل %L1") << QStringLiteral("کل \u2068%L1\u2069");
        QTest::newRow("two") << QStringLiteral("ڈبا %1 %2")
                             << QStringLiteral("ڈبا \u2068%1\u2069 \u2068%2\u2069");
        QTest::newRow("a code") << QStringLiteral("فہرست R%1") << QStringLiteral("فہرست R%1");
        QTest::newRow("none") << QStringLiteral("آج") << QStringLiteral("آج");
        QTest::newRow("a share") << QStringLiteral("200 % بڑا") << QStringLiteral("200 % بڑا");
        QTest::newRow("nothing") << QString() << QString();
    }
    void eachPlaceIsIsolated()
    {
        QFETCH(QString, words);
        QFETCH(QString, whole);
        QCOMPARE(withWholePlaces(words), whole);
    }
};

QTEST_APPLESS_MAIN(TestWholePlaces)
#include "tst_whole_places.moc"

#include <QtTest>

#include "core/catalogue/family_lines.h"
#include "core/catalogue/translation.h"
#include "mobile/bridge/stretched.h"
#include "tests/support/phone.h"

using namespace lidlark;
using mobile::stretched;

/// Guards that the language for looking at screens is longer and means the same (job.md A10).
class TestStretched : public QObject
{
    Q_OBJECT

private slots:
    void aTextIsTwoFifthsLonger_data()
    {
        QTest::addColumn<QString>("text");
        for (const char *text : {"Box", "Today", "Right beside", "Nothing is called that.",
                                 "Try one word, such as dough or paper."})
            QTest::newRow(text) << QString::fromUtf8(text);
    }
    void aTextIsTwoFifthsLonger()
    {
        QFETCH(QString, text);
        const qsizetype length = stretched(text).size();
        QVERIFY(length * 10 >= text.size() * 14);
        QVERIFY(length <= text.size() * 14 / 10 + 1);
    }

    void placesAndNumbersStayAsTheyAre()
    {
        const QString text = QStringLiteral("%1 of %2: %n pegs, 60 cm, %L3");
        const QString longer = stretched(text);
        for (const char *kept : {"%1 ", "%2:", "%n ", "60 cm", "%L3"})
            QVERIFY2(longer.contains(QString::fromUtf8(kept)), kept);
        QCOMPARE(longer.count(u'%'), text.count(u'%'));
    }

    void aSentenceEndsAsItDid()
    {
        QVERIFY(stretched(QStringLiteral("Where is it?")).endsWith(u'?'));
        QVERIFY(stretched(QStringLiteral("The box:")).endsWith(u':'));
        QCOMPARE(stretched(QString()), QString());
        QCOMPARE(stretched(QStringLiteral("·")), QStringLiteral("·"));
    }

    void itCanStillBeRead()
    {
        QVERIFY(stretched(QStringLiteral("Put back")).startsWith(QStringLiteral("Pút báck")));
    }

    void theCatalogueDecidesAsBefore()
    {
        const catalogue::Catalogue &english = test::realCatalogue();
        const catalogue::Catalogue longer = stretched(english);
        QCOMPARE(longer.activities().size(), english.activities().size());
        QCOMPARE(longer.items().size(), english.items().size());
        for (const catalogue::Activity &activity : longer.activities()) {
            const catalogue::Activity &entry = *english.activity(activity.id);
            QVERIFY(activity.name != entry.name);
            QVERIFY(activity.items == entry.items);
            QCOMPARE(activity.cautions, entry.cautions);
            QCOMPARE(catalogue::inEnglish(activity).name, entry.name);
            QCOMPARE(catalogue::everyLine(activity).size(), catalogue::everyLine(entry).size());
        }
    }
};

QTEST_APPLESS_MAIN(TestStretched)
#include "tst_stretched.moc"

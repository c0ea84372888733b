#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "tests/tour/other_ways.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark::test;

/// Guards that one evening can be walked, read and hit on every phone we promise (job.md A1, A2:
/// 320 x 568 and up, text to 200 %): no word is cut, lies beside the screen or on another word, and
/// no control is under 48 px.
class TestEveryScreenSize : public QObject
{
    Q_OBJECT

private:
    void walkAndRead(Evening (*walk)(const QDir &, const PhoneInHand &))
    {
        QFETCH(QSize, size);
        QFETCH(double, textScale);
        QFETCH(bool, rightToLeft);
        const QTemporaryDir folder;
        const Evening evening = walk(QDir(folder.path()), {size, textScale, 0, rightToLeft, true});
        QVERIFY2(evening.failed.isEmpty(), qPrintable(evening.failed));
        QVERIFY2(evening.findings.isEmpty(), qPrintable(evening.findings.join(u'\n')));
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }

    void anEveningCanBeWalkedAndRead_data()
    {
        QTest::addColumn<QSize>("size");
        QTest::addColumn<double>("textScale");
        QTest::addColumn<bool>("rightToLeft");
        QTest::newRow("the smallest phone") << QSize(320, 568) << 1.0 << false;
        QTest::newRow("200 % on the smallest") << QSize(320, 568) << 2.0 << false;
        QTest::newRow("right to left") << QSize(360, 640) << 1.0 << true;
        if (!qEnvironmentVariableIsSet("LIDLARK_LONG"))
            return; // the hardest three; packaging/test --long walks the others as well
        QTest::newRow("an ordinary phone") << QSize(360, 740) << 1.0 << false;
        QTest::newRow("a grandparent, 200 %") << QSize(360, 740) << 2.0 << false;
        QTest::newRow("lying down") << QSize(740, 360) << 1.0 << false;
        QTest::newRow("a tablet") << QSize(800, 1200) << 1.0 << false;
    }
    void otherWaysCanBeWalkedAndRead_data() { anEveningCanBeWalkedAndRead_data(); }
    void anEveningCanBeWalkedAndRead() { walkAndRead(walkAnEvening); }
    void otherWaysCanBeWalkedAndRead() { walkAndRead(walkOtherWays); }
};

QTEST_MAIN(TestEveryScreenSize)
#include "tst_every_screen_size.moc"

#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "tests/tour/other_ways.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark::test;

/// Guards that evenings can be walked to their end where the least is in view: every control can be
/// brought under a finger, one after the other (job.md A1). What can be read and hit on each page
/// the audit looks at, in every size (tests/audit).
class TestSmallPhoneOnScreen : public QObject
{
    Q_OBJECT

private:
    void walkOn(Evening (*walk)(const QDir &, const PhoneInHand &))
    {
        QFETCH(QSize, size);
        const QTemporaryDir folder;
        const Evening evening = walk(QDir(folder.path()), {size, 2.0, 0, false, true});
        QVERIFY2(evening.failed.isEmpty(), qPrintable(evening.failed));
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }

    void anEveningCanBeWalked_data()
    {
        QTest::addColumn<QSize>("size");
        QTest::newRow("200 % on the smallest") << QSize(320, 568);
        QTest::newRow("200 % lying down") << QSize(740, 360);
    }
    void otherWaysCanBeWalked_data() { anEveningCanBeWalked_data(); }
    void anEveningCanBeWalked() { walkOn(walkAnEvening); }
    void otherWaysCanBeWalked() { walkOn(walkOtherWays); }
};

QTEST_MAIN(TestSmallPhoneOnScreen)
#include "tst_small_phone_on_screen.moc"

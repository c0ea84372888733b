#include <QtTest>

#include <QtQml/qqmlextensionplugin.h>

#include "tests/audit/hand_check.h"
#include "tests/audit/made_up.h"
#include "tests/tour/hand.h"

Q_IMPORT_QML_PLUGIN(Lidlark_DesignPlugin)

using namespace lidlark;
using namespace lidlark::audit;

/// Guards the measure of job.md A7: it finds what only one of the two hands can do.
class TestHandCheck : public QObject
{
    Q_OBJECT

private slots:
    void initTestCase() { test::wakeAccessibleTree(); }

    void eitherHandIsEnough_data()
    {
        QTest::addColumn<QByteArray>("body");
        QTest::addColumn<QString>("finding");
        const QByteArray foot = "; width: 360; text: 'Play'; otherText: 'Not now' }";
        QTest::newRow("at the foot") << "ActionFoot { y: 540" + foot << QString();
        QTest::newRow("at the head")
            << "ActionFoot { y: 0" + foot << "too high for a thumb: \"Play\"";
        QTest::newRow("turns round")
            << QByteArray(
                   "HeldAdultControl { x: Theme.leftHanded ? 8 : 280; y: 540; text: 'hold' }")
            << QString();
        QTest::newRow("does not turn round")
            << QByteArray("HeldAdultControl { x: 280; y: 540; text: 'hold' }")
            << "on the same side in both hands: \"hold\"";
        QTest::newRow("for one hand alone")
            << QByteArray("HeldAdultControl { visible: !Theme.leftHanded; y: 540; text: 'hold' }")
            << "gone in the other hand: \"hold\"";
    }
    void eitherHandIsEnough()
    {
        QFETCH(QByteArray, body);
        QFETCH(QString, finding);
        const MadeUp made(body, "white", "import Lidlark.Design\n");
        const QStringList found = checkHands(made.window(), made.theme());
        QVERIFY2(finding.isEmpty() ? found.isEmpty() : found.contains(finding),
                 qPrintable(found.join(u'\n')));
    }
};

QTEST_MAIN(TestHandCheck)
#include "tst_hand_check.moc"

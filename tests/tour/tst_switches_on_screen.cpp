#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "mobile/bridge/appearance.h"
#include "tests/tour/open_app.h"
#include "tests/tour/switch_hand.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards that the whole app can be worked with one switch or with two (checkin.md 10, job.md A2,
/// A8): the play, the putting back, what an adult holds, and what has to be written.
class TestSwitchesOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] SwitchHand switches() const { return SwitchHand(m_app->window); }
    [[nodiscard]] mobile::Appearance &appearance() const { return m_app->graph.appearance(); }
    void start()
    {
        m_app.reset();
        m_app = std::make_unique<OpenApp>(m_folder.filePath(QStringLiteral("Fin.lidlark")),
                                          mondayEvening);
    }
    [[nodiscard]] QString route() const
    {
        return m_app->window->findChild<QObject *>(text("screens"))->property("route").toString();
    }
    void go(const char *where) const
    {
        QMetaObject::invokeMethod(m_app->window->findChild<QObject *>(text("screens")), "go",
                                  Q_ARG(QString, text(where)));
        Hand::settle(200);
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void init()
    {
        writeStore(m_folder.filePath(QStringLiteral("Fin.lidlark")), "Fin", "Ruth", "h-fin");
        start();
    }
    void cleanup() { m_app.reset(); }

    void aPlayFromBeginningToEndWithTwoSwitches()
    {
        appearance().setSwitches(2);
        QVERIFY(switches().press(text("Everything")));
        QVERIFY(switches().press(text("Hidden Harbour Lights")));
        QVERIFY(m_app->graph.playInHand().active());
        for (int step = 0; step < 6 && switches().reach(text("Next step")); ++step)
            QVERIFY(switches().press(text("Next step")));
        QVERIFY(switches().press(text("Put back")));
        QVERIFY(switches().press(text("Stick-on eyes")));
        for (int eye = 2; eye <= 6; ++eye) { // the light stays for another press
            QVERIFY2(switches().litName().startsWith(text("Stick-on eyes")),
                     qPrintable(switches().litName()));
            switches().select();
            Hand::settle(700);
        }
        QVERIFY(hand().reads(text("Stick-on eyes: 6 of 6 home")));
        QVERIFY(switches().press(text("All back in the box?")));
        QCOMPARE(route(), text("noticed"));
        QVERIFY(!m_app->graph.playInHand().active());
    }

    /// Nothing of it is timed: the first press asks, the second opens, going on leaves it.
    void whatAnAdultHoldsIsPressedTwice()
    {
        appearance().setSwitches(2);
        go("kite");
        QVERIFY(switches().press(text("adult: hold")));
        QCOMPARE(route(), text("kite"));
        QVERIFY(switches().litName().startsWith(text("adult: hold")));
        switches().onward();
        switches().select(); // out of it again
        QCOMPARE(route(), text("kite"));
        QVERIFY(switches().press(text("adult: hold")));
        switches().select();
        QTRY_COMPARE(route(), text("today"));
    }

    void wordsAreWrittenWithTwoSwitches()
    {
        appearance().setSwitches(2);
        go("everything");
        QVERIFY(switches().press(text("Find by name")));
        for (const char *letter : {"o", "a", "e"}) {
            QVERIFY(switches().press(text(letter)));
            Hand::settle(100);
        }
        QVERIFY(switches().press(text("One letter back")));
        QVERIFY(switches().press(text("r")));
        QVERIFY(switches().press(text("s")));
        QVERIFY(switches().press(text("Done")));
        QVERIFY(hand().find(text("Slow Oars")) != nullptr);
        QVERIFY(hand().find(text("Hidden Harbour Lights")) == nullptr);
    }

    void theKeyThatGoesOnIsLearnt()
    {
        go("settings");
        QVERIFY(hand().tap(text("Two switches")));
        QVERIFY(switches().press(text("The key that moves the ring on")));
        QTest::keyClick(m_app->window, Qt::Key_F7);
        QCOMPARE(appearance().onwardKey(), int(Qt::Key_F7));
        const QQuickItem *before = switches().lit();
        switches().onward(); // Tab does so no longer
        QCOMPARE(switches().lit(), before);
        QTest::keyClick(m_app->window, Qt::Key_F7);
        QVERIFY(switches().lit() != before);
        start();
        QCOMPARE(appearance().onwardKey(), int(Qt::Key_F7));
        QCOMPARE(appearance().switches(), 2);
    }

    void oneSwitchGoesThroughTheWholeAppByItself()
    {
        appearance().setScanSeconds(1);
        go("grown-up");
        appearance().setSwitches(1);
        QTRY_VERIFY_WITH_TIMEOUT(switches().litName().startsWith(text("adult: hold")), 30000);
        QTest::keyClick(m_app->window, Qt::Key_1);
        Hand::settle(700);
        QTRY_VERIFY_WITH_TIMEOUT(switches().litName().startsWith(text("adult: hold")), 30000);
        QTest::mouseClick(m_app->window, Qt::LeftButton, {}, {5, 5}); // a touch anywhere
        QTRY_COMPARE(route(), text("today"));
    }

    void nothingMovesOnWhileTheSwitchIsDown()
    {
        appearance().setScanSeconds(1);
        appearance().setSwitches(1);
        go("crew");
        QTRY_VERIFY_WITH_TIMEOUT(switches().lit() != nullptr, 30000);
        const QString lit = switches().litName();
        QTest::keyPress(m_app->window, Qt::Key_1);
        Hand::settle(2500); // the light would have gone on twice
        QCOMPARE(switches().litName(), lit);
        QTest::keyRelease(m_app->window, Qt::Key_1);
    }

    void escapeStaysAKey()
    {
        appearance().setSwitches(1);
        go("settings");
        QTest::keyClick(m_app->window, Qt::Key_Escape);
        QCOMPARE(route(), text("crew"));
    }

    /// Under a finger the page goes quiet, one key brings the words back, and the place is kept;
    /// under a switch, which needs its time, it does not.
    void aPlayGoesQuietOnlyUnderAFinger()
    {
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY(hand().tap(text("Slow Oars")));
        QObject *play = m_app->window->findChild<QObject *>(text("screens"))
                            ->property("current")
                            .value<QObject *>();
        QQuickItem *next = hand().find(text("Next step"));
        next->forceActiveFocus();
        play->setProperty("quietAfterMs", 50);
        QTRY_VERIFY(play->property("quiet").toBool());
        play->setProperty("quietAfterMs", 10000);
        QCOMPARE(m_app->window->activeFocusItem()->objectName(), text("wake"));
        QTest::keyClick(m_app->window, Qt::Key_Tab); // wakes, and nothing more
        QVERIFY(!play->property("quiet").toBool());
        QCOMPARE(m_app->window->activeFocusItem(), next);
        appearance().setSwitches(1);
        play->setProperty("quietAfterMs", 50);
        Hand::settle(1000);
        QVERIFY(!play->property("quiet").toBool());
    }
};

QTEST_MAIN(TestSwitchesOnScreen)
#include "tst_switches_on_screen.moc"

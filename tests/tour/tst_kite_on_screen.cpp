#include <QtTest>

#include <QRegularExpression>
#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "mobile/bridge/appearance.h"
#include "mobile/bridge/sitting.h"
#include "tests/tour/listening_voice.h"
#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards how a child reaches the kite: words aloud, a touch that lasts, a switch, the corner of
/// the play, paper; and the breaths of the adult beside (checkin.md 3, 5, 6, 10, 11).
class TestKiteOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::shared_ptr<QStringList> m_said;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    QString finsStore() { return m_folder.filePath(QStringLiteral("Fin.lidlark")); }

    void start(bool withVoice)
    {
        m_app.reset();
        m_said = std::make_shared<QStringList>();
        m_app = std::make_unique<OpenApp>(finsStore(), mondayEvening, QString(),
                                          withVoice ? std::make_unique<ListeningVoice>(m_said)
                                                    : nullptr);
    }

    void go(const char *route)
    {
        QMetaObject::invokeMethod(m_app->window->findChild<QObject *>(text("screens")), "go",
                                  Q_ARG(QString, text(route)));
        Hand::settle(200);
    }

    [[nodiscard]] QObject *screen() const
    {
        return m_app->window->findChild<QObject *>(text("screens"))
            ->property("current")
            .value<QObject *>();
    }
    [[nodiscard]] QString picked() const { return screen()->property("picked").toString(); }
    [[nodiscard]] QString question() const
    {
        return m_app->window->findChild<QObject *>(text("question"))->property("text").toString();
    }

    [[nodiscard]] QString litPicture() const
    {
        const QObject *lit =
            m_app->window->findChild<QObject *>(text("scan"))->property("lit").value<QObject *>();
        return lit != nullptr ? lit->objectName() : QString();
    }

    QPoint middleOf(const char *name)
    {
        const QQuickItem *item = hand().find(text(name));
        return item ? item->mapToScene({item->width() / 2, item->height() / 2}).toPoint()
                    : QPoint();
    }
    void touch(const char *name, int ms)
    {
        QTest::mousePress(m_app->window, Qt::LeftButton, {}, middleOf(name));
        Hand::settle(ms);
        QTest::mouseRelease(m_app->window, Qt::LeftButton, {}, middleOf(name));
        Hand::settle();
    }

    void refuseThreeTimes()
    {
        for (const char *evening :
             {"2027-01-08T18:00:00Z", "2027-01-09T18:00:00Z", "2027-01-10T18:00:00Z"})
            OpenApp(finsStore(), evening).graph.sitting().skipKite();
    }

    void beginPlay()
    {
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY(hand().tap(text("Slow Oars")));
        QVERIFY(m_app->graph.playInHand().active());
    }

    void goToTheSmallSkill()
    {
        QVERIFY(hand().tap(text("Kite: not asked")));
        QVERIFY(hand().tap(text("Clouds")));
        Hand::settle(700);
        QVERIFY(hand().hold(text("adult: hold")));
        for (int card = 0; card < 3; ++card) {
            QVERIFY(hand().find(text("Four kite breaths")) == nullptr);
            QVERIFY(hand().tap(text("And then?")));
        }
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void init() { writeStore(finsStore(), "Fin", "Ruth", "h-fin"); }
    void cleanup() { m_app.reset(); }

    /// No dead button: where there is no voice, nothing promises one.
    void aPhoneWithoutAVoicePromisesNone()
    {
        start(false);
        go("kite");
        QVERIFY(hand().find(text("Read aloud")) == nullptr);
        go("settings");
        QVERIFY(hand().find(text("Say the kite's words aloud")) == nullptr);
        QVERIFY(hand().find(text("The kite on paper")) != nullptr);
    }

    void nothingIsSaidUntilSomebodyAsksForIt()
    {
        start(true);
        go("kite");
        QVERIFY(hand().tap(text("Flying steady")));
        QCOMPARE(*m_said, QStringList());
    }

    /// checkin.md 10: every picture speaks by the adult's speaker button.
    void theSpeakerReadsTheQuestionAndTheThreeLines()
    {
        start(true);
        go("kite");
        QVERIFY(hand().tap(text("Read aloud")));
        QCOMPARE(*m_said,
                 QStringList{text("What is your kite doing? Resting. Slow, floppy, or just quiet. "
                                  "Flying steady. Comfy and ready. "
                                  "Tugging and whirling. Wiggly, fizzy, fast.")});
        QCOMPARE(picked(), QString());
    }

    void aLongTouchSaysThePictureAndIsNoAnswer_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("line");
        QTest::newRow("resting") << text("Resting")
                                 << text("Resting. Slow, floppy, or just quiet.");
        QTest::newRow("steady") << text("Flying") << text("Flying steady. Comfy and ready.");
        QTest::newRow("whirling") << text("Tugging")
                                  << text("Tugging and whirling. Wiggly, fizzy, fast.");
        QTest::newRow("clouds") << text("Clouds") << text("Clouds in the way. That's fine.");
        QTest::newRow("bag") << text("In the bag") << text("Kite in the bag. That's fine.");
        QTest::newRow("hand") << text("I need a grown-up") << text("I need a grown-up");
    }
    void aLongTouchSaysThePictureAndIsNoAnswer()
    {
        QFETCH(QString, name);
        QFETCH(QString, line);
        start(true);
        go("kite");
        touch(name.toUtf8().constData(), 1200);
        QCOMPARE(*m_said, QStringList{line});
        QCOMPARE(picked(), QString());
        QCOMPARE(question(), text("What is your kite doing?")); // still here
    }

    /// checkin.md 3.1, where an adult has turned words on in the settings.
    void turnedOnTheQuestionAndTheThanksAreSaid()
    {
        start(true);
        go("settings");
        QVERIFY(hand().tap(text("Say the kite's words aloud")));
        start(true); // kept on the phone
        go("kite");
        QVERIFY(hand().tap(text("Resting")));
        QCOMPARE(*m_said, (QStringList{text("What is your kite doing?"),
                                       text("Thank you for showing me. "
                                            "Every kite does all of these.")}));
    }

    /// checkin.md 7: spoken as well, without a word of better or worse.
    void theTwoKitesAreSaidAfterPlay()
    {
        start(true);
        m_app->graph.appearance().setKiteAloud(true);
        m_app->graph.sitting().showKite(text("whirling"), false);
        m_app->window->findChild<QObject *>(text("screens"))
            ->setProperty("afterActivity", text("slow-oars"));
        go("kite-after");
        QVERIFY(hand().tap(text("Flying")));
        QCOMPARE(*m_said, (QStringList{text("What is your kite doing now?"),
                                       text("Your kite was tugging. Now it is steady. "
                                            "Thank you for showing me.")}));
    }

    void anAdultsGuessIsSilent()
    {
        start(true);
        m_app->graph.appearance().setKiteAloud(true);
        go("guess");
        QVERIFY(hand().find(text("Read aloud")) == nullptr);
        QVERIFY(hand().tap(text("Resting")));
        QCOMPARE(*m_said, QStringList());
    }

    /// checkin.md 3.1: the first time, and every tenth from there.
    void everyKiteIsSaidTheFirstTimeAndEveryTenth()
    {
        start(false);
        mobile::Sitting &sitting = m_app->graph.sitting();
        QList<int> due;
        for (int tap = 1; tap <= 21; ++tap) {
            sitting.showKite(text("steady"), false);
            if (sitting.everyKiteDue())
                due.append(tap);
            sitting.removeKite(); // so that the next is a check-in of its own
        }
        QCOMPARE(due, (QList<int>{1, 11, 21}));
        sitting.showKite(text("steady"), true); // an adult's guess counts for nothing
        sitting.showKite(text("steady"), false);
        QVERIFY(!sitting.everyKiteDue());
    }

    void everyKiteIsShownAfterTheThanks()
    {
        start(false);
        go("kite");
        QVERIFY(hand().tap(text("Clouds")));
        QCOMPARE(question(), text("Thank you for showing me."));
        QTRY_COMPARE_WITH_TIMEOUT(question(), text("Every kite does all of these."), 20000);
    }

    /// checkin.md 10: the home's own least touch, 0 to 300 ms.
    void aTouchShorterThanTheHomeAsksForIsNoAnswer()
    {
        start(false);
        go("settings");
        for (int step = 0; step < 3; ++step)
            QVERIFY(hand().tap(text("Longer touch")));
        QCOMPARE(m_app->graph.appearance().minimumTouchMs(), 300);
        start(false);
        QCOMPARE(m_app->graph.appearance().minimumTouchMs(), 300);
        go("kite");
        QVERIFY(hand().tap(text("Resting"))); // pressed and let go at once
        QCOMPARE(picked(), QString());
        touch("Resting", 600);
        QCOMPARE(picked(), text("resting"));
    }

    /// Two switches: one moves on, one picks.
    void tabMovesAndSpaceOrEnterPicks()
    {
        start(false);
        go("kite");
        hand().find(text("Resting"))->forceActiveFocus();
        QTest::keyClick(m_app->window, Qt::Key_Tab);
        QTest::keyClick(m_app->window, Qt::Key_Space);
        QCOMPARE(picked(), text("steady"));
        Hand::settle(700); // the second of two touches within 600 ms is ignored
        QTest::keyClick(m_app->window, Qt::Key_Tab);
        QTest::keyClick(m_app->window, Qt::Key_Return);
        QCOMPARE(picked(), text("whirling"));
    }

    /// One switch: every picture has its turn, any key picks, and it is said where words are on.
    void oneSwitchWalksThroughAllPicturesAndAnyKeyPicks()
    {
        start(true);
        m_app->graph.appearance().setKiteAloud(true);
        m_app->graph.appearance().setScanSeconds(1);
        go("kite");
        m_app->graph.appearance().setSwitches(1);
        QStringList lit;
        QElapsedTimer since;
        for (since.start(); lit.size() < 6 && since.elapsed() < 60000; Hand::settle(50)) {
            if (lit.isEmpty() || lit.constLast() != litPicture())
                lit.append(litPicture());
        }
        QCOMPARE(
            lit,
            text("kite-resting kite-steady kite-whirling kite-clouds kite-bag hand").split(u' '));
        QVERIFY(m_said->contains(text("Flying steady")));
        QTRY_COMPARE_WITH_TIMEOUT(litPicture(), text("kite-resting"), 10000);
        QTest::keyClick(m_app->window, Qt::Key_J);
        QCOMPARE(picked(), text("resting"));
        QCOMPARE(litPicture(), QString()); // at rest after an answer
        Hand::settle(700);
        QTest::keyClick(m_app->window, Qt::Key_J); // until the switch asks for another round
        QCOMPARE(litPicture(), text("kite-resting"));
        QCOMPARE(picked(), text("resting"));
    }

    void oneSwitchMayBeATapAnywhere()
    {
        start(false);
        m_app->graph.appearance().setScanSeconds(5);
        m_app->graph.appearance().setSwitches(1);
        go("kite");
        QTest::mouseClick(m_app->window, Qt::LeftButton, {}, middleOf("In the bag"));
        QCOMPARE(picked(), text("resting")); // what the ring is on, not what lies under the finger
        Hand::settle(700);
        QVERIFY(hand().hold(text("adult: hold"))); // the adult's way on stays the adult's
        QVERIFY(hand().reads(text("Play with Fin")));
    }

    /// checkin.md 5: from the small skill and nowhere else, four of them, once in a sitting.
    void kiteBreathsEndByThemselvesAndComeOnce()
    {
        start(false);
        goToTheSmallSkill();
        QVERIFY(hand().tap(text("Four kite breaths")));
        QVERIFY(hand().reads(text("Look at the kite")));
        screen()->setProperty("halfMs", 40); // four seconds are for people
        int outs = 0;
        bool out = false;
        QElapsedTimer since;
        for (since.start(); !screen()->property("over").toBool() && since.elapsed() < 60000;
             Hand::settle(4)) {
            const bool now = screen()->property("lettingOut").toBool();
            outs += now && !out ? 1 : 0;
            out = now;
        }
        QCOMPARE(outs, 4);
        QVERIFY(hand().reads(text("That was four. Stay near.")));
        QVERIFY(hand().tap(text("Go on")));
        QVERIFY(hand().reads(text("A small skill")));
        QVERIFY(hand().find(text("Four kite breaths")) == nullptr);
        start(false); // the same evening
        QVERIFY(m_app->graph.sitting().breathsBegun());
    }

    /// Two still pictures and two words, where nothing moves.
    void kiteBreathsStepWhereNothingMoves()
    {
        start(false);
        go("breaths");
        QObject *breaths = screen();
        breaths->setProperty("half", 0);
        QVERIFY(hand().reads(text("string out")));
        QCOMPARE(breaths->property("out").toDouble(), 1.0);
        breaths->setProperty("half", 1);
        QVERIFY(hand().reads(text("string in")));
        QCOMPARE(breaths->property("out").toDouble(), 0.0);
        QVERIFY(hand().tap(text("Stop here"))); // one tap, at any time
        QVERIFY(hand().find(text("Choose something")) != nullptr);
    }

    /// checkin.md 6: after three not-nows it waits in the corner of the play, to be found.
    void theKiteWaitsInTheCornerOfThePlay()
    {
        refuseThreeTimes();
        start(false);
        beginPlay();
        const QQuickItem *corner = hand().find(text("Show the kite"));
        QVERIFY(corner != nullptr);
        QVERIFY(corner->width() >= 48 && corner->height() >= 48);
        QVERIFY(hand().tap(text("Show the kite")));
        QVERIFY(hand().tap(text("Tugging")));
        Hand::settle(700);
        QVERIFY(hand().hold(text("adult: hold")));
        QVERIFY(hand().find(text("Stop here")) != nullptr); // back in the play, not on Today
        QVERIFY(m_app->graph.playInHand().active());
        QCOMPARE(m_app->graph.sitting().kite(), text("whirling"));
    }

    void fromTheCornerAGrownUpLeadsBackToThePlay()
    {
        refuseThreeTimes();
        start(false);
        beginPlay();
        QVERIFY(hand().tap(text("Show the kite")));
        QVERIFY(hand().tap(text("I need a grown-up")));
        QVERIFY(hand().hold(text("adult: hold")));
        QVERIFY(hand().find(text("Stop here")) != nullptr);
    }

    /// No word about refusing, and nothing in the corner of a child who was not asked three times.
    void nobodySaysAWordAboutRefusing()
    {
        start(false);
        beginPlay();
        QVERIFY(hand().find(text("Show the kite")) == nullptr);
        m_app.reset();
        init();
        refuseThreeTimes();
        start(false);
        const QRegularExpression refusing(text("refus|not now|said no|three times|again and again"),
                                          QRegularExpression::CaseInsensitiveOption);
        QCOMPARE(hand().words().filter(refusing), QStringList());
        beginPlay();
        QCOMPARE(hand().words().filter(refusing), QStringList());
        m_app->graph.sitting().setKiteOff(true); // off for good: gone from the corner too
        Hand::settle();
        QVERIFY(hand().find(text("Show the kite")) == nullptr);
    }

    /// checkin.md 11: no name. Two families' cards are the same file, but for its own dates.
    void theCardOnPaperSaysNothingOfWhoseItIs()
    {
        QByteArrayList cards;
        for (const char *child : {"Fin", "Mairead"}) {
            const bool fin = text(child) == text("Fin");
            writeStore(finsStore(), child, fin ? "Ruth" : "Peigi", fin ? "h-fin" : "h-mairead");
            start(false);
            go("settings");
            screen()
                ->findChild<QObject *>(text("paperKiteFile"))
                ->setProperty("folder", m_folder.path());
            QVERIFY(hand().tap(text("The kite on paper")));
            QTRY_VERIFY(hand().reads(text("Saved as \"Kite card.pdf\" in ")));
            QFile file(m_folder.filePath(text("Kite card.pdf")));
            QVERIFY(file.open(QIODevice::ReadOnly));
            QString card = QString::fromLatin1(file.readAll());
            QVERIFY(card.size() > 10000);
            card.remove(QRegularExpression(
                text("(D:\\d{14}[^)]*|\\d{4}-\\d\\d-\\d\\dT[^<]*|uuid:[0-9a-f-]+)")));
            cards.append(card.toLatin1());
        }
        QVERIFY(cards.first() == cards.last());
    }
};

QTEST_MAIN(TestKiteOnScreen)
#include "tst_kite_on_screen.moc"

#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "mobile/bridge/sitting.h"
#include "tests/tour/listening_voice.h"
#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards that invites, steps and put-back lines can be heard, and that a touch ends it (job.md
/// F9). That the phone's own engine is asked in the app's language: tst_phone_voice.
class TestReadAloudOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::shared_ptr<QStringList> m_said;
    mobile::Voice *m_voice = nullptr;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] mobile::PlayInHand &play() const { return m_app->graph.playInHand(); }
    void start(bool withVoice = true)
    {
        m_app.reset();
        const QString file = m_folder.filePath(text("fin.lidlark"));
        writeStore(file, "Fin", "Ruth", "h-fin");
        m_said = std::make_shared<QStringList>();
        std::unique_ptr<ListeningVoice> voice;
        if (withVoice)
            voice = std::make_unique<ListeningVoice>(m_said);
        m_voice = voice.get();
        m_app = std::make_unique<OpenApp>(file, mondayEvening, QString(), std::move(voice));
        QVERIFY(hand().tap(text("Who is here")));
        QVERIFY(hand().tap(text("Nobody else")));
        QVERIFY(hand().tap(text("That's")));
    }
    void go(const char *route)
    {
        QMetaObject::invokeMethod(m_app->window->findChild<QObject *>(text("screens")), "go",
                                  Q_ARG(QString, text(route)));
        Hand::settle(200);
    }
    [[nodiscard]] QStringList heard()
    {
        QStringList said = *m_said;
        m_said->clear();
        m_voice->touchBegan(); // ends what is still being said, as the next touch would
        m_voice->touchEnded();
        return said;
    }
    void begin(const catalogue::Activity &activity)
    {
        go("everything");
        QVERIFY2(hand().tap(QString::fromStdString(activity.name)), activity.name.c_str());
        QVERIFY2(play().active(), activity.name.c_str());
    }
    /// What a voice would be given: each line ends as a sentence.
    static QString asSpoken(const std::vector<std::string> &lines)
    {
        QStringList spoken;
        for (const std::string &line : lines) {
            const QString text = QString::fromStdString(line);
            spoken << (text.endsWith(u'.') || text.endsWith(u'?') || text.endsWith(u'!')
                           ? text
                           : text + u'.');
        }
        return spoken.join(u' ');
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void cleanup() { m_app.reset(); }

    void everyInviteStepAndPutBackLineIsSpoken()
    {
        start();
        int heardWhole = 0;
        for (const char *id : {"hidden-harbour-lights", "slow-oars", "paper-regatta",
                               "doorway-poses", "cup-telegraph", "snip-hedge"}) {
            const catalogue::Activity &activity =
                *m_app->graph.household().catalogue().activity(ActivityId{id});
            begin(activity);
            QVERIFY(hand().tap(text("Read it aloud")));
            QCOMPARE(heard(), QStringList{asSpoken({activity.invite})});
            for (const catalogue::Step &step : activity.steps) {
                QVERIFY(hand().tap(text("Read this step aloud")));
                QCOMPARE(heard(), QStringList{asSpoken({step.text})});
                if (&step != &activity.steps.back())
                    QVERIFY(hand().tap(text("Next step")));
            }
            QVERIFY(play().startPuttingBack());
            go("putback");
            QVERIFY(hand().tap(text("Read these lines aloud")));
            QCOMPARE(heard(), QStringList{asSpoken(activity.putBack)});
            QVERIFY(play().stop() || play().allBack());
            ++heardWhole;
        }
        QCOMPARE(heardWhole, 6);
    }

    void theChildHearsTheThreeInvitations()
    {
        start();
        go("choose");
        QVERIFY(hand().tap(text("Read aloud")));
        const QStringList said = heard();
        QCOMPARE(said.size(), 1);
        QVERIFY(said.front().startsWith(text("You choose. We play together.")));
        int invites = 0;
        for (const catalogue::Activity &activity :
             m_app->graph.household().catalogue().activities())
            invites += said.front().contains(QString::fromStdString(activity.invite)) ? 1 : 0;
        QCOMPARE(invites, 3);
    }

    /// The same sign stops what it began; the next tap begins anew.
    void aTapOnTheSpeakerStopsIt()
    {
        start();
        begin(*m_app->graph.household().catalogue().activity(ActivityId{"slow-oars"}));
        QVERIFY(hand().tap(text("Read this step aloud")));
        QVERIFY(m_voice->speaking());
        QCOMPARE(m_said->size(), 1);
        QVERIFY(hand().tap(text("Read this step aloud")));
        QVERIFY(!m_voice->speaking());
        QCOMPARE(m_said->size(), 1);
        QVERIFY(hand().tap(text("Read this step aloud")));
        QVERIFY(m_voice->speaking());
        QCOMPARE(m_said->size(), 2);
    }

    /// A key touches nothing, so the sign itself has to know.
    void aKeyOnTheSpeakerStopsItToo()
    {
        start();
        begin(*m_app->graph.household().catalogue().activity(ActivityId{"slow-oars"}));
        QQuickItem *speaker = hand().find(text("Read this step aloud"));
        QVERIFY(speaker);
        speaker->forceActiveFocus(Qt::TabFocusReason);
        QTest::keyClick(m_app->window, Qt::Key_Space);
        QVERIFY(m_voice->speaking());
        QTest::keyClick(m_app->window, Qt::Key_Space);
        QVERIFY(!m_voice->speaking());
        QCOMPARE(m_said->size(), 1);
    }

    void aTouchAnywhereStopsIt()
    {
        start();
        begin(*m_app->graph.household().catalogue().activity(ActivityId{"slow-oars"}));
        QVERIFY(hand().tap(text("Read this step aloud")));
        QVERIFY(m_voice->speaking());
        QTest::mouseClick(m_app->window, Qt::LeftButton, {}, QPoint(20, 300));
        QVERIFY(!m_voice->speaking());
        // The touch does its own work, too.
        QVERIFY(hand().tap(text("Read this step aloud")));
        QVERIFY(hand().tap(text("Next step")));
        QVERIFY(!m_voice->speaking());
        QCOMPARE(play().step(), 1);
    }

    void leavingTheScreenStopsIt()
    {
        start();
        begin(*m_app->graph.household().catalogue().activity(ActivityId{"slow-oars"}));
        QVERIFY(hand().tap(text("Read this step aloud")));
        go("box");
        QVERIFY(!m_voice->speaking());
    }

    /// No dead button where there is no voice.
    void withoutAVoiceNothingPromisesOne()
    {
        start(false);
        begin(*m_app->graph.household().catalogue().activity(ActivityId{"slow-oars"}));
        QVERIFY(hand().find(text("Read this step aloud")) == nullptr);
        QVERIFY(hand().find(text("Read it aloud")) == nullptr);
        QVERIFY(hand().reads(text("To begin, say"))); // the adult does
        go("choose");
        QVERIFY(hand().find(text("Read aloud")) == nullptr);
    }
};

QTEST_MAIN(TestReadAloudOnScreen)
#include "tst_read_aloud_on_screen.moc"

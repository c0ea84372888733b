#include <QtTest>

#include <QRegularExpression>

#include <QtPlugin>

#include "mobile/bridge/phone_voice.h"
#include "tests/mobile/bridge/stand_in_engine.h"

Q_IMPORT_PLUGIN(StandInEnginePlugin)

using namespace lidlark::mobile;
using namespace lidlark::test;

/// Guards that the phone's voice promises nothing it has not, and speaks every line alike.
class TestPhoneVoice : public QObject
{
    Q_OBJECT

private slots:
    void init()
    {
        engineRecord() = {};
        engineRecord().locales = {QLocale(QLocale::German, QLocale::Germany),
                                  QLocale(QLocale::English, QLocale::UnitedStates),
                                  QLocale(QLocale::English, QLocale::UnitedKingdom)};
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    }

    void itSpeaksTheAppsLanguage()
    {
        PhoneVoice voice;
        QVERIFY(!voice.available()); // not looked for yet: the first page comes first
        QTRY_VERIFY(voice.available());
        QVERIFY(engineRecord().asked.contains(QStringLiteral("locale en_GB")));
    }

    void anotherCountrysVoiceIsBetterThanNone()
    {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::Ireland));
        PhoneVoice voice;
        QTRY_VERIFY(voice.available());
        QVERIFY(engineRecord().asked.contains(QStringLiteral("locale en_US")));
    }

    void anotherLanguageIsNone()
    {
        QLocale::setDefault(QLocale(QLocale::Urdu, QLocale::Pakistan));
        PhoneVoice voice;
        QTest::qWait(50);
        QVERIFY(!voice.available());
        voice.say(QStringLiteral("Resting."));
        QVERIFY(engineRecord().asked.filter(QStringLiteral("say")).isEmpty());
    }

    void aLanguageWithoutAVoiceIsNone()
    {
        engineRecord().hasVoices = false;
        PhoneVoice voice;
        QTest::qWait(50);
        QVERIFY(!voice.available());
    }

    void anEngineThatIsOutOfOrderIsNone()
    {
        engineRecord().state = QTextToSpeech::Error;
        PhoneVoice voice;
        QTest::qWait(50);
        QVERIFY(!voice.available());
    }

    /// A line takes the place of the one before, and an engine that stays "speaking" for ever is
    /// not waited for.
    void aLineCutsOffTheOneBefore()
    {
        PhoneVoice voice;
        QTRY_VERIFY(voice.available());
        engineRecord().asked.clear();
        voice.say(QStringLiteral("one"));
        voice.say(QStringLiteral("two"));
        QCOMPARE(engineRecord().asked,
                 (QStringList{QStringLiteral("stop"), QStringLiteral("say one"),
                              QStringLiteral("stop"), QStringLiteral("say two")}));
        QVERIFY(voice.available());
    }

    /// checkin.md 3.1: same voice, same loudness, same pace: nobody ever touches them.
    void everyLineIsSaidAlike()
    {
        PhoneVoice voice;
        QTRY_VERIFY(voice.available());
        for (const char *line : {"Resting.", "Flying steady.", "Tugging and whirling."})
            voice.say(QString::fromUtf8(line));
        QCOMPARE(
            engineRecord().asked.filter(QRegularExpression(QStringLiteral("rate|pitch|volume"))),
            QStringList());
    }

    /// An engine may find out only when it is to speak that there is no sound device.
    void anEngineThatFailsLaterIsNoLongerOffered()
    {
        PhoneVoice voice;
        QTRY_VERIFY(voice.available());
        QSignalSpy changes(&voice, &Voice::availableChanged);
        engineRecord().state = QTextToSpeech::Error;
        voice.say(QStringLiteral("one"));
        QVERIFY(!voice.available());
        QCOMPARE(changes.count(), 1);
    }
};

QTEST_GUILESS_MAIN(TestPhoneVoice)
#include "tst_phone_voice.moc"

#include <QtTest>

#include <QDirIterator>
#include <QTemporaryDir>

#include "core/store/device_repository.h"
#include "core/sync/consent.h"
#include "core/sync/sharing_words.h"
#include "core/usecase/keep_box.h"
#include "mobile/bridge/crew_keeper.h"
#include "mobile/bridge/crew_life.h"
#include "mobile/bridge/joining_in.h"
#include "mobile/bridge/letting_in.h"
#include "mobile/bridge/shared_place.h"
#include "mobile/platform/keychain.h"
#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::mobile;
using namespace lidlark::test;

namespace {

/// A keychain of the tests' own, which can be locked.
class StandInKeychain final : public Keychain
{
public:
    Answer read(const QString &name) override
    {
        if (locked)
            return {};
        const auto found = kept.constFind(name);
        return {true, found == kept.constEnd() ? std::nullopt : std::optional(*found)};
    }
    bool keep(const QString &name, const QByteArray &value) override
    {
        if (!locked)
            kept[name] = value;
        return !locked;
    }
    bool forget(const QString &name) override
    {
        kept.remove(name);
        return !locked;
    }

    bool locked = false;
    QMap<QString, QByteArray> kept;
};

/// A phone without screens.
struct Handset {
    StillClock *clock = nullptr;
    std::unique_ptr<Household> household;
    std::unique_ptr<CrewLife> crew;

    Handset(const QString &store, std::shared_ptr<Keychain> keychain = nullptr)
    {
        auto still = std::make_unique<StillClock>(islandTime(11, 18, 25));
        clock = still.get();
        household = std::make_unique<Household>(
            Household::Places{store, QString::fromStdString(sourceDir()) +
                                         QStringLiteral("/assets/catalogue")},
            std::move(still), std::make_unique<SystemEntropy>());
        crew = std::make_unique<CrewLife>(household.get(), std::move(keychain));
    }

    void rest() const { QTRY_VERIFY_WITH_TIMEOUT(!crew->busy(), 10000); }
};

void writeRuthsStore(const QString &file)
{
    auto morven = therapistWith({"Fin"});
    auto database = store::Database::open(file.toStdString());
    const store::Device device{{"d-ruth"}, "Ruth", store::Role::Parent, {"h-fin"}};
    (void)store::DeviceRepository(*database).setDevice(device);
    StillClock clock(islandTime(4, 12, 0));
    SeededEntropy entropy("ruth");
    usecase::Workplace workplace{*database, realCatalogue(), clock, entropy, device};
    (void)usecase::takeEventsFrom(morven->database, workplace,
                                  [](const journal::Lane &) { return true; });
}

} // namespace

/// Guards what the screens of the crew stand on: where keys lie, when a code ends, when a phone
/// shares by itself, and that two phones join over a folder.
class TestCrewLife : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_place;
    QString m_store;

    void choosePlace(Handset &phone) const
    {
        SharedPlace place;
        place.setCrew(phone.crew.get());
        place.setProperty("address", m_place);
        place.tryOut();
        phone.rest();
        QVERIFY2(place.works(), qPrintable(place.found()));
        QVERIFY(phone.crew->agree());
    }
    static void makeCode(Handset &phone, LettingIn &letting, const char *part)
    {
        letting.setProperty("crew", QVariant::fromValue(phone.crew.get()));
        letting.setProperty("part", QString::fromLatin1(part));
        letting.makeCode();
        phone.rest();
        QVERIFY2(letting.stage() == LettingIn::Shown, qPrintable(letting.problem()));
        QCOMPARE(letting.words().size(), 9);
    }

    static void comeIn(LettingIn &letting, JoiningIn &joining)
    {
        joining.setTyped(letting.words().join(u' '));
        QVERIFY(joining.codeReady());
        joining.next(); // the place
        joining.next(); // the name
        joining.next();
        QTRY_COMPARE_WITH_TIMEOUT(letting.stage(), LettingIn::Knocked, 20000);
        QCOMPARE(letting.newcomer(), QStringLiteral("Gran"));
        QCOMPARE(letting.sameWords(), joining.sameWords());
        letting.letIn();
        QTRY_COMPARE_WITH_TIMEOUT(joining.stage(), JoiningIn::In, 20000);
    }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        m_place = m_folder->filePath(QStringLiteral("place"));
        m_store = m_folder->filePath(QStringLiteral("ruth"));
        QVERIFY(QDir().mkpath(m_place));
        writeRuthsStore(m_store);
    }

    void twoPhonesJoinOverAFolder()
    {
        Handset ruth(m_store);
        choosePlace(ruth);
        LettingIn letting;
        makeCode(ruth, letting, "caregiver");
        Handset gran(m_folder->filePath(QStringLiteral("gran")));
        QVERIFY(gran.household->needsWelcome());
        JoiningIn joining;
        joining.setCrew(gran.crew.get());
        joining.setProperty("place", m_place);
        joining.setProperty("person", QStringLiteral("Gran"));
        comeIn(letting, joining);
        QCOMPARE(gran.household->child(), QStringLiteral("Fin"));
        QCOMPARE(gran.household->person(), QStringLiteral("Gran"));
        QCOMPARE(gran.crew->members()->rowCount(), 2);
        QCOMPARE(ruth.crew->members()->rowCount(), 2);
    }

    /// Noticed before it writes; its person and place are known; what it had not shared comes
    /// along.
    void aPhoneThatWasSetBackComesInAnew()
    {
        Handset ruth(m_store);
        choosePlace(ruth);
        const QString store = m_folder->filePath(QStringLiteral("gran"));
        {
            Handset gran(store);
            LettingIn letting;
            JoiningIn joining;
            makeCode(ruth, letting, "caregiver");
            joining.setCrew(gran.crew.get());
            joining.setProperty("place", m_place);
            joining.setProperty("person", QStringLiteral("Gran"));
            comeIn(letting, joining);
        }
        QVERIFY(QFile::copy(store, store + QStringLiteral(".older")));
        {
            Handset gran(store);
            QVERIFY(usecase::countBox(gran.household->workplace(), "Fin", "Gran", {{{"pegs"}, 5}}));
            gran.crew->shareNow();
            gran.rest();
            QVERIFY(!gran.crew->outside());
        }
        QVERIFY(QFile::remove(store));
        QVERIFY(QFile::rename(store + QStringLiteral(".older"), store));
        Handset gran(store);
        const DeviceId before = gran.household->device();
        gran.crew->shareNow();
        gran.rest();
        QVERIFY(gran.crew->outside());
        QCOMPARE(gran.crew->troubles().size(), 1);
        LettingIn letting;
        JoiningIn joining;
        makeCode(ruth, letting, "caregiver");
        joining.setCrew(gran.crew.get());
        comeIn(letting, joining);
        QVERIFY(!gran.crew->outside());
        QVERIFY(gran.household->device() != before);
        gran.crew->shareNow();
        gran.rest();
        QVERIFY2(gran.crew->troubles().isEmpty(), qPrintable(gran.crew->troubles().join(u' ')));
    }

    /// What is still being typed is not wrong yet; what was ended with a space is.
    void helpComesOnceAWordIsEnded()
    {
        Handset gran(m_folder->filePath(QStringLiteral("gran")));
        JoiningIn joining;
        joining.setCrew(gran.crew.get());
        joining.setTyped(QStringLiteral("chess bz"));
        QVERIFY2(joining.help().isEmpty(), qPrintable(joining.help()));
        joining.setTyped(QStringLiteral("chess bzz "));
        QVERIFY(joining.help().contains(QStringLiteral("buzz")));
        QVERIFY(!joining.codeReady());
    }

    /// After its ten minutes nobody comes in by it, and another takes one call.
    void aCodeEnds()
    {
        Handset ruth(m_store);
        choosePlace(ruth);
        LettingIn letting;
        makeCode(ruth, letting, "guest");
        const QStringList words = letting.words();
        ruth.clock->moveTo(ruth.clock->nowMs() + sync::inviteMs);
        QTRY_COMPARE_WITH_TIMEOUT(letting.stage(), LettingIn::Over, 10000);
        QVERIFY(letting.words().isEmpty());
        ruth.rest();
        letting.makeCode();
        ruth.rest();
        QCOMPARE(letting.stage(), LettingIn::Shown);
        QVERIFY(letting.words() != words);
    }

    void aYesNamesWhoAndWhen()
    {
        Handset ruth(m_store);
        QVERIFY(!ruth.crew->agreed()); // off at the start
        QVERIFY(ruth.crew->agree());
        const auto consent = sync::consentIn(ruth.household->workplace().database);
        QVERIFY(consent && *consent);
        QCOMPARE((*consent)->person, std::string("Ruth"));
        QCOMPARE((*consent)->day, ruth.household->today().day);
        QCOMPARE((*consent)->wording, sync::consentWording);
        ruth.crew->withdraw();
        QVERIFY(!ruth.crew->agreed());
    }

    void withoutAYesNothingIsShared()
    {
        Handset ruth(m_store);
        choosePlace(ruth);
        LettingIn letting;
        makeCode(ruth, letting, "caregiver");
        ruth.crew->withdraw();
        ruth.crew->shareNow();
        ruth.rest();
        QCOMPARE(ruth.crew->troubles().size(), 1);
        QDirIterator files(m_place, QDir::Files, QDirIterator::Subdirectories);
        QVERIFY(!files.hasNext());
    }

    /// Not more often than every quarter of an hour, and not where the phone must spare.
    void aPhoneSharesByItselfNowAndThen()
    {
        Handset ruth(m_store);
        choosePlace(ruth);
        LettingIn letting;
        makeCode(ruth, letting, "caregiver");
        bool sparing = true;
        ruth.crew->spareWhile([&sparing](bool) { return sparing; });
        ruth.crew->shareByItself();
        QVERIFY(!ruth.crew->busy());
        sparing = false;
        ruth.crew->shareByItself();
        QVERIFY(ruth.crew->busy());
        ruth.rest();
        ruth.clock->moveTo(ruth.clock->nowMs() + 14 * msPerMinute);
        ruth.crew->shareByItself();
        QVERIFY(!ruth.crew->busy());
        ruth.clock->moveTo(ruth.clock->nowMs() + msPerMinute);
        ruth.crew->shareByItself();
        QVERIFY(ruth.crew->busy());
        ruth.rest();
    }

    void keysLieInTheKeychainWhereOneAnswers()
    {
        const auto keychain = std::make_shared<StandInKeychain>();
        Handset ruth(m_store, keychain);
        choosePlace(ruth);
        LettingIn letting;
        makeCode(ruth, letting, "caregiver");
        QVERIFY(keychain->kept.contains(QStringLiteral("device.d-ruth")));
        QVERIFY(!QFile::exists(m_store + QStringLiteral(".keys")));
        QVERIFY(!ruth.crew->keysInFile());
    }

    /// A keychain that is locked for now is no reason to make other keys.
    void aLockedKeychainIsWaitedFor()
    {
        const auto keychain = std::make_shared<StandInKeychain>();
        Handset ruth(m_store, keychain);
        choosePlace(ruth);
        LettingIn letting;
        makeCode(ruth, letting, "caregiver");
        const auto kept = keychain->kept;
        keychain->locked = true;
        ruth.crew->shareNow();
        ruth.rest();
        QCOMPARE(ruth.crew->troubles().size(), 1);
        QVERIFY(!QFile::exists(m_store + QStringLiteral(".keys")));
        keychain->locked = false;
        ruth.crew->shareNow();
        ruth.rest();
        QVERIFY2(ruth.crew->troubles().isEmpty(), qPrintable(ruth.crew->troubles().join(u' ')));
        QCOMPARE(keychain->kept.value(QStringLiteral("device.d-ruth")),
                 kept.value(QStringLiteral("device.d-ruth")));
    }

    void withoutAKeychainAFileKeepsThem()
    {
        const auto keychain = std::make_shared<StandInKeychain>();
        keychain->locked = true;
        Handset ruth(m_store, keychain);
        choosePlace(ruth);
        LettingIn letting;
        makeCode(ruth, letting, "caregiver");
        QVERIFY(ruth.crew->keysInFile());
        const QFile keys(m_store + QStringLiteral(".keys"));
        QVERIFY(keys.exists());
        QCOMPARE(keys.permissions() & (QFile::ReadGroup | QFile::ReadOther), QFile::Permissions());
    }

    void theStateIsSaidInWords_data()
    {
        QTest::addColumn<bool>("agreed");
        QTest::addColumn<qint64>("shared");
        QTest::addColumn<int>("waiting");
        QTest::addColumn<QString>("words");
        QTest::newRow("off") << false << qint64(islandTime(11, 16, 10)) << 3
                             << "On this phone only";
        QTest::newRow("today") << true << qint64(islandTime(11, 16, 10)) << 0 << "Shared at 16:10";
        QTest::newRow("yesterday")
            << true << qint64(islandTime(10, 16, 10)) << 0 << "Shared yesterday";
        QTest::newRow("this week")
            << true << qint64(islandTime(7, 16, 10)) << 0 << "Shared on Thursday";
        QTest::newRow("long ago") << true << qint64(islandTime(1, 16, 10)) << 0
                                  << "Shared on 1 January";
        QTest::newRow("waiting") << true << qint64(islandTime(11, 16, 10)) << 3
                                 << "3 notes wait on this phone";
        QTest::newRow("one") << true << qint64(islandTime(11, 16, 10)) << 1
                             << "One note waits on this phone";
    }
    void theStateIsSaidInWords()
    {
        QFETCH(bool, agreed);
        QFETCH(qint64, shared);
        QFETCH(int, waiting);
        const sync::SharingState state{true, agreed, shared, waiting};
        QTEST(QString::fromStdString(
                  wording::fill(sync::sentenceFor(state, islandTime(11, 18, 25), 0))),
              "words");
    }
};

QTEST_MAIN(TestCrewLife)
#include "tst_crew_life.moc"

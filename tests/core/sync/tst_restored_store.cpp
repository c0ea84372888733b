#include <QtTest>

#include "core/sync/share.h"

#include "tests/support/hostile_crew.h"
#include "tests/support/memory_keeper.h"

using namespace lidlark;
using namespace lidlark::sync;
using namespace lidlark::test;

/// A store that comes back from a backup, or is found on a second phone (events.md 2, 10): noticed
/// before anything of it is brought, and nothing of either is lost.
class TestRestoredStore : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<HostileCrew> m_crew;
    std::unique_ptr<MemoryKeeper> m_keeper; ///< Gran's keychain.
    HostileFolder::Files m_then;            ///< What lay there when the backup was made.
    QTemporaryDir m_folder;

    [[nodiscard]] std::string path(const char *name) const
    {
        return m_folder.filePath(QString::fromLatin1(name)).toStdString();
    }
    void copyStore(CrewPhone &phone, const std::string &to)
    {
        std::filesystem::remove(to);
        QVERIFY(phone.database.run("VACUUM INTO '" + to + "'").ok());
    }
    static void openStore(CrewPhone &phone, const std::string &from)
    {
        phone.database = *store::Database::open(from);
        QVERIFY(phone.database.run("PRAGMA journal_mode = MEMORY; PRAGMA synchronous = OFF;").ok());
        phone.device = **store::DeviceRepository(phone.database).device();
    }
    /// As the app shares, keychain and all.
    std::optional<Shared> share(CrewPhone &phone, SecretKeeper &keeper)
    {
        auto opened = openPost(phone.database, phone.clock, phone.entropy, keeper);
        if (!opened)
            return std::nullopt;
        auto shared = shareAll(opened->post, opened->match, keeper, m_crew->folder.storage());
        return shared ? std::optional(*std::move(shared)) : std::nullopt;
    }
    /// Found out, nothing brought, and the store as it was.
    void isNoticed(CrewPhone &phone, SecretKeeper &keeper, Match match)
    {
        const auto files = m_crew->folder.files();
        const std::string before = stateOf(phone.database);
        const auto shared = share(phone, keeper);
        QVERIFY(shared.has_value());
        QCOMPARE(int(shared->match), int(match));
        QVERIFY(shared->boxes.empty());
        QCOMPARE(m_crew->folder.files(), files);
        QCOMPARE(stateOf(phone.database), before);
    }
    void goesOnUnderANewId(CrewPhone &phone, SecretKeeper &keeper)
    {
        const DeviceId former = phone.device.id;
        Post post = phone.post();
        QVERIFY(takeNewId(post, keeper).ok());
        phone.device = post.device;
        phone.secret = post.secret;
        QVERIFY(phone.device.id != former);
        crew::Member member = phone.asMember();
        member.was = former;
        Post ruth = m_crew->ruth.post();
        const auto welcome = sync::letIn(ruth, finsBox, member);
        QVERIFY(welcome && settleIn(post, *welcome));
        phone.device = post.device;
        (void)m_crew->visit(m_crew->ruth);
        for (int time = 0; time < 3; ++time) {
            QVERIFY(!m_crew->visit(phone).copied);
            (void)m_crew->visit(m_crew->ruth);
            (void)m_crew->visit(m_crew->morven);
        }
    }
    void everybodyHasHeard(const std::string &words)
    {
        for (CrewPhone *phone : {&m_crew->ruth, &m_crew->morven})
            QVERIFY(eventsIn(phone->database, journal::LaneKind::Box).find(words) !=
                    std::string::npos);
    }
    static void says(CrewPhone &phone, const std::string &words)
    {
        usecase::Workplace workplace = phone.workplace();
        QVERIFY(usecase::sayPlace(workplace, "Fin", "h-fin", words).ok());
    }

private slots:
    void init()
    {
        m_crew = std::make_unique<HostileCrew>();
        QVERIFY(m_crew->ready);
        m_keeper = std::make_unique<MemoryKeeper>();
        m_keeper->secrets["device." + m_crew->gran.device.id.value] =
            hexOf(m_crew->gran.secret.bytes());
        QVERIFY(share(m_crew->gran, *m_keeper).has_value());
        copyStore(m_crew->gran, path("backup"));
        m_then = m_crew->folder.files();
        says(m_crew->gran, "in the attic");
        QCOMPARE(int(share(m_crew->gran, *m_keeper)->match), int(Match::Well));
        (void)m_crew->visit(m_crew->ruth);
        (void)m_crew->visit(m_crew->morven);
        everybodyHasHeard("in the attic");
    }

    void setBackOnItsOwnPhone()
    {
        openStore(m_crew->gran, path("backup"));
        isNoticed(m_crew->gran, *m_keeper, Match::Restored);
        says(m_crew->gran, "in the shed"); // under a number that was used before
        isNoticed(m_crew->gran, *m_keeper, Match::Restored);
        goesOnUnderANewId(m_crew->gran, *m_keeper);
        everybodyHasHeard("in the attic");
        everybodyHasHeard("in the shed");
        QVERIFY(m_crew->goesOn(m_crew->gran, m_crew->morven));
        QVERIFY(m_crew->goesOn(m_crew->morven, m_crew->gran));
        QVERIFY(eventsIn(m_crew->gran.database, journal::LaneKind::Box).find("in the attic") !=
                std::string::npos);
    }

    /// Both are written on; the first goes on as if nothing had been.
    void copiedToASecondPhone()
    {
        CrewPhone second("Another", store::Role::Caregiver, "h-fin");
        second.clock.moveTo(m_crew->gran.clock.nowMs());
        openStore(second, path("backup"));
        says(second, "in the shed");
        says(m_crew->gran, "in the cellar");
        MemoryKeeper others;
        isNoticed(second, others, Match::Strange);
        QCOMPARE(int(share(m_crew->gran, *m_keeper)->match), int(Match::Well));
        goesOnUnderANewId(second, others);
        everybodyHasHeard("in the shed");
        everybodyHasHeard("in the cellar");
        QVERIFY(m_crew->goesOn(m_crew->gran, m_crew->ruth));
        QVERIFY(m_crew->goesOn(second, m_crew->ruth));
    }

    /// The keychain was set back too, or copied along: what lies on the storage tells; and where
    /// the storage hides it, two who have seen it.
    void setBackWithItsKeychain_data()
    {
        QTest::addColumn<bool>("hidden");
        QTest::newRow("what it had shared lies there") << false;
        QTest::newRow("what it had shared is hidden") << true;
    }
    void setBackWithItsKeychain()
    {
        QFETCH(bool, hidden);
        for (CrewPhone *phone : {&m_crew->ruth, &m_crew->morven})
            (void)m_crew->visit(*phone); // and say what they have seen
        const std::string folderOfGran =
            Forger(m_crew->gran, finsBox, finsBoxLane).nextPlace().folder;
        for (const auto &[place, bytes] : m_crew->folder.files()) {
            if (hidden && place.folder == folderOfGran && !m_then.contains(place))
                m_crew->folder.remove(place);
        }
        MemoryKeeper keeper;
        keeper.secrets = m_keeper->secrets;
        openStore(m_crew->gran, path("backup"));
        keeper.secrets["mark." + m_crew->gran.device.id.value] =
            store::DeviceRepository(m_crew->gran.database).localState("sync.mark")->value_or("0");
        if (!hidden)
            says(m_crew->gran, "in the shed");
        const auto files = m_crew->folder.files();
        const auto shared = share(m_crew->gran, keeper);
        QVERIFY(shared && shared->boxes.at(finsBox).copied);
        QCOMPARE(shared->boxes.at(finsBox).shared, 0);
        QCOMPARE(m_crew->folder.files(), files);
        if (hidden)
            says(m_crew->gran, "in the shed");
        goesOnUnderANewId(m_crew->gran, keeper);
        everybodyHasHeard("in the attic");
        everybodyHasHeard("in the shed");
    }
};

QTEST_APPLESS_MAIN(TestRestoredStore)
#include "tst_restored_store.moc"

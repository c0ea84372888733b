#include <QTest>

#include "core/sync/connection_check.h"
#include "core/sync/publish.h"
#include "core/sync/webdav_storage.h"
#include "tests/support/both_dav_servers.h"

using namespace lidlark;
using namespace lidlark::sync;
using lidlark::test::CertificateKind;
using lidlark::test::DavKind;
using lidlark::test::DavServer;

/// Guards that a server whose disk is full says so and loses nothing: real servers on a real disk
/// of a few kilobytes, which the test may have to be root to mount. Where it cannot, it is skipped
/// and ctest says so.
class TestWebdavFullDisk : public QObject
{
    Q_OBJECT

private slots:
    void initTestCase()
    {
        if (!DavServer::isSmallDiskAllowed())
            QSKIP("a small disk cannot be mounted here");
    }

    void whatDoesNotFitHarmsNothing_data() { lidlark::test::addDavKinds(); }
    void whatDoesNotFitHarmsNothing()
    {
        QFETCH(DavKind, kind);
        DavServer server(kind, {CertificateKind::Right, 64});
        QVERIFY2(server.start(), qPrintable(server.problem()));
        WebdavStorage storage(server.address());
        SeededEntropy entropy("full");
        const std::string bytes(20'000, 'f');
        std::vector<std::string> kept;
        std::optional<Trouble> trouble;
        for (int number = 0; number < 8 && !trouble; ++number) {
            const std::string name = std::to_string(number);
            const auto published = publish(storage, {"f0", name}, bytes, entropy);
            trouble = troubleIn(published);
            if (!trouble)
                kept.push_back(name);
        }
        QCOMPARE(trouble, std::optional(Trouble::Full));
        QCOMPARE(kept.size(), std::size_t{3}); // 64 kB hold three of them
        for (const std::string &name : kept)
            QVERIFY(std::get<0>(storage.get({"f0", name})) == bytes);
        auto listed = std::get<0>(storage.list("f0"));
        std::ranges::sort(listed);
        QCOMPARE(listed, kept); // no part stands in the way

        // Room is made, and it goes on.
        QVERIFY(!troubleIn(storage.remove({"f0", kept.front()})));
        QCOMPARE(std::get<Published>(publish(storage, {"f0", "last"}, bytes, entropy)),
                 Published::Done);
    }

    /// A body that lighttpd lays aside while it comes gives 500 there, not 507: it is told as out
    /// of reach, and as loss of nothing all the same.
    void whatIsFarTooLargeIsNotKept_data() { whatDoesNotFitHarmsNothing_data(); }
    void whatIsFarTooLargeIsNotKept()
    {
        QFETCH(DavKind, kind);
        DavServer server(kind, {CertificateKind::Right, 64});
        QVERIFY2(server.start(), qPrintable(server.problem()));
        WebdavStorage storage(server.address());
        SeededEntropy entropy("large");
        const auto published =
            publish(storage, {"f0", "large"}, std::string(900'000, 'l'), entropy);
        QCOMPARE(troubleIn(published),
                 std::optional(kind == DavKind::Apache ? Trouble::Full : Trouble::Unreachable));
        QVERIFY(std::get<0>(storage.list("f0")).empty());
        QCOMPARE(checkConnection(storage, entropy), Connection::Works); // its files are small
    }

    void theConnectionCheckSeesThatThereIsNoRoom()
    {
        DavServer server(DavKind::Lighttpd, {CertificateKind::Right, 4});
        QVERIFY2(server.start(), qPrintable(server.problem()));
        WebdavStorage storage(server.address());
        SeededEntropy entropy("room");
        QVERIFY(!troubleIn(storage.makeFolder("f0")));
        (void)storage.put({"f0", "filling"}, std::string(4096, 'f'));
        QCOMPARE(checkConnection(storage, entropy), Connection::Full);
    }
};

QTEST_APPLESS_MAIN(TestWebdavFullDisk)
#include "tst_webdav_full_disk.moc"

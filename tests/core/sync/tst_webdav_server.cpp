#include <QTest>

#include "core/sync/connection_check.h"
#include "core/sync/publish.h"
#include "core/sync/segment.h"
#include "core/sync/webdav_storage.h"
#include "tests/support/both_dav_servers.h"
#include "tests/support/fault_proxy.h"

#include <fstream>
#include <random>
#include <sstream>

using namespace lidlark;
using namespace lidlark::sync;
using lidlark::test::Asked;
using lidlark::test::DavKind;
using lidlark::test::DavServer;
using lidlark::test::Fault;
using lidlark::test::FaultProxy;

namespace {

const Place place{"f0", "a1"};
using File = std::optional<std::string>;
using Names = std::vector<std::string>;
using Size = std::optional<std::uint64_t>;

std::string onDisk(const DavServer &server, const std::string &path)
{
    std::ifstream file(server.root() / path, std::ios::binary);
    std::ostringstream bytes;
    bytes << file.rdbuf();
    return bytes.str();
}

std::string anyBytes(std::size_t size)
{
    std::mt19937 chance(static_cast<unsigned>(size));
    std::string bytes;
    for (std::size_t at = 0; at < size; ++at)
        bytes += static_cast<char>(chance() % 256);
    return bytes;
}

/// The same folder, by way of a proxy.
ServerAddress through(const FaultProxy &proxy, const DavServer &server, const std::string &folder)
{
    ServerAddress address = server.address();
    address.caFile.clear();
    address.url = proxy.url() + "dav/";
    return folderIn(address, folder);
}

} // namespace

/// Guards that the storage and its protocol do on real servers what they promise: Apache with
/// mod_dav_fs over TLS and lighttpd with mod_webdav, started here, on this machine.
class TestWebdavServer : public QObject
{
    Q_OBJECT

private:
    lidlark::test::BothDavServers m_servers;

    [[nodiscard]] const DavServer &server() const { return m_servers.current(); }

private slots:
    /// Every function is called for each.
    void initTestCase_data() { lidlark::test::addDavKinds(); }
    void initTestCase() { m_servers.start(); }

    void aFolderOnAServerKeepsFiles()
    {
        WebdavStorage storage(folderIn(server().address(), "keeps"));
        QVERIFY(std::get<Names>(storage.list("f0")).empty()); // neither folder is there yet
        QVERIFY(!troubleIn(storage.makeFolder("f0")));
        QVERIFY(!troubleIn(WebdavStorage(folderIn(server().address(), "keeps")).makeFolder("f0")));
        QCOMPARE(std::get<Size>(storage.sizeOf(place)), Size());
        QCOMPARE(std::get<File>(storage.get(place)), File());

        const std::string bytes = anyBytes(30'000);
        QVERIFY(!troubleIn(storage.put({"f0", "a1.part"}, bytes)));
        QCOMPARE(std::get<Size>(storage.sizeOf({"f0", "a1.part"})), Size(30'000));
        QCOMPARE(std::get<Storage::Moved>(storage.move({"f0", "a1.part"}, "a1")),
                 Storage::Moved::Done);
        QCOMPARE(std::get<File>(storage.get(place)), File(bytes));
        QVERIFY(onDisk(server(), "keeps/f0/a1") == bytes);

        QVERIFY(!troubleIn(storage.put({"f0", "a2.part"}, "other")));
        QCOMPARE(std::get<Storage::Moved>(storage.move({"f0", "a2.part"}, "a1")),
                 Storage::Moved::Taken);
        QVERIFY(onDisk(server(), "keeps/f0/a1") == bytes);
        Names names = std::get<Names>(storage.list("f0"));
        std::ranges::sort(names);
        QCOMPARE(names, (Names{"a1", "a2.part"}));
        QCOMPARE(std::get<Names>(storage.list("")), Names{"f0"});

        QVERIFY(!troubleIn(storage.remove({"f0", "a2.part"})));
        QVERIFY(!troubleIn(storage.remove({"f0", "a2.part"})));
        QCOMPARE(std::get<Names>(storage.list("f0")), Names{"a1"});
        QVERIFY(!std::filesystem::exists(server().root() / "keeps/f0/a2.part"));
    }

    void theLargestSegmentGoesThere()
    {
        WebdavStorage storage(folderIn(server().address(), "largest"));
        SeededEntropy entropy("largest");
        const std::string bytes = anyBytes(largestSegment);
        QCOMPARE(std::get<Published>(publish(storage, place, bytes, entropy)), Published::Done);
        QVERIFY(std::get<File>(storage.get(place)) == bytes);
        QVERIFY(onDisk(server(), "largest/f0/a1") == bytes);
    }

    /// FORMAT.md, 2: folders and files have names of 64 letters; and those they have while they are
    /// written are longer.
    void aFileWithANameAsLongAsTheyAreGoesThere()
    {
        WebdavStorage storage(folderIn(server().address(), "names"));
        SeededEntropy entropy("names");
        const Place real{std::string(64, 'f'), std::string(64, 'a')};
        const auto published = publish(storage, real, "one", entropy);
        QVERIFY(!troubleIn(published));
        QVERIFY(std::get<File>(storage.get(real)) == "one");
    }

    void theConnectionCheckPasses()
    {
        WebdavStorage storage(folderIn(server().address(), "check"));
        SeededEntropy entropy("check");
        QCOMPARE(checkConnection(storage, entropy), Connection::Works);
        QCOMPARE(checkConnection(storage, entropy), Connection::Works); // a second time as well
        const Names left = std::get<Names>(storage.list(""));
        QCOMPARE(left.size(), std::size_t{1});
        QVERIFY(std::get<Names>(storage.list(left.front())).empty());
    }

    /// Two folders that are missing are a wrong address, and one is a new crew's.
    void onlyOneFolderIsMade()
    {
        const ServerAddress missing = folderIn(folderIn(server().address(), "no"), "such");
        WebdavStorage storage(missing);
        QCOMPARE(troubleIn(storage.makeFolder("f0")), std::optional(Trouble::Odd));
        QVERIFY(!std::filesystem::exists(server().root() / "no"));
        SeededEntropy entropy("missing");
        QCOMPARE(checkConnection(storage, entropy), Connection::NoStorage);
    }

    void aFolderThatWasTakenAwayIsMadeAgain()
    {
        WebdavStorage storage(folderIn(server().address(), "again"));
        SeededEntropy entropy("again");
        QCOMPARE(std::get<Published>(publish(storage, place, "one", entropy)), Published::Done);
        std::filesystem::remove_all(server().root() / "again");
        QVERIFY(troubleIn(publish(storage, place, "one", entropy)));
        QCOMPARE(std::get<Published>(publish(storage, place, "one", entropy)), Published::Done);
        QCOMPARE(onDisk(server(), "again/f0/a1"), std::string("one"));
    }

    void aWrongPasswordIsRefused()
    {
        ServerAddress address = folderIn(server().address(), "refused");
        address.password = "kept under the mat";
        WebdavStorage storage(address);
        SeededEntropy entropy("refused");
        QCOMPARE(troubleIn(publish(storage, place, "one", entropy)),
                 std::optional(Trouble::Refused));
        QVERIFY(!std::filesystem::exists(server().root() / "refused"));
    }

    /// RFC 4918, 6 and 9.10: another program holds the file.
    void aLockedFileWaits()
    {
        const ServerAddress address = folderIn(server().address(), "locked");
        WebdavStorage storage(address);
        QVERIFY(!troubleIn(storage.makeFolder("f0")));
        QVERIFY(!troubleIn(storage.put(place, "one")));
        HttpClient other(address);
        const std::string lock = "<lockinfo xmlns='DAV:'><lockscope><exclusive/></lockscope>"
                                 "<locktype><write/></locktype></lockinfo>";
        const HttpAnswer held = other.ask({"LOCK",
                                           address.url + "f0/a1",
                                           {"Content-Type: application/xml", "Timeout: Second-600"},
                                           lock});
        QCOMPARE(held.status, 200L);
        QCOMPARE(troubleIn(storage.put(place, "two")), std::optional(Trouble::Locked));
        QCOMPARE(troubleIn(storage.move(place, "a2")), std::optional(Trouble::Locked));
        QCOMPARE(troubleIn(storage.remove(place)), std::optional(Trouble::Locked));
        QCOMPARE(std::get<File>(storage.get(place)), File("one"));
        (void)other.ask(
            {"UNLOCK", address.url + "f0/a1", {"Lock-Token: " + held.header("lock-token")}, {}});
        QCOMPARE(std::get<Storage::Moved>(storage.move(place, "a2")), Storage::Moved::Done);
    }

    /// RFC 9110, 14.2, by a real server.
    void aSegmentThatBrokeOffGoesOn()
    {
        bool isBroken = true;
        FaultProxy proxy(server().plainPort(), [&isBroken](const Asked &asked) {
            Fault fault;
            if (asked.method == "GET" && std::exchange(isBroken, false)) {
                fault.kind = Fault::Kind::CutAnswer;
                fault.bytes = 500'000;
            }
            return fault;
        });
        WebdavStorage direct(folderIn(server().address(), "resumed"));
        const std::string bytes = anyBytes(900'000);
        QVERIFY(!troubleIn(direct.makeFolder("f0")));
        QVERIFY(!troubleIn(direct.put(place, bytes)));
        WebdavStorage storage(through(proxy, server(), "resumed"));
        QCOMPARE(troubleIn(storage.get(place)), std::optional(Trouble::Unreachable));
        QVERIFY(std::get<File>(storage.get(place)) == bytes);
        const std::string range = proxy.asked().back().header("Range");
        QVERIFY2(range.starts_with("bytes=499"), range.c_str()); // what is missing are the headers
    }
};

QTEST_APPLESS_MAIN(TestWebdavServer)
#include "tst_webdav_server.moc"

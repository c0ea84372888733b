#include <QTest>

#include "stand_in.h"

using namespace lidlark::sync;
using namespace samples;

namespace {

std::optional<Trouble> troubleOfAll(Storage &storage)
{
    const auto trouble = troubleIn(storage.get(place));
    const bool isOfAll = troubleIn(storage.makeFolder("f0")) == trouble &&
                         troubleIn(storage.list("f0")) == trouble &&
                         troubleIn(storage.sizeOf(place)) == trouble &&
                         troubleIn(storage.put(place, "bytes")) == trouble &&
                         troubleIn(storage.remove(place)) == trouble;
    return isOfAll ? trouble : std::nullopt;
}

} // namespace

/// Guards what a server is asked, in which words, and what is made of each thing it may say: a
/// stand-in of the test's own, on this machine.
class TestWebdavCalls : public QObject
{
    Q_OBJECT

private slots:
    /// RFC 9110, 15; RFC 4918, 11; RFC 6585, 4.
    void everyStatusHasItsTrouble_data()
    {
        QTest::addColumn<int>("status");
        QTest::addColumn<int>("trouble");
        const auto row = [](int status, Trouble trouble) {
            QTest::addRow("%d", status) << status << static_cast<int>(trouble);
        };
        for (const int status : {401, 403, 407})
            row(status, Trouble::Refused);
        for (const int status : {408, 425, 429, 500, 502, 503, 504, 599})
            row(status, Trouble::Unreachable);
        for (const int status : {206, 303, 400, 406, 411, 413, 415, 418, 501, 505})
            row(status, Trouble::Odd);
        row(423, Trouble::Locked);
        row(507, Trouble::Full);
    }
    void everyStatusHasItsTrouble()
    {
        QFETCH(int, status);
        QFETCH(int, trouble);
        StandIn standIn(Fault::saying(status));
        QCOMPARE(troubleOfAll(standIn.storage), std::optional(static_cast<Trouble>(trouble)));
        // rclone says 403 of a part that is not there any more: the move may have been made.
        QCOMPARE(
            troubleIn(standIn.storage.move(place, "c")),
            std::optional(status == 403 ? Trouble::Unreachable : static_cast<Trouble>(trouble)));
    }

    void whatIsNotThereIsNoTrouble()
    {
        StandIn standIn(Fault::saying(404));
        QCOMPARE(std::get<File>(standIn.storage.get(place)), File());
        QVERIFY(!std::get<std::optional<std::uint64_t>>(standIn.storage.sizeOf(place)));
        QVERIFY(std::get<std::vector<std::string>>(standIn.storage.list("f0")).empty());
        QVERIFY(!troubleIn(standIn.storage.remove(place)));
        // Something to begin again with: the folder went away, or the part was moved before.
        QCOMPARE(troubleIn(standIn.storage.put(place, "b")), std::optional(Trouble::Unreachable));
        QCOMPARE(troubleIn(standIn.storage.move(place, "c")), std::optional(Trouble::Unreachable));
    }

    void aNameThatIsTakenIsSaid()
    {
        StandIn standIn(Fault::saying(412));
        QCOMPARE(std::get<Storage::Moved>(standIn.storage.move(place, "c")), Storage::Moved::Taken);
        QCOMPARE(troubleIn(standIn.storage.put(place, "b")), std::optional(Trouble::Odd));
    }

    /// platform.md, WebDAV: "always send".
    void whatServersInsistOnIsSent()
    {
        StandIn standIn(Fault::saying(507));
        WebdavStorage &storage = standIn.storage;
        (void)storage.makeFolder("f0");
        (void)storage.list("f0");
        (void)storage.sizeOf(place);
        (void)storage.get(place);
        (void)storage.put(place, "bytes");
        (void)storage.move(place, "c3");
        (void)storage.remove(place);
        const std::vector<Asked> asked = standIn.proxy.asked();
        const std::vector<std::string> methods{"MKCOL", "PROPFIND", "PROPFIND", "GET",
                                               "PUT",   "MOVE",     "DELETE"};
        QCOMPARE(asked.size(), methods.size());
        for (std::size_t call = 0; call < asked.size(); ++call) {
            QCOMPARE(asked[call].method, methods[call]);
            QCOMPARE(asked[call].header("Expect"), std::string());
            QCOMPARE(asked[call].header("If-Match") + asked[call].header("If-None-Match"),
                     std::string());
            if (asked[call].method != "GET")
                QCOMPARE(asked[call].header("Content-Length"),
                         std::to_string(asked[call].body.size()));
        }
        QCOMPARE(asked[0].target, std::string("/dav/crew/f0/")); // a folder has its slash
        QCOMPARE(asked[0].header("Content-Type"), std::string());
        QCOMPARE(asked[1].target, std::string("/dav/crew/f0/"));
        QCOMPARE(asked[1].header("Depth"), std::string("1"));
        QCOMPARE(asked[1].header("Content-Type"), std::string("application/xml; charset=utf-8"));
        QCOMPARE(asked[2].target, std::string("/dav/crew/f0/b2"));
        QCOMPARE(asked[2].header("Depth"), std::string("0"));
        QCOMPARE(asked[3].header("Accept-Encoding"), std::string("identity"));
        QCOMPARE(asked[4].body, std::string("bytes"));
        QCOMPARE(asked[5].header("Overwrite"), std::string("F"));
        QCOMPARE(asked[5].header("Destination"), standIn.proxy.url() + "dav/crew/f0/c3");
    }

    /// RFC 7617, 2 (its example) and RFC 6750, 2.1 (its example): at once, without being asked.
    void credentialsAreSentAtOnce()
    {
        FaultProxy proxy(0, [](const Asked &) { return Fault::saying(404); });
        ServerAddress address = addressOf(proxy);
        address.user = "Aladdin";
        address.password = "open sesame";
        (void)WebdavStorage(address).get(place);
        address.user.clear();
        address.password.clear();
        address.bearer = "mF_9.B5f-4.1JqM";
        (void)WebdavStorage(address).get(place);
        address.bearer.clear();
        (void)WebdavStorage(address).get(place);
        const std::vector<Asked> asked = proxy.asked();
        QCOMPARE(asked.size(), std::size_t{3});
        QCOMPARE(asked[0].header("Authorization"),
                 std::string("Basic QWxhZGRpbjpvcGVuIHNlc2FtZQ=="));
        QCOMPARE(asked[1].header("Authorization"), std::string("Bearer mF_9.B5f-4.1JqM"));
        QCOMPARE(asked[2].header("Authorization"), std::string());
    }

    /// A server that lets in by a token alone, as RFC 6750, 3 describes.
    void aTokenOpensWhatAPasswordDoesNot()
    {
        FaultProxy proxy(0, [](const Asked &asked) {
            return asked.header("Authorization") == "Bearer right"
                       ? Fault::saying(200, {}, "file")
                       : Fault::saying(401, "WWW-Authenticate: Bearer realm=\"crew\"\r\n");
        });
        ServerAddress address = addressOf(proxy);
        address.bearer = "right";
        QCOMPARE(std::get<File>(WebdavStorage(address).get(place)), File("file"));
        address.bearer = "wrong";
        QCOMPARE(troubleIn(WebdavStorage(address).get(place)), std::optional(Trouble::Refused));
        address.bearer.clear();
        address.user = "crew";
        address.password = "right";
        QCOMPARE(troubleIn(WebdavStorage(address).get(place)), std::optional(Trouble::Refused));
    }

    void nobodyThereIsOutOfReach()
    {
        ServerAddress address;
        address.url = "http://127.0.0.1:" + std::to_string(lidlark::test::freePort()) + "/dav/";
        WebdavStorage storage(address);
        QCOMPARE(troubleOfAll(storage), std::optional(Trouble::Unreachable));
        Fault drop;
        drop.kind = Fault::Kind::Drop;
        StandIn standIn(drop);
        QCOMPARE(troubleOfAll(standIn.storage), std::optional(Trouble::Unreachable));
        QCOMPARE(troubleIn(standIn.storage.move(place, "c")), std::optional(Trouble::Unreachable));
    }

    void namesThatServersChangeAreNeverSent()
    {
        StandIn standIn(Fault::saying(201));
        for (const char *name : {"", "..", "a/b", "A", "a b", "a%2fb", "a\r\nX: y"}) {
            QCOMPARE(troubleIn(standIn.storage.put({"f0", name}, "b")),
                     std::optional(Trouble::Odd));
            QCOMPARE(troubleIn(standIn.storage.move(place, name)), std::optional(Trouble::Odd));
            QCOMPARE(troubleIn(standIn.storage.get({"f0", name})), std::optional(Trouble::Odd));
            QCOMPARE(troubleIn(standIn.storage.sizeOf({"f0", name})), std::optional(Trouble::Odd));
            QCOMPARE(troubleIn(standIn.storage.remove({"f0", name})), std::optional(Trouble::Odd));
        }
        QCOMPARE(troubleIn(standIn.storage.makeFolder("../other")), std::optional(Trouble::Odd));
        QCOMPARE(troubleIn(standIn.storage.list("../other")), std::optional(Trouble::Odd));
        QVERIFY(standIn.proxy.asked().empty());
    }
};

QTEST_APPLESS_MAIN(TestWebdavCalls)
#include "tst_webdav_calls.moc"

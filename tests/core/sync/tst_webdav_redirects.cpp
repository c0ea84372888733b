#include <QTest>

#include "stand_in.h"

using namespace lidlark::sync;
using namespace samples;

namespace {

std::string portOf(const FaultProxy &proxy)
{
    const std::string url = proxy.url();
    const std::size_t colon = url.rfind(':');
    return url.substr(colon + 1, url.size() - colon - 2);
}

} // namespace

/// Guards that credentials and files go to the server a family named, and to no other.
class TestWebdavRedirects : public QObject
{
    Q_OBJECT

private slots:
    void aRedirectToAnotherPlaceIsRefused_data()
    {
        QTest::addColumn<int>("status");
        QTest::addColumn<QString>("location"); // %1: this server
        QTest::newRow("another host") << 302 << "http://127.0.0.2:%2/dav/crew/f0/b2";
        QTest::newRow("another name of this host") << 307 << "http://localhost:%2/dav/crew/f0/b2";
        QTest::newRow("another port") << 308 << "http://127.0.0.1:9/dav/crew/f0/b2";
        QTest::newRow("another scheme") << 301 << "https://127.0.0.1:%2/dav/crew/f0/b2";
        QTest::newRow("a file of the phone") << 302 << "file:///dav/crew/f0/b2";
        QTest::newRow("with credentials") << 302 << "http://anna@127.0.0.1:%2/dav/crew/f0/b2";
        QTest::newRow("a page to log in at") << 302 << "/login";
        QTest::newRow("a page that comes back") << 302 << "/login?to=/dav/crew/f0/b2";
        QTest::newRow("with a question") << 302 << "/other/f0/b2?session=1";
        QTest::newRow("another file") << 307 << "/dav/crew/f0/b3";
        QTest::newRow("see other") << 303 << "/other/f0/b2";
        QTest::newRow("nowhere") << 302 << "";
    }
    void aRedirectToAnotherPlaceIsRefused()
    {
        QFETCH(int, status);
        QFETCH(QString, location);
        std::string port;
        FaultProxy proxy(0, [&](const Asked &asked) {
            if (asked.target != "/dav/crew/f0/b2" || !asked.header("Host").starts_with("127.0.0.1"))
                return Fault::saying(200, {}, "not the file");
            const std::string to = QString(location).replace("%2", port.c_str()).toStdString();
            return Fault::saying(status, to.empty() ? "" : "Location: " + to + "\r\n");
        });
        port = portOf(proxy);
        ServerAddress address = addressOf(proxy);
        address.user = "crew";
        address.password = "secret";
        WebdavStorage storage(address);
        QCOMPARE(troubleIn(storage.get(place)), std::optional(Trouble::Odd));
        QCOMPARE(troubleIn(storage.put(place, "b")), std::optional(Trouble::Odd));
        QCOMPARE(proxy.asked().size(), std::size_t{2}); // it went nowhere with the password
    }

    void nobodyIsSentRoundForEver()
    {
        FaultProxy proxy(0, [](const Asked &asked) {
            return Fault::saying(307, "Location: " + asked.target + "\r\n");
        });
        QCOMPARE(troubleIn(WebdavStorage(addressOf(proxy)).get(place)),
                 std::optional(Trouble::Odd));
        QCOMPARE(proxy.asked().size(), std::size_t{4});
    }

    /// RFC 9110, 15.4: the method and the body go with it.
    void aRedirectOnTheSameServerIsFollowed()
    {
        for (const int status : {301, 302, 307, 308}) {
            FaultProxy proxy(0, [status](const Asked &asked) {
                if (asked.target.starts_with("/dav/"))
                    return Fault::saying(status, "Location: /moved" + asked.target + "\r\n");
                return asked.method == "GET" ? Fault::saying(200, {}, "file") : Fault::saying(201);
            });
            ServerAddress address = addressOf(proxy);
            address.user = "crew";
            address.password = "secret";
            WebdavStorage storage(address);
            QCOMPARE(std::get<File>(storage.get(place)), File("file"));
            QVERIFY(!troubleIn(storage.put(place, "bytes")));
            QCOMPARE(std::get<Storage::Moved>(storage.move(place, "c")), Storage::Moved::Done);
            const std::vector<Asked> asked = proxy.asked();
            QCOMPARE(asked.size(), std::size_t{6});
            QCOMPARE(asked[3].method, std::string("PUT"));
            QCOMPARE(asked[3].body, std::string("bytes"));
            QCOMPARE(asked[3].header("Authorization"), asked[2].header("Authorization"));
            QCOMPARE(asked[5].method, std::string("MOVE"));
            QCOMPARE(asked[5].header("Overwrite"), std::string("F"));
        }
    }
};

QTEST_APPLESS_MAIN(TestWebdavRedirects)
#include "tst_webdav_redirects.moc"

#include <QTest>

#include "core/sync/connection_check.h"
#include "core/sync/publish.h"
#include "core/sync/webdav_storage.h"
#include "tests/support/cut_relay.h"
#include "tests/support/dav_server.h"

#include <fstream>
#include <sstream>

using namespace lidlark;
using namespace lidlark::sync;
using lidlark::test::Authority;
using lidlark::test::CertificateKind;
using lidlark::test::CutRelay;
using lidlark::test::DavKind;
using lidlark::test::DavServer;
using lidlark::test::WireBytes;

namespace {

const Place place{"f0", "a1"};

/// The same server by way of @p relay: its name, and so its certificate, stays right.
ServerAddress through(const CutRelay &relay, const DavServer &server)
{
    ServerAddress address = server.address();
    address.url = "https://localhost:" + std::to_string(relay.port()) + "/dav/";
    return address;
}

bool isEmpty(const DavServer &server)
{
    return std::filesystem::is_empty(server.root());
}

} // namespace

/// Guards that nothing is sent to a server that is not the one it says it is, and that a line which
/// breaks is told from one that cannot be trusted. Apache over TLS, started here.
class TestWebdavTrust : public QObject
{
    Q_OBJECT

private:
    DavServer m_server{DavKind::Apache};

private slots:
    void initTestCase() { QVERIFY2(m_server.start(), qPrintable(m_server.problem())); }

    void whomNobodyVouchesForIsNotTrusted()
    {
        SeededEntropy entropy("nobody");
        ServerAddress address = m_server.address();
        QTemporaryDir folder;
        for (const std::string &file :
             {std::string(), Authority(QDir(folder.path())).file().toStdString(),
              std::string("/nowhere/authority.pem")}) {
            address.caFile = file;
            WebdavStorage storage(address);
            QCOMPARE(troubleIn(publish(storage, place, "one", entropy)),
                     std::optional(Trouble::NotTrusted));
            QCOMPARE(troubleIn(storage.get(place)), std::optional(Trouble::NotTrusted));
            QCOMPARE(checkConnection(storage, entropy), Connection::NotTrusted);
        }
        QVERIFY(isEmpty(m_server));
    }

    /// RFC 5280, 4.1.2.5 and RFC 6125, 6.
    void anOldOrAnothersCertificateIsNotTrusted()
    {
        for (const CertificateKind kind : {CertificateKind::Expired, CertificateKind::OtherHost}) {
            DavServer server(DavKind::Apache, {kind, 0});
            QVERIFY2(server.start(), qPrintable(server.problem()));
            WebdavStorage storage(server.address());
            SeededEntropy entropy("old");
            QCOMPARE(troubleIn(publish(storage, place, "one", entropy)),
                     std::optional(Trouble::NotTrusted));
            QVERIFY(isEmpty(server));
        }
    }

    void aServerWithoutTlsIsOdd()
    {
        ServerAddress address = m_server.address();
        address.url = "https://localhost:" + std::to_string(m_server.plainPort()) + "/dav/";
        WebdavStorage storage(address);
        QCOMPARE(troubleIn(storage.get(place)), std::optional(Trouble::Odd));
    }

    /// Wherever it breaks, in the greeting too, it may be tried again, and nothing is half there.
    void anEncryptedLineThatBreaksIsOutOfReach()
    {
        const std::string bytes(20'000, 't');
        WebdavStorage direct(m_server.address());
        QVERIFY(!troubleIn(direct.makeFolder("f0")));
        SeededEntropy entropy("encrypted");
        int cuts = 0;
        for (std::uint64_t most = 1; most < 60'000; most = most * 3 / 2 + 50) {
            for (const WireBytes bound :
                 {WireBytes{most, UINT64_MAX}, WireBytes{UINT64_MAX, most}}) {
                CutRelay relay(m_server.port(), bound);
                WebdavStorage storage(through(relay, m_server));
                const Place where{"f0", std::to_string(++cuts)};
                const auto published = publish(storage, where, bytes, entropy);
                const bool isDone = !troubleIn(published);
                QVERIFY(isDone || troubleIn(published) == Trouble::Unreachable);
                QVERIFY(!isDone || std::get<Published>(published) == Published::Done);
                const auto there = std::get<0>(direct.get(where));
                QVERIFY(there == bytes || (!there && !isDone));
            }
        }
        QVERIFY(cuts >= 20);
    }
};

QTEST_APPLESS_MAIN(TestWebdavTrust)
#include "tst_webdav_trust.moc"

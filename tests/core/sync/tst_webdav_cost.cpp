#include <QTest>

#include "core/sync/publish.h"
#include "core/sync/webdav_storage.h"
#include "tests/support/both_dav_servers.h"
#include "tests/support/cut_relay.h"
#include "tests/support/fault_proxy.h"

using namespace lidlark;
using namespace lidlark::sync;
using lidlark::test::Asked;
using lidlark::test::CutRelay;
using lidlark::test::DavKind;
using lidlark::test::DavServer;
using lidlark::test::Fault;
using lidlark::test::FaultProxy;
using lidlark::test::WireBytes;

namespace {

const Place place{"f0", "a1"};
using File = std::optional<std::string>;

/// The same server by way of a port of this machine, with TLS where it speaks TLS.
ServerAddress through(int port, const DavServer &server)
{
    ServerAddress address = server.address();
    const std::size_t colon = address.url.rfind(':') + 1;
    address.url.replace(colon, address.url.find('/', colon) - colon, std::to_string(port));
    return address;
}

/// And without it.
ServerAddress plainly(const FaultProxy &proxy, const DavServer &server)
{
    ServerAddress address = server.address();
    address.url = proxy.url() + "dav/";
    return address;
}

} // namespace

/// Guards what the exchange costs on a phone's line: few calls, few bytes. Real servers, as in
/// tst_webdav_server.
class TestWebdavCost : public QObject
{
    Q_OBJECT

private:
    lidlark::test::BothDavServers m_servers;

    [[nodiscard]] const DavServer &server() const { return m_servers.current(); }

private slots:
    /// Every function is called for each.
    void initTestCase_data() { lidlark::test::addDavKinds(); }
    void initTestCase() { m_servers.start(); }

    /// What a server is asked for one segment, and for news of one device (platform.md, "Publish
    /// protocol").
    void fewCallsAreMade()
    {
        FaultProxy proxy(server().plainPort(), [](const Asked &) { return Fault(); });
        WebdavStorage storage(plainly(proxy, server()));
        SeededEntropy entropy("few");
        QVERIFY(!troubleIn(storage.makeFolder("few")));
        auto callsOf = [&proxy, before = proxy.asked().size()]() mutable {
            std::string calls;
            const std::vector<Asked> asked = proxy.asked();
            for (; before < asked.size(); ++before)
                calls += asked[before].method + " ";
            return calls;
        };
        (void)publish(storage, {"few", "a1"}, std::string(20'000, 'c'), entropy);
        QCOMPARE(callsOf(), std::string("GET PUT PROPFIND MOVE "));
        (void)publish(storage, {"few", "a1"}, std::string(20'000, 'd'), entropy);
        QCOMPARE(callsOf(), std::string("GET "));
        QCOMPARE(std::get<File>(storage.get({"few", "a2"})), File());
        QCOMPARE(callsOf(), std::string("GET "));
    }

    /// What one segment and one look for news cost on the wire, encryption and all: printed, and
    /// held below what a phone can spare.
    void littleGoesOverTheWire()
    {
        SeededEntropy entropy("little");
        CutRelay relay(server().port());
        WebdavStorage storage(through(relay.port(), server()));
        (void)storage.get({"f0", "none"});
        QCOMPARE(relay.connections(), 1);
        auto costSince = [&relay, before = relay.passed()]() mutable {
            const WireBytes now = relay.passed();
            const WireBytes since{now.toServer - before.toServer, now.toPhone - before.toPhone};
            before = now;
            return since;
        };
        QCOMPARE(std::get<Published>(publish(storage, place, std::string(20'000, 'w'), entropy)),
                 Published::Done);
        const WireBytes published = costSince();
        (void)storage.get({"f0", "none"});
        const WireBytes asked = costSince();
        qInfo("a segment of 20000 bytes: %llu sent, %llu received; news: %llu sent, %llu received",
              static_cast<unsigned long long>(published.toServer),
              static_cast<unsigned long long>(published.toPhone),
              static_cast<unsigned long long>(asked.toServer),
              static_cast<unsigned long long>(asked.toPhone));
        QVERIFY(published.toServer < 23'000 && published.toPhone < 4'000);
        QVERIFY(asked.toServer < 500 && asked.toPhone < 800);
        QCOMPARE(relay.connections(), 1); // one greeting for all
    }
};

QTEST_APPLESS_MAIN(TestWebdavCost)
#include "tst_webdav_cost.moc"

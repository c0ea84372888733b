#include <QTest>

#include "core/sync/publish.h"
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

ServerAddress through(const FaultProxy &proxy, const DavServer &server)
{
    ServerAddress address = server.address();
    address.caFile.clear();
    address.url = proxy.url() + "dav/";
    return folderIn(address, "crew");
}

/// Three calls of ten go wrong, in any of the ways in which they can.
class Chance
{
public:
    explicit Chance(unsigned seed) : m_chance(seed) {}

    Fault operator()(const Asked &asked)
    {
        if (m_chance() % 10 >= 3)
            return {};
        ++breaks;
        static const std::vector<int> said{401, 403, 423, 500, 502, 503, 507};
        static const std::vector<Fault::Kind> kinds{Fault::Kind::Drop, Fault::Kind::CutRequest,
                                                    Fault::Kind::LoseAnswer, Fault::Kind::CutAnswer,
                                                    Fault::Kind::Answer};
        Fault fault;
        fault.kind = kinds[m_chance() % kinds.size()];
        if (fault.kind == Fault::Kind::Answer)
            return Fault::saying(said[m_chance() % said.size()]);
        const std::size_t all = asked.head.size() + asked.body.size();
        fault.bytes = m_chance() % (fault.kind == Fault::Kind::CutRequest ? all : 200);
        return fault;
    }
    int breaks = 0;

private:
    std::mt19937 m_chance;
};

/// What lies under a name on the server's disk; nothing where there is no such file.
std::optional<std::string> onDisk(const DavServer &server, const Place &where)
{
    std::ifstream file(server.root() / "crew" / where.folder / where.name, std::ios::binary);
    if (!file)
        return std::nullopt;
    std::ostringstream bytes;
    bytes << file.rdbuf();
    return bytes.str();
}

std::string segment(int number)
{
    return std::string(static_cast<std::size_t>(500 + 97 * number),
                       static_cast<char>('a' + number % 26));
}

/// Lets the server die at a call of @p method: when it has @p share per cent of it, or, at more
/// than all of it, when it has answered.
Fault dying(const Asked &asked, const std::string &method, std::size_t share, DavServer &server)
{
    Fault fault;
    if (asked.method == method) {
        fault.kind = share > 100 ? Fault::Kind::LoseAnswer : Fault::Kind::CutRequest;
        fault.bytes = (asked.head.size() + 40 + asked.body.size()) * share / 100;
        fault.meanwhile = [&server] { server.kill(); };
    }
    return fault;
}

} // namespace

/// Guards that a real server never holds half a segment under its name, and loses none, whatever
/// breaks on the way to it, or in it.
class TestWebdavBreaks : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<DavServer> m_server;

private slots:
    /// Every function is called for each.
    void initTestCase_data() { lidlark::test::addDavKinds(); }
    void init()
    {
        QFETCH_GLOBAL(DavKind, kind);
        m_server = std::make_unique<DavServer>(kind);
        QVERIFY2(m_server->start(), qPrintable(m_server->problem()));
    }

    /// As often as the protocol was tried by hand (platform.md, "Publish protocol").
    void nothingIsLostOnALineThatBreaks()
    {
        Chance chance(7);
        FaultProxy proxy(m_server->plainPort(), std::ref(chance));
        WebdavStorage storage(through(proxy, *m_server));
        SeededEntropy entropy("breaks");
        int again = 0;
        for (int number = 0; number < 60; ++number) {
            const Place where{"f0", std::to_string(number)};
            const std::string bytes = segment(number);
            for (auto published = publish(storage, where, bytes, entropy);
                 troubleIn(published) || std::get<Published>(published) != Published::Done;
                 published = publish(storage, where, bytes, entropy)) {
                QVERIFY(troubleIn(published)); // never taken for somebody else's
                QVERIFY(troubleIn(published) != Trouble::Odd);
                const auto there = onDisk(*m_server, where);
                QVERIFY(!there || *there == bytes);
                QVERIFY(++again < 2000);
            }
            QVERIFY(onDisk(*m_server, where) == bytes);
        }
        QVERIFY(chance.breaks > 60);

        WebdavStorage reader(folderIn(m_server->address(), "crew"));
        for (int number = 0; number < 60; ++number)
            QVERIFY(std::get<0>(reader.get({"f0", std::to_string(number)})) == segment(number));
    }

    void aCopiedPhoneIsFoundOutOnALineThatBreaks()
    {
        WebdavStorage first(folderIn(m_server->address(), "crew"));
        SeededEntropy entropy("copied");
        QCOMPARE(std::get<Published>(publish(first, place, "one", entropy)), Published::Done);
        Chance chance(8);
        FaultProxy proxy(m_server->plainPort(), std::ref(chance));
        WebdavStorage copied(through(proxy, *m_server));
        auto published = publish(copied, place, "two", entropy);
        for (int tries = 0; tries < 200 && troubleIn(published); ++tries)
            published = publish(copied, place, "two", entropy);
        QCOMPARE(std::get<Published>(published), Published::Taken);
        QCOMPARE(onDisk(*m_server, place), std::optional<std::string>("one"));
    }

    void aServerThatDiesHoldsNoHalf_data()
    {
        QTest::addColumn<QString>("method");
        QTest::addColumn<int>("share");
        QTest::newRow("in the middle of a file") << "PUT" << 50;
        QTest::newRow("while it writes") << "PUT" << 100;
        QTest::newRow("before its answer to a file") << "PUT" << 101;
        QTest::newRow("when it has half the wish to rename") << "MOVE" << 50;
        QTest::newRow("while it renames") << "MOVE" << 100;
        QTest::newRow("before its answer to renaming") << "MOVE" << 101;
    }
    void aServerThatDiesHoldsNoHalf()
    {
        QFETCH(QString, method);
        QFETCH(int, share);
        const std::string bytes(200'000, 'd');
        SeededEntropy entropy("dies");
        {
            FaultProxy proxy(m_server->plainPort(), [&](const Asked &asked) {
                return dying(asked, method.toStdString(), static_cast<std::size_t>(share),
                             *m_server);
            });
            WebdavStorage storage(through(proxy, *m_server));
            QCOMPARE(troubleIn(publish(storage, place, bytes, entropy)),
                     std::optional(Trouble::Unreachable));
        }
        WebdavStorage storage(folderIn(m_server->address(), "crew"));
        QCOMPARE(troubleIn(storage.get(place)), std::optional(Trouble::Unreachable)); // it is gone
        const auto there = onDisk(*m_server, place);
        QVERIFY(!there || *there == bytes);

        QVERIFY2(m_server->start(), qPrintable(m_server->problem()));
        QCOMPARE(std::get<Published>(publish(storage, place, bytes, entropy)), Published::Done);
        QVERIFY(onDisk(*m_server, place) == bytes);
    }

    /// The line that was kept open is dead when the server comes back.
    void aServerThatWasAwayIsFoundAgain()
    {
        WebdavStorage storage(folderIn(m_server->address(), "crew"));
        SeededEntropy entropy("away");
        QCOMPARE(std::get<Published>(publish(storage, place, "one", entropy)), Published::Done);
        m_server->stop();
        QCOMPARE(troubleIn(publish(storage, {"f0", "a2"}, "two", entropy)),
                 std::optional(Trouble::Unreachable));
        QVERIFY2(m_server->start(), qPrintable(m_server->problem()));
        QCOMPARE(std::get<Published>(publish(storage, {"f0", "a2"}, "two", entropy)),
                 Published::Done);
        QCOMPARE(onDisk(*m_server, place), std::optional<std::string>("one"));
    }
};

QTEST_APPLESS_MAIN(TestWebdavBreaks)
#include "tst_webdav_breaks.moc"

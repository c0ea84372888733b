#include <QTest>

#include "stand_in.h"

using namespace lidlark::sync;
using namespace samples;

namespace {

/// A server that holds one file and knows ranges (RFC 9110, 14), and whose line breaks in the first
/// answers of a body: after @p parts bytes of each.
class Breaking
{
public:
    Breaking(std::string file, std::vector<std::size_t> parts)
        : m_file(std::move(file)), m_parts(std::move(parts))
    {
    }
    bool knowsRanges = true;

    Fault operator()(const Asked &asked)
    {
        const std::string range = asked.header("Range");
        std::size_t from = 0;
        if (knowsRanges && range.starts_with("bytes="))
            from = std::strtoull(range.c_str() + 6, nullptr, 10);
        std::string headers;
        if (from > 0)
            headers = "Content-Range: bytes " + std::to_string(from) + "-" +
                      std::to_string(m_file.size() - 1) + "/" + std::to_string(m_file.size()) +
                      "\r\n";
        Fault fault = Fault::saying(from > 0 ? 206 : 200, headers, m_file.substr(from));
        if (!m_parts.empty()) {
            const std::size_t head = fault.answer.find("\r\n\r\n") + 4;
            fault.bytes = head + m_parts.front();
            m_parts.erase(m_parts.begin());
        }
        return fault;
    }

private:
    std::string m_file;
    std::vector<std::size_t> m_parts;
};

std::string numbered(std::size_t bytes)
{
    std::string text;
    for (int number = 0; text.size() < bytes; ++number)
        text += std::to_string(number) + " ";
    text.resize(bytes);
    return text;
}

} // namespace

/// Guards that a file whose line broke goes on where it was, and is put together of nothing but
/// itself.
class TestWebdavResumed : public QObject
{
    Q_OBJECT

private slots:
    /// RFC 9110, 14.2 and 15.3.7: what came before the line broke is not asked for again.
    void aFileThatBrokeOffGoesOnWhereItWas()
    {
        const std::string file = numbered(100'000);
        FaultProxy proxy(0, Breaking(file, {30'000, 25'000, 0}));
        WebdavStorage storage(addressOf(proxy));
        for (int breaks = 0; breaks < 3; ++breaks)
            QCOMPARE(troubleIn(storage.get(place)), std::optional(Trouble::Unreachable));
        QCOMPARE(std::get<File>(storage.get(place)), File(file));
        const std::vector<Asked> asked = proxy.asked();
        QCOMPARE(asked.size(), std::size_t{4});
        QCOMPARE(asked[0].header("Range"), std::string());
        QCOMPARE(asked[1].header("Range"), std::string("bytes=30000-"));
        QCOMPARE(asked[2].header("Range"), std::string("bytes=55000-"));
        QCOMPARE(asked[3].header("Range"), std::string("bytes=55000-"));
        QCOMPARE(std::get<File>(storage.get(place)), File(file));
        QCOMPARE(proxy.asked().back().header("Range"), std::string()); // a new one, from its start
    }

    void aServerWithoutRangesBeginsAgain()
    {
        const std::string file = numbered(100'000);
        Breaking server(file, {30'000, 20'000});
        server.knowsRanges = false;
        FaultProxy proxy(0, server);
        WebdavStorage storage(addressOf(proxy));
        QVERIFY(troubleIn(storage.get(place)));
        QVERIFY(troubleIn(storage.get(place)));
        QCOMPARE(std::get<File>(storage.get(place)), File(file));
        QCOMPARE(proxy.asked()[2].header("Range"), std::string("bytes=20000-"));
    }

    void whatBelongsToAnotherFileIsNotPutTogether_data()
    {
        QTest::addColumn<int>("status");
        QTest::addColumn<QString>("range");
        QTest::addColumn<int>("bytes");
        QTest::newRow("another length") << 206 << "bytes 30000-40000/40001" << 10'001;
        QTest::newRow("another place") << 206 << "bytes 20000-89999/100000" << 70'000;
        QTest::newRow("too little") << 206 << "bytes 30000-99999/100000" << 10;
        QTest::newRow("no range") << 206 << "" << 70'000;
        QTest::newRow("several ranges") << 206 << "bytes 30000-*/*" << 70'000;
        QTest::newRow("a range it has not") << 416 << "bytes */20000" << 0;
    }
    void whatBelongsToAnotherFileIsNotPutTogether()
    {
        QFETCH(int, status);
        QFETCH(QString, range);
        QFETCH(int, bytes);
        const std::string file = numbered(100'000);
        Breaking server(file, {30'000});
        FaultProxy proxy(0, [&](const Asked &asked) {
            if (asked.header("Range").empty())
                return server(asked);
            return Fault::saying(status, "Content-Range: " + range.toStdString() + "\r\n",
                                 std::string(static_cast<std::size_t>(bytes), 'x'));
        });
        WebdavStorage storage(addressOf(proxy));
        QVERIFY(troubleIn(storage.get(place)));
        QCOMPARE(std::get<File>(storage.get(place)), File(file)); // all of it, asked for anew
        QCOMPARE(proxy.asked().size(), std::size_t{3});
    }

    /// A length is only said: what is kept and asked for stays within what a file may have.
    void aLengthWithoutBoundIsNotBelieved()
    {
        FaultProxy proxy(0, [](const Asked &) {
            Fault fault = Fault::saying(200);
            fault.answer = "HTTP/1.1 200 OK\r\nContent-Length: 999999999999\r\n\r\nbegun";
            fault.bytes = fault.answer.size();
            return fault;
        });
        WebdavStorage storage(addressOf(proxy));
        QCOMPARE(troubleIn(storage.get(place)), std::optional(Trouble::Unreachable));
        QCOMPARE(troubleIn(storage.get(place)), std::optional(Trouble::Unreachable));
        QCOMPARE(proxy.asked().size(), std::size_t{2});
        QCOMPARE(proxy.asked()[1].header("Range"), std::string());
    }

    /// The rest of it comes in pieces that each begin where the last one ended, and never end.
    void aFileThatGrowsBeyondItsLengthIsLetGo()
    {
        const std::string file = numbered(100'000);
        Breaking server(file, {30'000});
        FaultProxy proxy(0, [&](const Asked &asked) {
            const std::string range = asked.header("Range");
            if (range.empty())
                return server(asked);
            const std::string from = range.substr(6, range.size() - 7);
            Fault fault = Fault::saying(206, "Content-Range: bytes " + from + "-99999/100000\r\n",
                                        std::string(100'000, 'x'));
            fault.bytes = fault.answer.size() - 1;
            return fault;
        });
        WebdavStorage storage(addressOf(proxy));
        QVERIFY(troubleIn(storage.get(place)));
        QVERIFY(troubleIn(storage.get(place)));
        QCOMPARE(std::get<File>(storage.get(place)), File(file));
        QCOMPARE(proxy.asked()[1].header("Range"), std::string("bytes=30000-"));
        QCOMPARE(proxy.asked()[2].header("Range"), std::string());
    }

    void anotherFileBeginsAtItsBeginning()
    {
        FaultProxy proxy(0, Breaking(numbered(1000), {300}));
        WebdavStorage storage(addressOf(proxy));
        QVERIFY(troubleIn(storage.get(place)));
        QCOMPARE(std::get<File>(storage.get({"f0", "c3"})), File(numbered(1000)));
        QCOMPARE(proxy.asked()[1].header("Range"), std::string());
    }

    void whatWasBegunOutlastsAServersPause()
    {
        Breaking server(numbered(1000), {300});
        int calls = 0;
        FaultProxy proxy(0, [&](const Asked &asked) {
            return ++calls == 2 ? Fault::saying(503) : server(asked);
        });
        WebdavStorage storage(addressOf(proxy));
        QVERIFY(troubleIn(storage.get(place)));
        QVERIFY(troubleIn(storage.get(place)));
        QCOMPARE(std::get<File>(storage.get(place)), File(numbered(1000)));
        QCOMPARE(proxy.asked()[2].header("Range"), std::string("bytes=300-"));
    }
};

QTEST_APPLESS_MAIN(TestWebdavResumed)
#include "tst_webdav_resumed.moc"

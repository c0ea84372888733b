#include <QTest>

#include "core/sync/segment.h"
#include "core/sync/webdav_listing.h"
#include "listing_samples.h"
#include "stand_in.h"

using namespace lidlark::sync;
using namespace samples;

namespace {

Fault cut(Fault fault, std::size_t bytes)
{
    fault.bytes = bytes;
    return fault;
}

Fault silence()
{
    Fault fault;
    fault.kind = Fault::Kind::Silence;
    return fault;
}

} // namespace

/// Guards that what breaks off, comes without end, stalls, or is something else, is never taken for
/// a file or a listing.
class TestWebdavTransfers : public QObject
{
    Q_OBJECT

private slots:
    void aBodyThatIsNotWholeIsNone()
    {
        const Fault whole = Fault::saying(200, {}, std::string(5000, 'b'));
        for (const std::size_t bytes : {1, 20, 60, 100, 2000, 5000}) {
            StandIn standIn(cut(whole, bytes));
            QCOMPARE(troubleIn(standIn.storage.get(place)), std::optional(Trouble::Unreachable));
        }
        Fault fault;
        fault.kind = Fault::Kind::Answer;
        fault.answer = "HTTP/1.1 200 OK\r\nTransfer-Encoding: chunked\r\n\r\n5\r\nbytes\r\n5\r\nby";
        QCOMPARE(troubleIn(StandIn(fault).storage.get(place)), std::optional(Trouble::Unreachable));
        fault.answer =
            "HTTP/1.1 200 OK\r\nTransfer-Encoding: chunked\r\n\r\n5\r\nbytes\r\n0\r\n\r\n";
        QCOMPARE(std::get<File>(StandIn(fault).storage.get(place)), File("bytes"));
        // Where it ends nobody knows (RFC 9112, 6.3, 8).
        fault.answer = "HTTP/1.1 200 OK\r\nConnection: close\r\n\r\nbytes";
        QCOMPARE(troubleIn(StandIn(fault).storage.get(place)), std::optional(Trouble::Odd));
    }

    void aListingThatIsNotWholeIsNone()
    {
        const Fault whole = Fault::saying(207, {}, samples::apacheListing);
        StandIn good(whole);
        QCOMPARE(std::get<std::vector<std::string>>(good.storage.list("f0")),
                 std::vector<std::string>{"b2"});
        StandIn broken(cut(whole, whole.answer.size() - 40));
        QCOMPARE(troubleIn(broken.storage.list("f0")), std::optional(Trouble::Unreachable));
        StandIn torn(Fault::saying(207, {}, samples::apacheListing.substr(0, 500)));
        QCOMPARE(troubleIn(torn.storage.list("f0")), std::optional(Trouble::Odd));
        StandIn page(Fault::saying(200, {}, "<html>Files</html>"));
        QCOMPARE(troubleIn(page.storage.list("f0")), std::optional(Trouble::Odd));
    }

    void aSizeIsOfTheFileThatWasAskedAbout()
    {
        const auto at = samples::rcloneListing.rfind("<D:response>");
        const std::string one =
            R"(<D:multistatus xmlns:D="DAV:">)" + samples::rcloneListing.substr(at);
        StandIn standIn(Fault::saying(207, {}, one));
        QCOMPARE(std::get<std::optional<std::uint64_t>>(standIn.storage.sizeOf(place)),
                 std::optional<std::uint64_t>(1));
        QCOMPARE(troubleIn(standIn.storage.sizeOf({"f0", "b3"})), std::optional(Trouble::Odd));
        StandIn two(Fault::saying(207, {}, samples::rcloneListing));
        QCOMPARE(troubleIn(two.storage.sizeOf(place)), std::optional(Trouble::Odd));
    }

    void aPageForPeopleIsNoFile()
    {
        StandIn page(Fault::saying(200, "Content-Type: text/html; charset=utf-8\r\n", "<html>"));
        QCOMPARE(troubleIn(page.storage.get(place)), std::optional(Trouble::Odd));
        StandIn squeezed(Fault::saying(200, "Content-Encoding: gzip\r\n", "zipped"));
        QCOMPARE(troubleIn(squeezed.storage.get(place)), std::optional(Trouble::Odd));
    }

    /// Segments have at most 1,000,000 bytes (FORMAT.md, 3).
    void moreThanASegmentIsNotTaken()
    {
        const std::string most(largestSegment, 's');
        StandIn whole(Fault::saying(200, {}, most));
        QCOMPARE(std::get<File>(whole.storage.get(place))->size(), largestSegment);
        QVERIFY(!troubleIn(StandIn(Fault::saying(201)).storage.put(place, most)));
        StandIn more(Fault::saying(200, {}, most + "s"));
        QCOMPARE(troubleIn(more.storage.get(place)), std::optional(Trouble::Odd));
        QCOMPARE(troubleIn(more.storage.put(place, most + "s")), std::optional(Trouble::Odd));
        QCOMPARE(more.proxy.asked().size(), std::size_t{1}); // it was not even sent
        StandIn headers(Fault::saying(200, std::string("X-Much: ").append(9000, 'x') + "\r\n" +
                                               std::string("Y: ").append(60'000, 'y') + "\r\n"));
        QCOMPARE(troubleIn(headers.storage.get(place)), std::optional(Trouble::Odd));
        StandIn listing(Fault::saying(207, {}, std::string(largestListing + 1, ' ')));
        QCOMPARE(troubleIn(listing.storage.list("f0")), std::optional(Trouble::Odd));
    }

    void whoeverSpeaksSomethingElseIsOdd()
    {
        Fault fault;
        fault.kind = Fault::Kind::Answer;
        fault.answer = "SSH-2.0-OpenSSH_9.2p1\r\n";
        QCOMPARE(troubleIn(StandIn(fault).storage.get(place)), std::optional(Trouble::Odd));
    }

    void aServerThatStallsIsGivenUp()
    {
        HttpPatience little;
        little.stalled = std::chrono::seconds(1);
        Fault trickle = Fault::saying(200, {}, std::string(100'000, 't')); // half an hour and more
        trickle.kind = Fault::Kind::Trickle;
        for (const Fault &fault : {silence(), trickle}) {
            StandIn standIn(fault, little);
            QCOMPARE(troubleIn(standIn.storage.get(place)), std::optional(Trouble::Unreachable));
        }
    }

    void oneWhoIsToldToStopStops()
    {
        std::atomic<bool> stop = false;
        TransferWatch watch;
        watch.stop = &stop;
        HttpPatience endless; // nothing but being told ends it
        endless.stalled = std::chrono::hours(1);
        FaultProxy proxy(0, [&stop](const Asked &) {
            stop = true;
            return silence();
        });
        WebdavStorage storage(addressOf(proxy), endless, watch);
        QCOMPARE(troubleIn(storage.get(place)), std::optional(Trouble::Unreachable));
        QCOMPARE(troubleIn(storage.put(place, "b")), std::optional(Trouble::Unreachable));
        QCOMPARE(proxy.asked().size(), std::size_t{1}); // nothing was begun afterwards
    }

    void whatMovesIsTold()
    {
        std::uint64_t moved = 0;
        TransferWatch watch;
        watch.moved = [&moved](std::uint64_t bytes) { moved += bytes; };
        const std::string bytes(300'000, 'm');
        StandIn down(Fault::saying(200, {}, bytes), {}, watch);
        (void)down.storage.get(place);
        QCOMPARE(moved, std::uint64_t{300'000});
        moved = 0;
        StandIn up(Fault::saying(201), {}, watch);
        (void)up.storage.put(place, bytes);
        QCOMPARE(moved, std::uint64_t{300'000});
    }
};

QTEST_APPLESS_MAIN(TestWebdavTransfers)
#include "tst_webdav_transfers.moc"

#include <QTest>

#include "core/sync/webdav_listing.h"
#include "listing_samples.h"

using namespace lidlark::sync;

namespace {

using Lines = std::vector<Listed>;

/// One response about @p href, with @p properties in a propstat of its own.
std::string listingOf(const std::string &href, const std::string &properties,
                      const std::string &status = "HTTP/1.1 200 OK")
{
    return "<multistatus xmlns='DAV:'><response><href>" + href + "</href><propstat><prop>" +
           properties + "</prop><status>" + status +
           "</status></propstat></response></multistatus>";
}

std::string repeated(const std::string &text, int times)
{
    std::string all;
    all.reserve(text.size() * static_cast<std::size_t>(times));
    for (int time = 0; time < times; ++time)
        all += text;
    return all;
}

} // namespace

/// Guards that what a server says of its files is read as the standard means it, whoever wrote the
/// server, and that no server can do harm with it (RFC 4918, 13 and 14; platform.md, WebDAV).
class TestWebdavListing : public QObject
{
    Q_OBJECT

private slots:
    void everyServerIsUnderstood()
    {
        QCOMPARE(readListing(samples::apacheListing), (Lines{{"f0", {}}, {"b2", 1}}));
        QCOMPARE(readListing(samples::lighttpdListing), (Lines{{"f0", 4096}, {"b2", 1}}));
        QCOMPARE(readListing(samples::nginxListing), (Lines{{"f0", {}}, {"b2", 1}}));
        QCOMPARE(readListing(samples::rcloneListing), (Lines{{"f0", {}}, {"b2", 1}}));
        QCOMPARE(readListing(samples::standardListing),
                 (Lines{{"container", {}}, {"front.html", 4525}}));
    }

    /// RFC 4918, 8.3: a full URL or a path, percent-encoded as the server likes (RFC 3986, 2.4).
    void aNameIsFoundHoweverItIsWritten_data()
    {
        QTest::addColumn<QString>("href");
        QTest::newRow("a path") << "/dav/crew/a1";
        QTest::newRow("a URL") << "https://box.example:8443/dav/crew/a1";
        QTest::newRow("white space around it") << "\n  /dav/crew/a1\n ";
        QTest::newRow("a folder's slash") << "/dav/crew/a1/";
        QTest::newRow("encoded in vain") << "/dav/My%20Folder/%61%31";
        QTest::newRow("in small letters") << "/d%c3%a4v/a%31";
        QTest::newRow("from the top of the server") << "/a1";
        QTest::newRow("character data") << "<![CDATA[/dav/crew/a1]]>";
    }
    void aNameIsFoundHoweverItIsWritten()
    {
        QFETCH(QString, href);
        QCOMPARE(
            readListing(listingOf(href.toStdString(), "<getcontentlength>7</getcontentlength>")),
            (Lines{{"a1", 7}}));
    }

    void namesThatNobodyWroteAreLeftOut_data()
    {
        QTest::addColumn<QString>("href");
        QTest::newRow("a server's own folder") << "/dav/.DAV/";
        QTest::newRow("the folder above") << "/dav/crew/..";
        QTest::newRow("the folder above, encoded") << "/dav/crew/%2e%2e";
        QTest::newRow("a path in a name") << "/dav/crew/a%2Fb";
        QTest::newRow("a zero in a name") << "/dav/crew/a%00b";
        QTest::newRow("capital letters") << "/dav/crew/README";
        QTest::newRow("a space") << "/dav/crew/a%20b";
        QTest::newRow("too long") << QString("/dav/") + QString(101, 'a');
        QTest::newRow("half an encoding") << "/dav/crew/a%4";
        QTest::newRow("no encoding") << "/dav/crew/a%zz";
        QTest::newRow("the server itself") << "/";
        QTest::newRow("the server itself, in full") << "https://box.example/";
        QTest::newRow("the server itself, shorter") << "https://box.example";
        QTest::newRow("nothing") << "";
    }
    void namesThatNobodyWroteAreLeftOut()
    {
        QFETCH(QString, href);
        QCOMPARE(
            readListing(listingOf(href.toStdString(), "<getcontentlength>7</getcontentlength>")),
            Lines{});
    }

    /// RFC 4918, 9.1.2: what a server has not got comes in a propstat with another status.
    void onlyWhatIsVouchedForCounts()
    {
        const std::string length = "<getcontentlength>7</getcontentlength>";
        QCOMPARE(readListing(listingOf("/a", length, "HTTP/1.1 404 Not Found")),
                 (Lines{{"a", {}}}));
        QCOMPARE(readListing(listingOf("/a", length, "HTTP/1.1 2001 What")), (Lines{{"a", {}}}));
        QCOMPARE(readListing(listingOf("/a", length, "200")), (Lines{{"a", {}}}));
        QCOMPARE(readListing(listingOf("/a", length, "HTTP/2 200")), (Lines{{"a", 7}}));
        QCOMPARE(readListing(listingOf("/a", "<x:getcontentlength xmlns:x='urn:x'>7"
                                             "</x:getcontentlength>")),
                 (Lines{{"a", {}}}));
        for (const char *odd : {"", "-1", "1e3", "0x10", "7 bytes", "99999999999999999999"})
            QCOMPARE(readListing(listingOf("/a", "<getcontentlength>" + std::string(odd) +
                                                     "</getcontentlength>")),
                     (Lines{{"a", {}}}));
    }

    /// RFC 4918, 14.24: a response may have a status in place of properties.
    void whatIsNotThereIsLeftOut()
    {
        QCOMPARE(readListing("<multistatus xmlns='DAV:'><response><href>/a</href>"
                             "<status>HTTP/1.1 404 Not Found</status></response></multistatus>"),
                 Lines{});
    }

    /// Namespaces in XML 1.0: a prefix is what its nearest declaration says, and no more.
    void aPrefixIsWhatItsDeclarationSays()
    {
        const auto read = [](const std::string &prefix, const std::string &declaration) {
            const std::string p = prefix.empty() ? "" : prefix + ":";
            return readListing("<" + p + "multistatus " + declaration + "><" + p + "response><" +
                               p + "href>/a</" + p + "href></" + p + "response></" + p +
                               "multistatus>");
        };
        QCOMPARE(read("", "xmlns='DAV:'"), (Lines{{"a", {}}}));
        QCOMPARE(read("any", "xmlns:any='DAV:'"), (Lines{{"a", {}}}));
        QVERIFY(!read("", ""));
        QVERIFY(!read("D", ""));
        QVERIFY(!read("D", "xmlns='DAV:'"));
        QVERIFY(!read("D", "xmlns:D='http://example.org/'"));
        QCOMPARE(readListing("<D:multistatus xmlns:D='DAV:'><D:response xmlns:D='urn:x'>"
                             "<D:href>/a</D:href></D:response></D:multistatus>"),
                 Lines{});
    }

    void whatIsNoListingIsRefused_data()
    {
        QTest::addColumn<QString>("xml");
        QTest::newRow("nothing") << "";
        QTest::newRow("a page") << "<!DOCTYPE html><html><body>Please log in</body></html>";
        QTest::newRow("text") << "OK";
        QTest::newRow("an error of the standard") << "<error xmlns='DAV:'/>";
        QTest::newRow("one element closes another")
            << "<multistatus xmlns='DAV:'><a></multistatus>";
        QTest::newRow("two attributes run together") << "<multistatus xmlns='DAV:'a='b'";
    }
    void whatIsNoListingIsRefused()
    {
        QFETCH(QString, xml);
        QVERIFY(!readListing(xml.toStdString()));
    }

    /// A listing that was cut is none: a file that is missing from it would be taken for deleted.
    void aCutListingIsRefusedWhereverItIsCut()
    {
        for (const std::string &whole :
             {samples::apacheListing, samples::rcloneListing, samples::nginxListing}) {
            const std::size_t end = whole.rfind("</D:multistatus>") + 16;
            for (std::size_t length = 0; length < end; ++length)
                QVERIFY2(!readListing(whole.substr(0, length)),
                         qPrintable(QString::number(length)));
        }
    }

    /// Entities that hold entities, and files of the phone, stay unread (CWE-776 and CWE-611; the
    /// numbers are from memory).
    void entitiesAreNotFollowed()
    {
        std::string bomb = "<!DOCTYPE m [<!ENTITY a0 'lol'>";
        for (int level = 1; level < 12; ++level) {
            const std::string inner = "&a" + std::to_string(level - 1) + ";";
            bomb += "<!ENTITY a" + std::to_string(level) + " '" + repeated(inner, 10) + "'>";
        }
        bomb += "<!ENTITY f SYSTEM 'file:///etc/hostname'>]>";
        QCOMPARE(readListing(bomb + listingOf("/&a11;", "")), Lines{});
        QCOMPARE(readListing(bomb + listingOf("/&f;", "")), Lines{});
        QCOMPARE(readListing(bomb + listingOf("/&#x61;&#49;", "")), (Lines{{"a1", {}}}));
    }

    /// As large as a listing may be (largestListing), and made to be dear.
    void nothingIsTooDeepOrTooWide()
    {
        const std::string begin = "<multistatus xmlns='DAV:'>";
        const std::string end = "</multistatus>";
        const int deep = 250'000;
        QCOMPARE(readListing(begin + repeated("<a>", deep) + repeated("</a>", deep) + end),
                 Lines{});
        QVERIFY(!readListing(begin + repeated("<a>", 600'000)));
        const std::string response = "<response><href>/a</href></response>";
        QCOMPARE(readListing(begin + repeated(response, 50'000) + end)->size(),
                 std::size_t{50'000});
        QCOMPARE(readListing("<multistatus " + repeated("a='' ", 200'000) + "xmlns='DAV:'>" +
                             repeated(response, 25'000) + end),
                 std::nullopt); // its namespace stands behind more than anybody looks through
        QCOMPARE(readListing(begin + repeated("<response>", 190'000)), std::nullopt);
    }

    /// As real: a thousand files a folder is the most (platform.md).
    void aThousandFilesAreWellBelowTheBound()
    {
        std::string xml = "<D:multistatus xmlns:D=\"DAV:\">";
        const std::string response =
            samples::rcloneListing.substr(samples::rcloneListing.rfind("<D:response>"),
                                          samples::rcloneListing.rfind("</D:multistatus>") -
                                              samples::rcloneListing.rfind("<D:response>"));
        const std::string name(64, 'a');
        for (int file = 0; file < 1000; ++file) {
            std::string one = response;
            one.replace(one.find("b2"), 2, name);
            xml += one;
        }
        xml += "</D:multistatus>";
        QVERIFY(xml.size() * 5 < largestListing);
        QCOMPARE(readListing(xml)->size(), std::size_t{1000});
    }

    void aPlainNameIsOneThatEveryServerKeeps()
    {
        for (const char *plain : {"a", "0.trial", "a1.part", "f0"})
            QVERIFY(isPlainName(plain));
        QVERIFY(isPlainName(std::string(100, 'f')));
        for (const char *odd : {"", ".", "..", ".a", "A", "a/b", "a b", "a-b", "\xc3\xa4", "a%31"})
            QVERIFY(!isPlainName(odd));
        QVERIFY(!isPlainName(std::string(101, 'f')));
    }
};

QTEST_APPLESS_MAIN(TestWebdavListing)
#include "tst_webdav_listing.moc"

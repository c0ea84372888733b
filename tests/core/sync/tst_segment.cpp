#include <QTest>

#include "core/crypto/seal.h"
#include "core/sync/squeeze.h"
#include "segment_samples.h"

#include <nlohmann/json.hpp>

#include <fstream>

using namespace lidlark;
using namespace lidlark::sync;

Q_DECLARE_METATYPE(lidlark::sync::SegmentFault)

namespace {

std::variant<Segment, SegmentFault> openedAs(const std::string &bytes, const Epoch &epoch,
                                             const DeviceId &device = samples::gransTablet)
{
    return openSegment(bytes, epoch, device, crypto::publicKeyOf(samples::gransSeed()));
}

std::optional<SegmentFault> faultOf(const std::string &bytes, const Epoch &epoch = samples::epoch(),
                                    const DeviceId &device = samples::gransTablet)
{
    const auto answer = openedAs(bytes, epoch, device);
    const auto *fault = std::get_if<SegmentFault>(&answer);
    return fault != nullptr ? std::optional(*fault) : std::nullopt;
}

/// Sealed and signed by Gran's own tablet, whatever stands in it.
std::string crafted(const std::string &text, SegmentHeader header)
{
    header.textSize = static_cast<std::uint32_t>(text.size());
    std::string bytes = toBytes(header);
    bytes += crypto::sealed(squeezed(text), bytes, sealKeyOf(samples::epoch()), header.nonce);
    const auto signature = crypto::signatureOf("lidlark segment 1\n" + bytes, samples::gransSeed());
    return bytes + crypto::textOf(signature);
}

std::string lineOf(const journal::Event &event)
{
    return journal::canonicalText(event) + "\n";
}

} // namespace

/// Guards that a segment comes back whole or not at all (design.md 9): torn, changed, foreign,
/// swapped, forged or hostile, it is named, and nothing of it is read.
class TestSegment : public QObject
{
    Q_OBJECT

private slots:
    void whatIsSealedComesBack()
    {
        const std::string bytes = samples::sealed({}, 1, 3);
        const Segment segment = samples::opened(bytes);
        QCOMPARE(segment.events, samples::events(1, 3));
        QCOMPARE(segment.header.sequence, std::uint64_t{1});
        QCOMPARE(segment.header.firstCounter, std::uint64_t{1});
        QCOMPARE(segment.hash, blake2b(bytes));
    }

    /// The storage holds no word of it.
    void nothingCanBeReadWithoutTheKey()
    {
        const std::string bytes = samples::sealed({}, 1, 3);
        for (const char *word : {"Gran", "pegs", "lost", "b-fin", "c-fin", "d-gran"})
            QCOMPARE(bytes.find(word), std::string::npos);
        Epoch stranger = samples::epoch();
        stranger.key = crypto::EpochKey(samples::filled(0x99));
        QVERIFY(faultOf(bytes, stranger).has_value());
        QVERIFY(segmentName(stranger, samples::gransTablet, 1) !=
                segmentName(samples::epoch(), samples::gransTablet, 1));
    }

    void everyByteCounts()
    {
        const std::string bytes = samples::sealed({}, 1, 2);
        for (std::size_t at = 0; at < bytes.size(); ++at) {
            for (const int bit : {1, 0x80}) {
                std::string touched = bytes;
                touched[at] = static_cast<char>(touched[at] ^ bit);
                QVERIFY2(faultOf(touched), qPrintable(QString::number(at)));
            }
        }
    }

    void everyLengthButTheWholeIsTorn()
    {
        const std::string bytes = samples::sealed({}, 1, 2);
        for (std::size_t size = 0; size < bytes.size(); ++size)
            QVERIFY2(faultOf(bytes.substr(0, size)), qPrintable(QString::number(size)));
        QVERIFY(faultOf(bytes + "x"));
    }

    void aStrangerIsNamed()
    {
        const std::string bytes = samples::sealed({}, 1, 1);
        Epoch other = samples::epoch();
        other.crew = "c-anya";
        QCOMPARE(faultOf(bytes, other), std::optional(SegmentFault::AnotherCrew));
        other = samples::epoch();
        other.lane = {journal::LaneKind::Safety, "h-fin"};
        QCOMPARE(faultOf(bytes, other), std::optional(SegmentFault::AnotherLane));
        other = samples::epoch();
        other.id = samples::filled(0x0F);
        QCOMPARE(faultOf(bytes, other), std::optional(SegmentFault::AnotherEpoch));
        QCOMPARE(faultOf(bytes, samples::epoch(), {"d-ruth"}),
                 std::optional(SegmentFault::AnotherDevice));
        std::string newer = bytes;
        newer[7] = 2;
        QCOMPARE(faultOf(newer), std::optional(SegmentFault::Newer));
        QCOMPARE(faultOf("a picture"), std::optional(SegmentFault::Foreign));
    }

    /// A member who holds the key is still not another member.
    void aMemberCannotWriteAsAnother()
    {
        const auto forged =
            sealSegment(samples::epoch(), {}, samples::events(1, 1),
                        crypto::SigningSeed(samples::filled(0x44)), samples::nonce());
        QCOMPARE(faultOf(*forged), std::optional(SegmentFault::NotSigned));
    }

    /// What a device of the crew may sign and still must not be believed.
    void hostileContentsAreNamed_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<quint32>("events");
        QTest::addColumn<SegmentFault>("fault");
        const auto row = [](const char *name, const std::string &text, quint32 events,
                            SegmentFault fault) {
            QTest::newRow(name) << QByteArray::fromStdString(text) << events << fault;
        };
        const std::string one = lineOf(samples::event(1));
        journal::Event another = samples::event(2);
        another.device = {"d-ruth"};
        journal::Event elsewhere = samples::event(2);
        elsewhere.lane.scope = "b-anya";
        row("no line", "pegs", 1, SegmentFault::NotEvents);
        row("not an event", "{}\n", 1, SegmentFault::NotEvents);
        row("another spelling", " " + one, 1, SegmentFault::NotEvents);
        // Written by a call a level, these used up the stack of whoever read them.
        const std::string shallow = lineOf(samples::event(1));
        const std::size_t fields = shallow.find("{\"exception\"");
        for (const std::size_t levels : {std::size_t{60}, std::size_t{1'000'000}}) {
            const std::string nested = "{\"a\":" + std::string(levels, '[') +
                                       std::string(levels, ']') + "}" +
                                       shallow.substr(shallow.find('}', fields) + 1);
            row("nested without end", shallow.substr(0, fields) + nested, 1,
                SegmentFault::NotEvents);
        }
        row("without its end", one.substr(0, one.size() - 1), 1, SegmentFault::NotEvents);
        row("nothing", "", 0, SegmentFault::CountersAstray);
        row("one too few", one, 2, SegmentFault::CountersAstray);
        row("twice", one + one, 2, SegmentFault::CountersAstray);
        row("a gap", one + lineOf(samples::event(3)), 2, SegmentFault::CountersAstray);
        row("from the second on", lineOf(samples::event(2)), 1, SegmentFault::CountersAstray);
        row("another's event", one + lineOf(another), 2, SegmentFault::OthersEvents);
        row("of another box", one + lineOf(elsewhere), 2, SegmentFault::OthersEvents);
    }
    void hostileContentsAreNamed()
    {
        QFETCH(QByteArray, text);
        QFETCH(quint32, events);
        QFETCH(SegmentFault, fault);
        SegmentHeader header = *headerOf(samples::sealed({}, 1, 1));
        header.events = events;
        QCOMPARE(faultOf(crafted(text.toStdString(), header)), std::optional(fault));
    }

    /// A few bytes that swell to far more than they say.
    void aBombDoesNotGoOff()
    {
        SegmentHeader header = *headerOf(samples::sealed({}, 1, 1));
        header.textSize = 100;
        std::string bytes = toBytes(header);
        bytes += crypto::sealed(squeezed(std::string(50'000'000, ' ')), bytes,
                                sealKeyOf(samples::epoch()), header.nonce);
        bytes += crypto::textOf(
            crypto::signatureOf("lidlark segment 1\n" + bytes, samples::gransSeed()));
        QCOMPARE(faultOf(bytes), std::optional(SegmentFault::NotCompressed));
        header.textSize = UINT32_MAX;
        QCOMPARE(faultOf(toBytes(header) + std::string(80, '\0')),
                 std::optional(SegmentFault::TooLarge));
    }

    void onlyOneRunOfOneDeviceIsSealed()
    {
        const auto seal = [](const std::vector<journal::Event> &events) {
            return sealSegment(samples::epoch(), {}, events, samples::gransSeed(),
                               samples::nonce());
        };
        QVERIFY(!seal({}));
        QVERIFY(!seal({samples::event(1), samples::event(3)}));
        journal::Event elsewhere = samples::event(1);
        elsewhere.lane.scope = "b-anya";
        QVERIFY(!seal({elsewhere}));
    }

    /// tests/data/sync/segment.json: for whoever writes a second reader (core/sync/FORMAT.md).
    void theSampleOfTheFormatIsRead()
    {
        std::ifstream file(qEnvironmentVariable("LIDLARK_SOURCE_DIR").toStdString() +
                           "/tests/data/sync/segment.json");
        const auto sample = nlohmann::json::parse(file, nullptr, false);
        QVERIFY(sample.is_object());
        const auto text = [&](const char *key) { return sample[key].get<std::string>(); };
        const std::string bytes =
            QByteArray::fromHex(QByteArray::fromStdString(text("segment"))).toStdString();
        const Segment segment = samples::opened(bytes);
        QCOMPARE(segment.events, samples::events(1, 2));
        QCOMPARE(hexOf(segment.hash), text("hash"));
        QCOMPARE(folderName(samples::epoch(), samples::gransTablet), text("folder"));
        QCOMPARE(segmentName(samples::epoch(), samples::gransTablet, 1), text("file"));
    }
};

QTEST_APPLESS_MAIN(TestSegment)
#include "tst_segment.moc"

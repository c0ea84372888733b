#include <QTest>

#include "core/sync/bundle_storage.h"
#include "core/sync/publish.h"
#include "segment_samples.h"

#include <rapidcheck.h>

using namespace lidlark;
using namespace lidlark::sync;

namespace {

Bundle threeFiles()
{
    return {{{"0a", "01"}, "eyes"}, {{"0a", "02"}, std::string("\0\n\xff", 3)}, {{"0b", "01"}, ""}};
}

std::optional<BundleFault> faultOf(std::string_view bytes)
{
    const auto answer = bundleFrom(bytes);
    const auto *fault = std::get_if<BundleFault>(&answer);
    return fault != nullptr ? std::optional(*fault) : std::nullopt;
}

/// With its hash, whatever stands in it.
std::string closed(const std::string &bytes)
{
    return bytes + crypto::textOf(blake2b(bytes));
}

std::string number(std::size_t value)
{
    std::string bytes;
    for (const unsigned shift : {24U, 16U, 8U, 0U})
        bytes.push_back(static_cast<char>(value >> shift & 0xFFU));
    return bytes;
}

std::string head(std::size_t files)
{
    return "LARKBND\x01" + number(files);
}

std::string named(const std::string &name)
{
    return static_cast<char>(name.size()) + name;
}

std::string entry(const std::string &folder, const std::string &name, const std::string &file)
{
    return named(folder) + named(name) + number(file.size()) + file;
}

} // namespace

Q_DECLARE_METATYPE(lidlark::sync::BundleFault)

/// Guards that a file handed over is read whole or not at all, and never written to.
class TestBundle : public QObject
{
    Q_OBJECT

private slots:
    void whatIsHandedOverIsRead()
    {
        QVERIFY(rc::check("every bundle comes back", [] {
            const auto name = rc::gen::map(rc::gen::inRange(1, 50),
                                           [](int i) { return hexOf(blake2b(std::to_string(i))); });
            Bundle bundle;
            for (int i = *rc::gen::inRange(0, 20); i > 0; --i)
                bundle[{*name, *name}] = *rc::gen::arbitrary<std::string>();
            const auto bytes = bundleOf(bundle);
            RC_ASSERT(std::get<Bundle>(bundleFrom(*bytes)) == bundle);
        }));
    }

    /// core/sync/FORMAT.md, 6, written out by hand.
    void itIsAsTheFormatSays()
    {
        QCOMPARE(*bundleOf(threeFiles()),
                 closed(head(3) + entry("0a", "01", "eyes") +
                        entry("0a", "02", std::string("\0\n\xff", 3)) + entry("0b", "01", "")));
        QCOMPARE(*bundleOf({}), closed(head(0)));
        // Source: Python 3.11, struct and hashlib.blake2b, from the same page.
        const QByteArray bytes = QByteArray::fromStdString(*bundleOf(threeFiles()));
        QCOMPARE(bytes.size(), qsizetype{81});
        QCOMPARE(bytes.right(32).toHex(),
                 QByteArray("25bc7a5723fc5f11550ce6147649507f9d461959bcb50c315da55704cf52a819"));
    }

    void everyByteCounts()
    {
        const std::string bytes = *bundleOf(threeFiles());
        for (std::size_t at = 0; at < bytes.size(); ++at) {
            for (int bit = 1; bit < 256; bit <<= 1) {
                std::string touched = bytes;
                touched[at] = static_cast<char>(touched[at] ^ bit);
                QVERIFY2(faultOf(touched), qPrintable(QString::number(at)));
            }
        }
    }

    void everyLengthButTheWholeIsTorn()
    {
        const std::string bytes = *bundleOf(threeFiles());
        for (std::size_t size = 0; size < bytes.size(); ++size)
            QCOMPARE(faultOf(bytes.substr(0, size)),
                     std::optional(size < 8 ? BundleFault::Foreign : BundleFault::Torn));
        QCOMPARE(faultOf(bytes + "x"), std::optional(BundleFault::Torn));
    }

    /// With a hash that holds: what is in it is still not believed.
    void hostileContentsAreRefused_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<BundleFault>("fault");
        const auto row = [](const char *name, const std::string &bytes,
                            BundleFault fault = BundleFault::Torn) {
            QTest::newRow(name) << QByteArray::fromStdString(closed(bytes)) << fault;
        };
        const std::string one = entry("0a", "01", "eyes");
        row("one too few", head(2) + one);
        row("one too many", head(1) + one + entry("0b", "01", ""));
        row("something after them", head(1) + one + "x");
        row("no count", "LARKBND\x01");
        row("half a count", "LARKBND\x01" + std::string(2, '\0'));
        row("a count beyond all", head(0xFFFFFFFF), BundleFault::TooLarge);
        row("a file too many", head(mostInBundle + 1), BundleFault::TooLarge);
        row("a count that no bytes can hold", head(mostInBundle));
        row("twice", head(2) + one + one);
        row("another order", head(2) + entry("0b", "01", "") + one);
        row("another order within a folder", head(2) + entry("0a", "02", "") + one);
        row("longer than what is there", head(1) + named("0a") + named("01") + number(5) + "eyes");
        row("far longer", head(1) + named("0a") + named("01") + number(0xFFFFFFFF) + "eyes",
            BundleFault::TooLarge);
        row("a length too large by one", head(1) + named("0a") + named("01") + number(1'000'001),
            BundleFault::TooLarge);
        row("no folder", head(1) + entry("", "01", "eyes"));
        row("no name", head(1) + entry("0a", "", "eyes"));
        row("out of the folder", head(1) + entry("..", "01", "eyes"));
        row("another way out", head(1) + entry("0a", "../01", "eyes"));
        row("hidden", head(1) + entry("0a", ".01", "eyes"));
        row("capitals", head(1) + entry("0A", "01", "eyes"));
        row("a zero byte", head(1) + entry("0a", std::string("0\0", 2), "eyes"));
        row("a long name", head(1) + entry("0a", std::string(101, 'a'), "eyes"));
        row("a name beyond the end", head(1) + "\xff" + "0a");
        row("a later format", "LARKBND\x02" + number(0), BundleFault::Newer);
        row("no format", std::string("LARKBND\0", 8) + number(0), BundleFault::Foreign);
        row("something else", "PK\x03\x04 a packed folder", BundleFault::Foreign);
    }
    void hostileContentsAreRefused()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(BundleFault, fault);
        QCOMPARE(faultOf(bytes.toStdString()), std::optional(fault));
    }

    void tooMuchIsNeitherWrittenNorRead()
    {
        QCOMPARE(faultOf(std::string(largestBundle + 1, 'L')),
                 std::optional(BundleFault::TooLarge));
        QVERIFY(!bundleOf({{{"0a", "01"}, std::string(largestSegment + 1, 'x')}}));
        Bundle bundle;
        const auto named = [](std::size_t i) { return hexOf(blake2b(std::to_string(i))); };
        for (std::size_t i = 0; i <= mostInBundle; ++i)
            bundle[{"0a", named(i)}] = "x";
        QVERIFY(!bundleOf(bundle));
        bundle.erase(bundle.begin());
        QCOMPARE(std::get<Bundle>(bundleFrom(*bundleOf(bundle))).size(), mostInBundle);
        bundle.clear();
        for (std::size_t i = 0; i < 64; ++i)
            bundle[{"0a", named(i)}] = std::string(largestSegment, 'x');
        QVERIFY(!bundleOf(bundle)); // the files alone are as large as a bundle may be
        bundle.erase(bundle.begin());
        QVERIFY(bundleOf(bundle));
        QVERIFY(!bundleOf({{{"..", "01"}, "eyes"}}));
        QVERIFY(!bundleOf({{{"0a", "01.part"}, "eyes"}}));
    }

    void itIsReadAsAStorage()
    {
        BundleStorage storage(threeFiles());
        using Names = std::vector<std::string>;
        QCOMPARE(std::get<Names>(storage.list("0a")), (Names{"01", "02"}));
        QCOMPARE(std::get<Names>(storage.list("0c")), Names());
        QCOMPARE(std::get<Names>(storage.list("0")), Names());
        QCOMPARE(*std::get<std::optional<std::string>>(storage.get({"0a", "01"})), "eyes");
        QVERIFY(!std::get<std::optional<std::string>>(storage.get({"0a", "03"})));
        QCOMPARE(std::get<std::optional<std::uint64_t>>(storage.sizeOf({"0a", "02"})),
                 std::optional<std::uint64_t>(3));
        QCOMPARE(std::get<std::optional<std::uint64_t>>(storage.sizeOf({"0b", "01"})),
                 std::optional<std::uint64_t>(0));
        QVERIFY(!std::get<std::optional<std::uint64_t>>(storage.sizeOf({"0b", "02"})));
    }

    void nothingIsWrittenToIt()
    {
        BundleStorage storage(threeFiles());
        QCOMPARE(troubleIn(storage.makeFolder("0d")), std::optional(Trouble::Refused));
        QCOMPARE(troubleIn(storage.put({"0a", "01"}, "x")), std::optional(Trouble::Refused));
        QCOMPARE(troubleIn(storage.move({"0a", "01"}, "03")), std::optional(Trouble::Refused));
        QCOMPARE(troubleIn(storage.remove({"0a", "01"})), std::optional(Trouble::Refused));
        SeededEntropy entropy("bundle");
        QCOMPARE(troubleIn(publish(storage, {"0a", "09"}, "x", entropy)),
                 std::optional(Trouble::Refused));
        QCOMPARE(*std::get<std::optional<std::string>>(storage.get({"0a", "01"})), "eyes");
    }

    /// A segment that travelled in a bundle opens as one from any other storage.
    void aSegmentComesOutAsItWentIn()
    {
        const Place place{folderName(samples::epoch(), samples::gransTablet),
                          segmentName(samples::epoch(), samples::gransTablet, 1)};
        const std::string bytes = *bundleOf({{place, samples::sealed({}, 1, 3)}});
        BundleStorage storage(std::get<Bundle>(bundleFrom(bytes)));
        const auto segment = storage.get(place);
        QCOMPARE(samples::opened(*std::get<std::optional<std::string>>(segment)).events,
                 samples::events(1, 3));
    }
};

QTEST_APPLESS_MAIN(TestBundle)
#include "tst_bundle.moc"

#include <QTest>

#include "core/sync/folder_storage.h"
#include "core/sync/publish.h"
#include "shaky_storage.h"

#include <QTemporaryDir>

#include <fstream>

using namespace lidlark;
using namespace lidlark::sync;
using samples::ShakyStorage;

namespace {

const Place place{"f0", "a1"};

std::optional<Published> outcomeOf(const Answer<Published> &answer)
{
    const auto *published = std::get_if<Published>(&answer);
    return published != nullptr ? std::optional(*published) : std::nullopt;
}

/// Asked again until there is an answer, as the next sync does.
Published insist(Storage &storage, const Place &where, const std::string &bytes, Entropy &entropy)
{
    for (int tries = 0; tries < 500; ++tries) {
        if (const auto outcome = outcomeOf(publish(storage, where, bytes, entropy)))
            return *outcome;
    }
    qFatal("never published");
}

} // namespace

/// Guards that a file on a storage is whole or not there, whatever breaks on the way, and that
/// nobody's bytes are ever gone over (platform.md, "Publish protocol").
class TestPublish : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<QTemporaryDir> m_folder;

    [[nodiscard]] std::filesystem::path root() const { return m_folder->path().toStdString(); }

private slots:
    void init() { m_folder = std::make_unique<QTemporaryDir>(); }

    /// Sixty segments, three calls of ten broken: as often as the protocol was tried on servers.
    void nothingIsLostOnAShakyWire()
    {
        for (unsigned seed = 0; seed < 200; ++seed) {
            ShakyStorage storage(seed, 30);
            SeededEntropy entropy("shaky " + std::to_string(seed));
            for (int segment = 0; segment < 60; ++segment) {
                const Place where{"f0", std::to_string(segment)};
                const std::string bytes(100 + static_cast<std::size_t>(segment), 's');
                QCOMPARE(insist(storage, where, bytes, entropy), Published::Done);
                QCOMPARE(storage.files.at(where), bytes);
            }
        }
    }

    /// At every moment, not only at the end: a name holds all of the bytes or does not exist.
    void noHalfIsEverMet()
    {
        const std::string bytes(1000, 'w');
        for (unsigned seed = 0; seed < 500; ++seed) {
            ShakyStorage storage(seed, 60);
            SeededEntropy entropy("half " + std::to_string(seed));
            for (int tries = 0; tries < 20; ++tries) {
                (void)publish(storage, place, bytes, entropy);
                const auto found = storage.files.find(place);
                QVERIFY(found == storage.files.end() || found->second == bytes);
            }
        }
    }

    void aCopiedPhoneFindsItsNameTaken()
    {
        ShakyStorage storage(1, 0);
        SeededEntropy entropy("copied");
        QCOMPARE(outcomeOf(publish(storage, place, "one", entropy)),
                 std::optional(Published::Done));
        QCOMPARE(outcomeOf(publish(storage, place, "two", entropy)),
                 std::optional(Published::Taken)); // of the same length
        QCOMPARE(storage.files.at(place), std::string("one"));
        QCOMPARE(storage.files.size(), std::size_t{1});
    }

    void whatIsThereIsNotWrittenAgain()
    {
        ShakyStorage storage(1, 0);
        SeededEntropy entropy("again");
        (void)publish(storage, place, "one", entropy);
        const int before = storage.calls;
        QCOMPARE(outcomeOf(publish(storage, place, "one", entropy)),
                 std::optional(Published::Done));
        QVERIFY(storage.calls - before <= 3); // the folder, the size, the bytes
    }

    void aFolderKeepsFiles()
    {
        FolderStorage storage(root());
        SeededEntropy entropy("folder");
        QCOMPARE(outcomeOf(publish(storage, place, "bytes", entropy)),
                 std::optional(Published::Done));
        QCOMPARE(std::get<std::optional<std::string>>(storage.get(place)),
                 std::optional(std::string("bytes")));
        QCOMPARE(outcomeOf(publish(storage, place, "other", entropy)),
                 std::optional(Published::Taken));
        QCOMPARE(std::get<std::vector<std::string>>(storage.list("f0")),
                 std::vector<std::string>{"a1"}); // no part is left
        QVERIFY(std::get<std::vector<std::string>>(storage.list("f1")).empty());
        QVERIFY(!std::get<std::optional<std::string>>(storage.get({"f0", "none"})));
        QVERIFY(!troubleIn(storage.remove(place)));
        QVERIFY(!std::get<std::optional<std::uint64_t>>(storage.sizeOf(place)));
    }

    /// A stick that is out is no empty storage: nothing is made in its place.
    void aStickThatIsOutIsOutOfReach()
    {
        const std::filesystem::path out = root() / "stick";
        FolderStorage storage(out);
        SeededEntropy entropy("stick");
        QCOMPARE(troubleIn(publish(storage, place, "bytes", entropy)),
                 std::optional(Trouble::Unreachable));
        QCOMPARE(troubleIn(storage.list("f0")), std::optional(Trouble::Unreachable));
        QCOMPARE(troubleIn(storage.get(place)), std::optional(Trouble::Unreachable));
        QVERIFY(!std::filesystem::exists(out));
    }

    /// /dev/full answers every write as a full disk does (full(4) of the Linux manual).
    void aFullOneSaysSo()
    {
        QVERIFY(std::filesystem::exists("/dev/full"));
        std::filesystem::create_directory(root() / "f0");
        std::filesystem::create_symlink("/dev/full", root() / "f0" / "full");
        FolderStorage storage(root());
        QCOMPARE(troubleIn(storage.put({"f0", "full"}, "bytes")), std::optional(Trouble::Full));
    }

    void aPartThatWasCutOffHarmsNobody()
    {
        std::filesystem::create_directory(root() / "f0");
        std::ofstream(root() / "f0" / "a1.0123.part") << "half";
        FolderStorage storage(root());
        SeededEntropy entropy("part");
        QCOMPARE(outcomeOf(publish(storage, place, "whole", entropy)),
                 std::optional(Published::Done));
        QCOMPARE(std::get<std::optional<std::string>>(storage.get(place)),
                 std::optional(std::string("whole")));
    }
};

QTEST_APPLESS_MAIN(TestPublish)
#include "tst_publish.moc"

#include <QTest>

#include "core/sync/connection_check.h"
#include "shaky_storage.h"

using namespace lidlark;
using namespace lidlark::sync;

namespace {

/// A storage that does all well but what it is told to do otherwise.
class Peculiar final : public Storage
{
public:
    std::optional<Trouble> ofAll;
    std::optional<Trouble> ofMakingFolders;
    std::optional<Trouble> ofWriting;
    std::optional<Trouble> ofListing;
    std::optional<Trouble> ofRenaming;
    std::optional<Trouble> ofReading;
    std::optional<Trouble> ofRemoving;
    bool showsNothing = false;
    bool renamesOver = false;
    bool removesNothing = false;
    bool readsAsText = false; ///< Every line feed as two bytes.
    samples::ShakyStorage kept{1, 0};

    Answer<bool> makeFolder(const std::string &folder) override
    {
        return unless<bool>(ofMakingFolders, [&] { return kept.makeFolder(folder); });
    }
    Answer<std::vector<std::string>> list(const std::string &folder) override
    {
        using Names = std::vector<std::string>;
        return unless<Names>(
            ofListing, [&] { return showsNothing ? Answer<Names>(Names()) : kept.list(folder); });
    }
    Answer<std::optional<std::uint64_t>> sizeOf(const Place &place) override
    {
        return unless<std::optional<std::uint64_t>>({}, [&] { return kept.sizeOf(place); });
    }
    Answer<std::optional<std::string>> get(const Place &place) override
    {
        return unless<std::optional<std::string>>(ofReading, [&] {
            auto read = kept.get(place);
            auto &bytes = std::get<std::optional<std::string>>(read);
            if (readsAsText && bytes)
                bytes->replace(bytes->find('\n'), 1, "\r\n");
            return read;
        });
    }
    Answer<bool> put(const Place &place, std::string_view bytes) override
    {
        return unless<bool>(ofWriting, [&] { return kept.put(place, bytes); });
    }
    Answer<Moved> move(const Place &from, const std::string &name) override
    {
        return unless<Moved>(ofRenaming, [&] {
            if (renamesOver)
                kept.files.erase({from.folder, name});
            return kept.move(from, name);
        });
    }
    Answer<bool> remove(const Place &place) override
    {
        return unless<bool>(
            ofRemoving, [&] { return removesNothing ? Answer<bool>(true) : kept.remove(place); });
    }

private:
    template <class T, class Do> Answer<T> unless(std::optional<Trouble> trouble, Do otherwise)
    {
        if (ofAll)
            return *ofAll;
        return trouble ? Answer<T>(*trouble) : otherwise();
    }
};

Connection checked(const std::function<void(Peculiar &)> &make)
{
    Peculiar storage;
    make(storage);
    SeededEntropy entropy("check");
    return checkConnection(storage, entropy);
}

} // namespace

/// Guards that a family is told what their server cannot do before anything of theirs lies there.
class TestConnectionCheck : public QObject
{
    Q_OBJECT

private slots:
    void aGoodOneWorksAndStaysClean()
    {
        Peculiar storage;
        storage.kept.files[{"f0", "a1"}] = "somebody's";
        SeededEntropy entropy("check");
        QCOMPARE(checkConnection(storage, entropy), Connection::Works);
        QCOMPARE(storage.kept.files.size(), std::size_t{1});
    }

    void everyTroubleOfAllHasItsName()
    {
        const auto of = [](Trouble trouble) {
            return checked([trouble](Peculiar &storage) { storage.ofAll = trouble; });
        };
        QCOMPARE(of(Trouble::Unreachable), Connection::NoAnswer);
        QCOMPARE(of(Trouble::NotTrusted), Connection::NotTrusted);
        QCOMPARE(of(Trouble::Refused), Connection::NotLetIn);
        QCOMPARE(of(Trouble::Full), Connection::Full);
        QCOMPARE(of(Trouble::Odd), Connection::NoStorage);
    }

    void whatOneStepCannotDoIsNamed()
    {
        const auto with = [](std::optional<Trouble> Peculiar::*step, Trouble trouble) {
            return checked([&](Peculiar &storage) { storage.*step = trouble; });
        };
        QCOMPARE(with(&Peculiar::ofMakingFolders, Trouble::Refused), Connection::NoFolders);
        QCOMPARE(with(&Peculiar::ofMakingFolders, Trouble::Odd), Connection::NoStorage);
        QCOMPARE(with(&Peculiar::ofWriting, Trouble::Refused), Connection::NoWriting);
        QCOMPARE(with(&Peculiar::ofWriting, Trouble::Full), Connection::Full);
        QCOMPARE(with(&Peculiar::ofListing, Trouble::Odd), Connection::NoListing);
        QCOMPARE(with(&Peculiar::ofReading, Trouble::Refused), Connection::ChangesBytes);
        QCOMPARE(with(&Peculiar::ofRemoving, Trouble::Refused), Connection::NoDeleting);
    }

    /// A proxy that ends TLS refuses or cannot pass on the scheme in Destination: 400, 403 or 502
    /// (platform.md, WebDAV).
    void aProxyInTheWayOfRenamingIsNamed()
    {
        for (const Trouble trouble : {Trouble::Odd, Trouble::Refused, Trouble::Unreachable})
            QCOMPARE(checked([&](Peculiar &storage) { storage.ofRenaming = trouble; }),
                     Connection::NoRenaming);
    }

    void whoeverSaysYesAndDoesNotIsFoundOut()
    {
        QCOMPARE(checked([](Peculiar &storage) { storage.renamesOver = true; }),
                 Connection::RenamesOver);
        QCOMPARE(checked([](Peculiar &storage) { storage.showsNothing = true; }),
                 Connection::NoListing);
        QCOMPARE(checked([](Peculiar &storage) { storage.readsAsText = true; }),
                 Connection::ChangesBytes);
        QCOMPARE(checked([](Peculiar &storage) { storage.removesNothing = true; }),
                 Connection::NoDeleting);
    }

    void whatWasTriedIsTakenAwayWhereItCanBe()
    {
        Peculiar storage;
        storage.ofRenaming = Trouble::Odd;
        SeededEntropy entropy("check");
        QCOMPARE(checkConnection(storage, entropy), Connection::NoRenaming);
        QVERIFY(storage.kept.files.empty());
    }
};

QTEST_APPLESS_MAIN(TestConnectionCheck)
#include "tst_connection_check.moc"

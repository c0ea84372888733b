#include <QtTest>

#include "core/usecase/whole_folder.h"

#include <fstream>
#include <memory>
#include <optional>
#include <set>
#include <sstream>
#include <vector>

#include <sys/resource.h>
#include <sys/stat.h>

#include <csignal>

using namespace lidlark;
using namespace lidlark::usecase;

namespace fs = std::filesystem;

namespace {

const std::vector<NamedFile> twoFiles{{"a.txt", "eyes\n"}, {"b.bin", std::string("\0\xff", 2)}};

std::optional<ErrorCode> codeOf(const Outcome &outcome)
{
    return outcome ? std::nullopt : std::optional(outcome.error().code);
}

std::string contents(const fs::path &path)
{
    std::ifstream file(path, std::ios::binary);
    std::ostringstream bytes;
    bytes << file.rdbuf();
    return bytes.str();
}

std::set<std::string> namesIn(const fs::path &folder)
{
    std::set<std::string> names;
    for (const auto &entry : fs::directory_iterator(folder))
        names.insert(entry.path().filename().string());
    return names;
}

mode_t accessOf(const fs::path &path)
{
    struct stat about {
    };
    return ::stat(path.c_str(), &about) == 0 ? about.st_mode & 0777U : 0;
}

/// No file may grow beyond a few bytes: to whoever writes, as a disk that is full.
class FullDisk
{
public:
    explicit FullDisk(rlim_t bytes)
    {
        ::signal(SIGXFSZ, SIG_IGN);
        ::getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit limit{bytes, m_before.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &limit);
    }
    ~FullDisk() { ::setrlimit(RLIMIT_FSIZE, &m_before); }
    FullDisk(const FullDisk &) = delete;
    FullDisk &operator=(const FullDisk &) = delete;

private:
    rlimit m_before{};
};

} // namespace

/// Guards that a folder is written whole or not at all, over nothing, and for nobody else's eyes.
class TestWholeFolder : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<QTemporaryDir> m_folder;

    [[nodiscard]] fs::path in(const char *name) const
    {
        return fs::path(m_folder->path().toStdString()) / name;
    }
    [[nodiscard]] std::set<std::string> left() const { return namesIn(in("")); }

private slots:
    void init() { m_folder = std::make_unique<QTemporaryDir>(); }

    void everyFileIsThere()
    {
        for (const char *name : {"new", "with/", "deep/../dotted", ".hidden"}) {
            fs::create_directory(in("deep"));
            QVERIFY2(writeWholeFolder(in(name), twoFiles).ok(), name);
        }
        QCOMPARE(contents(in("new/a.txt")), std::string("eyes\n"));
        QCOMPARE(contents(in("with/b.bin")), std::string("\0\xff", 2));
        QCOMPARE(left(), (std::set<std::string>{"new", "with", "deep", "dotted", ".hidden"}));
        QCOMPARE(namesIn(in("dotted")), (std::set<std::string>{"a.txt", "b.bin"}));
    }

    void nobodyElseLooksIn()
    {
        QVERIFY(writeWholeFolder(in("new"), twoFiles).ok());
        QCOMPARE(accessOf(in("new")), mode_t{0700});
        QCOMPARE(accessOf(in("new/a.txt")), mode_t{0600});
    }

    void anEmptyFolderIsFilled()
    {
        fs::create_directory(in("empty"));
        QVERIFY(writeWholeFolder(in("empty"), twoFiles).ok());
        QCOMPARE(namesIn(in("empty")).size(), std::size_t{2});
    }

    void whatIsThereIsNeverGoneOver_data()
    {
        QTest::addColumn<QString>("what");
        QTest::newRow("a folder with something in it") << "folder";
        QTest::newRow("a file") << "file";
        QTest::newRow("a link to an empty folder") << "link";
        QTest::newRow("a link to nothing") << "broken";
    }
    void whatIsThereIsNeverGoneOver()
    {
        QFETCH(QString, what);
        fs::create_directory(in("folder"));
        std::ofstream(in("folder/kept")) << "eyes";
        std::ofstream(in("file")) << "eyes";
        fs::create_directory(in("empty"));
        fs::create_directory_symlink(in("empty"), in("link"));
        fs::create_directory_symlink(in("nowhere"), in("broken"));
        const std::set<std::string> before = left();
        QCOMPARE(codeOf(writeWholeFolder(in(what.toUtf8()), twoFiles)),
                 std::optional(ErrorCode::Invalid));
        QCOMPARE(left(), before);
        QCOMPARE(namesIn(in("folder")), std::set<std::string>{"kept"});
        QCOMPARE(contents(in("folder/kept")), std::string("eyes"));
        QCOMPARE(contents(in("file")), std::string("eyes"));
        QVERIFY(fs::is_empty(in("empty")));
    }

    void aPlaceThatIsNoneIsNamed()
    {
        std::ofstream(in("file")) << "eyes";
        QCOMPARE(codeOf(writeWholeFolder(in("not/there"), twoFiles)),
                 std::optional(ErrorCode::NotFound));
        QCOMPARE(codeOf(writeWholeFolder(in("file/new"), twoFiles)),
                 std::optional(ErrorCode::NotFound));
        QVERIFY(!writeWholeFolder("", twoFiles).ok());
        QVERIFY(!writeWholeFolder("/", twoFiles).ok());
        QVERIFY(!writeWholeFolder(in(std::string(300, 'n').c_str()), twoFiles).ok());
        QCOMPARE(left(), std::set<std::string>{"file"});
    }

    /// The second file does not fit any more: the first one goes too.
    void aFullDiskLeavesNothingBehind()
    {
        const std::vector<NamedFile> files{{"a.txt", "eyes"}, {"b.txt", std::string(5000, 'x')}};
        {
            const FullDisk disk(4096);
            QCOMPARE(codeOf(writeWholeFolder(in("new"), files)),
                     std::optional(ErrorCode::Unwritable));
        }
        QVERIFY(left().empty());
        QVERIFY(writeWholeFolder(in("new"), files).ok());
    }

    void aNameThatCannotBeLeavesNothingBehind()
    {
        const std::vector<NamedFile> files{{"a.txt", "eyes"}, {std::string(300, 'n'), "eyes"}};
        QCOMPARE(codeOf(writeWholeFolder(in("new"), files)), std::optional(ErrorCode::Unwritable));
        QVERIFY(left().empty());
    }
};

QTEST_APPLESS_MAIN(TestWholeFolder)
#include "tst_whole_folder.moc"

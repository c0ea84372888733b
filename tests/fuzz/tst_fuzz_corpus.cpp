#include <QTest>

#include "tests/fuzz/target.h"

#include <QDir>
#include <QFile>

#include <array>
#include <stdexcept>

namespace {

using namespace lidlark;

/// What was promised does not hold.
class Broken : public std::logic_error
{
public:
    using std::logic_error::logic_error;
};

struct Named {
    const char *name; ///< Of its folder in the corpus; its file is fuzz_<name>.cpp.
    void (*run)(std::string_view);
};

constexpr std::array targets{Named{"build", fuzz::build},
                             Named{"bundle", fuzz::bundle},
                             Named{"catalogue", fuzz::catalogue},
                             Named{"csv", fuzz::csv},
                             Named{"drawing", fuzz::drawing},
                             Named{"event", fuzz::event},
                             Named{"folds", fuzz::folds},
                             Named{"http", fuzz::http},
                             Named{"instance", fuzz::instance},
                             Named{"join_code", fuzz::joinCode},
                             Named{"kept", fuzz::kept},
                             Named{"letters", fuzz::letters},
                             Named{"listing", fuzz::listing},
                             Named{"segment", fuzz::segment},
                             Named{"segment_inside", fuzz::segmentInside},
                             Named{"small_texts", fuzz::smallTexts},
                             Named{"tree", fuzz::tree}};

QDir folderOfTargets()
{
    return {qEnvironmentVariable("LIDLARK_SOURCE_DIR") + "/tests/fuzz"};
}

QByteArray bytesOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// @returns what was broken; empty: nothing.
QString brokenBy(const Named &target, const QByteArray &bytes)
{
    try {
        target.run({bytes.constData(), static_cast<std::size_t>(bytes.size())});
    } catch (const Broken &broken) {
        return broken.what();
    }
    return {};
}

} // namespace

void lidlark::fuzz::broken(const char *promise)
{
    throw Broken(promise);
}

/// Guards that what once broke a reader does not break it again: each target of tests/fuzz is given
/// its whole corpus, seeds and what fuzzing has found.
class TestFuzzCorpus : public QObject
{
    Q_OBJECT

private slots:
    void everyTargetIsReplayed()
    {
        QStringList files;
        QStringList folders;
        for (const Named &target : targets) {
            files << QString("fuzz_%1.cpp").arg(target.name);
            folders << target.name;
        }
        QCOMPARE(folderOfTargets().entryList({"fuzz_*.cpp"}, QDir::Files, QDir::Name), files);
        const QDir corpus(folderOfTargets().filePath("corpus"));
        QCOMPARE(corpus.entryList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name), folders);
    }

    void aBrokenPromiseIsSeen()
    {
        const Named liar{
            "liar", [](std::string_view bytes) { fuzz::must(bytes != "torn", "nothing is torn"); }};
        QCOMPARE(brokenBy(liar, "whole"), QString());
        QCOMPARE(brokenBy(liar, "torn"), QString("nothing is torn"));
    }

    void nothingInTheCorpusBreaks_data()
    {
        QTest::addColumn<QString>("path");
        QTest::addColumn<int>("target");
        for (std::size_t i = 0; i < targets.size(); ++i) {
            const QDir folder(folderOfTargets().filePath(QString("corpus/") + targets[i].name));
            const QStringList names = folder.entryList(QDir::Files, QDir::Name);
            QVERIFY2(names.size() >= 2, targets[i].name);
            for (const QString &name : names)
                QTest::addRow("%s/%s", targets[i].name, qPrintable(name))
                    << folder.filePath(name) << static_cast<int>(i);
        }
    }

    void nothingInTheCorpusBreaks()
    {
        QFETCH(QString, path);
        QFETCH(int, target);
        const QByteArray bytes = bytesOf(path);
        QVERIFY2(!bytes.isNull(), "the file can be read");
        QCOMPARE(brokenBy(targets[static_cast<std::size_t>(target)], bytes), QString());
    }
};

QTEST_MAIN(TestFuzzCorpus)
#include "tst_fuzz_corpus.moc"

#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "tests/tour/open_app.h"

#include <csignal>
#include <sys/resource.h>

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

namespace {

QByteArray contentsOf(const QString &file)
{
    QFile opened(file);
    return opened.open(QIODevice::ReadOnly) ? opened.readAll() : QByteArray();
}

void write(const QString &file, const QByteArray &bytes)
{
    QFile opened(file);
    if (!opened.open(QIODevice::WriteOnly) || opened.write(bytes) != bytes.size())
        qFatal("cannot write the test's own file");
}

/// Until it ends, no file may grow past @p most bytes: the kernel's own limit (setrlimit(2),
/// RLIMIT_FSIZE) makes SQLite's writes fail as on a full disk.
class FullDisk
{
public:
    explicit FullDisk(rlim_t most)
    {
        getrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, SIG_IGN);
        rlimit small = m_before;
        small.rlim_cur = most;
        setrlimit(RLIMIT_FSIZE, &small);
    }
    ~FullDisk() { setrlimit(RLIMIT_FSIZE, &m_before); }
    FullDisk(const FullDisk &) = delete;
    FullDisk &operator=(const FullDisk &) = delete;

private:
    rlimit m_before{};
};

int offersOn(const Hand &hand)
{
    int offers = 0;
    for (const QString &name : hand.names())
        offers += name.contains(QStringLiteral(". play ")) ? 1 : 0;
    return offers;
}

} // namespace

/// Guards that each thing that can be wrong with a phone gets one plain sentence on the real
/// screens, a way on, and takes nothing with it (job.md S, "bad input").
class TestTroubleOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;

    [[nodiscard]] QString path(const char *name) const
    {
        return m_folder.filePath(QString::fromUtf8(name));
    }
    QString finsPhone()
    {
        QString file = path("fin.lidlark");
        writeStore(file, "Fin", "Ruth", "h-fin");
        return file;
    }
    /// A copy of the catalogue that ships, to be spoilt.
    QString catalogueCopy(const char *name)
    {
        const std::filesystem::path copy = path(name).toStdString();
        std::filesystem::copy(sourceDir() + "/assets/catalogue", copy,
                              std::filesystem::copy_options::recursive);
        return path(name);
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }

    void aStoreThatIsNoneIsLeftAsItIs_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::newRow("a photograph") << QByteArray("\xff\xd8\xff\xe0 not a store").repeated(500);
        QTest::newRow("torn off in the middle") << QByteArray();
        QTest::newRow("another program's database") << QByteArray();
    }
    void aStoreThatIsNoneIsLeftAsItIs()
    {
        QFETCH(QByteArray, bytes);
        const QString row = QString::fromUtf8(QTest::currentDataTag());
        const QString file = path("spoilt.lidlark");
        QFile::remove(file);
        if (row.startsWith(QStringLiteral("torn"))) {
            bytes = contentsOf(finsPhone());
            bytes.truncate(bytes.size() / 2);
        }
        if (row.startsWith(QStringLiteral("another"))) {
            // The application id, by which SQLite tells whose a file is: offset 68, four bytes.
            // Source: sqlite.org/fileformat.html, section 1.3.
            bytes = contentsOf(finsPhone());
            bytes.replace(68, 4, QByteArray(4, '\x11'));
        }
        write(file, bytes);
        OpenApp app(file, mondayEvening);
        const Hand hand = app.hand();
        QVERIFY2(hand.reads(QStringLiteral("is damaged or is not a Lidlark store")),
                 qPrintable(hand.words().join(u'|')));
        QVERIFY(hand.tap(QStringLiteral("Try again")));
        QVERIFY(hand.reads(QStringLiteral("still the same")));
        QCOMPARE(contentsOf(file), bytes);
    }

    void aClockThatIsWrongIsSaid_data()
    {
        QTest::addColumn<QByteArray>("clock");
        QTest::addColumn<QString>("year");
        QTest::newRow("never set") << QByteArray("1970-01-01T00:03:00Z") << QStringLiteral("1970");
        QTest::newRow("far ahead") << QByteArray("2100-06-01T12:00:00Z") << QStringLiteral("2100");
    }
    void aClockThatIsWrongIsSaid()
    {
        QFETCH(QByteArray, clock);
        QFETCH(QString, year);
        const QString file = finsPhone();
        {
            OpenApp app(file, clock.constData());
            QVERIFY2(app.hand().reads(QStringLiteral("clock shows")),
                     qPrintable(app.hand().words().join(u'|')));
            QVERIFY2(app.hand().reads(year), qPrintable(app.hand().words().join(u'|')));
        }
        OpenApp put(file, mondayEvening);
        QCOMPARE(offersOn(put.hand()), 3);
    }

    /// The disk fills up in the middle of the play: the tap that could not be kept is said, the
    /// play stays where it was, and goes on when there is room again.
    void aDiskThatFillsUpIsSaidAndNothingIsLost()
    {
        const QString file = finsPhone();
        {
            OpenApp app(file, mondayEvening);
            const Hand hand = app.hand();
            QVERIFY(hand.tap(QStringLiteral("Everything")));
            QVERIFY(hand.tap(QStringLiteral("Slow Oars")));
            QVERIFY(app.graph.playInHand().active());
            {
                const FullDisk full(4096);
                QVERIFY(hand.tap(QStringLiteral("Stop here")));
                QVERIFY2(hand.reads(QStringLiteral("could not save")),
                         qPrintable(hand.words().join(u'|')));
                QVERIFY(app.graph.playInHand().active());
            }
            QVERIFY(hand.tap(QStringLiteral("Put away")));
            QVERIFY(hand.tap(QStringLiteral("Stop here")));
            QVERIFY(hand.tap(QStringLiteral("All back in the box")));
            QVERIFY(!app.graph.playInHand().active());
        }
        OpenApp again(file, mondayEvening);
        const auto family = again.graph.household().family();
        QCOMPARE(family->plays.size(), std::size_t{1});
        QVERIFY(family->plays.front().ending.has_value());
    }

    void onePageOfTheCatalogueThatCannotBeReadTakesNoOtherDown()
    {
        const QString copy = catalogueCopy("one-broken");
        write(copy + QStringLiteral("/activities/slow-oars.yaml"), "name: [Slow Oars\n  broken: {");
        OpenApp app(finsPhone(), mondayEvening, copy);
        QVERIFY2(app.hand().reads(QStringLiteral("One page of the catalogue cannot be read")),
                 qPrintable(app.hand().words().join(u'|')));
        QVERIFY(app.hand().reads(QStringLiteral("slow-oars")));
        QCOMPARE(offersOn(app.hand()), 3);
    }

    void noCatalogueAtAllIsSaid()
    {
        OpenApp app(finsPhone(), mondayEvening, path("nowhere"));
        QVERIFY2(app.hand().reads(QStringLiteral("activities of Lidlark cannot be read")),
                 qPrintable(app.hand().words().join(u'|')));
        QCOMPARE(offersOn(app.hand()), 0);
    }

    /// job.md A: a home set up tonight, with an age nobody said and nothing in the box, gets three.
    void aNewHomeOfUnknownAgeAndAnEmptyBoxGetsThree()
    {
        OpenApp app(path("new.lidlark"), mondayEvening);
        const Hand hand = app.hand();
        QVERIFY(hand.write(QStringLiteral("Whose box is it"), QStringLiteral("Kit")));
        QVERIFY(hand.tap(QStringLiteral("Go on")));
        QVERIFY(hand.write(QStringLiteral("What are you called"), QStringLiteral("Ada")));
        QVERIFY(hand.tap(QStringLiteral("Go on")));
        QVERIFY(hand.tap(QStringLiteral("Go on")));
        QVERIFY(hand.tap(QStringLiteral("Begin")));
        QVERIFY2(hand.reads(QStringLiteral("Play with Kit")), qPrintable(hand.words().join(u'|')));
        QCOMPARE(offersOn(hand), 3);
    }
};

QTEST_MAIN(TestTroubleOnScreen)
#include "tst_trouble_on_screen.moc"

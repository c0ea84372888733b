#include "tests/arrows/arrow_judge.h"

#include <QtTest/QtTest>

#include <algorithm>

using namespace lidlark::arrows;

/// The arrows between folders (reference: the project's own design.md 2), first on made-up files,
/// then on the whole tree as it is.
class TestArrows : public QObject
{
    Q_OBJECT

private slots:
    void initTestCase();
    void aWrongArrowIsCaught_data();
    void aWrongArrowIsCaught();
    void aRightArrowIsLetThrough_data();
    void aRightArrowIsLetThrough();
    void aCommentNamesNothing();
    void aCircleIsFound();
    void theHouseHasNoCircle();
    void everyFolderHasItsPlaceInTheTable();
    void everyArrowAmongTheRulesIsUsed();
    void theTreeObeys();

private:
    std::vector<SourceFile> m_tree;
    std::set<std::string> m_known;
};

namespace {

/// A small house to judge made-up files in.
const std::set<std::string> &madeUpHouse()
{
    static const std::set<std::string> paths{
        "core/base/day.h",        "core/catalogue/tag.h",   "core/box/place.h",
        "core/rotation/menu.h",   "core/safety/admit.h",    "core/store/database.h",
        "core/usecase/restock.h", "core/sync/segment.h",    "core/crypto/seal.h",
        "mobile/design/theme.h",  "mobile/design/Card.qml", "mobile/bridge/household.h",
        "mobile/today/today.h",   "mobile/box/BoxRow.qml",  "mobile/today/Offer.qml",
        "mobile/app/Main.qml",    "tests/support/island.h", "mobile/platform/share.h"};
    return paths;
}

std::vector<Complaint> judge(const QString &path, const QString &line)
{
    return wrongArrows({path.toStdString(), "\n" + line.toStdString() + "\n"}, madeUpHouse());
}

} // namespace

void TestArrows::initTestCase()
{
    const std::string root = qEnvironmentVariable("LIDLARK_SOURCE_DIR").toStdString();
    QVERIFY2(!root.empty(), "LIDLARK_SOURCE_DIR names the folder of the project");
    m_tree = readTree(root, {"core", "mobile", "tests"});
    m_known = pathsOf(m_tree);
    QVERIFY(m_known.contains("core/base/result.h"));
}

void TestArrows::aWrongArrowIsCaught_data()
{
    QTest::addColumn<QString>("path");
    QTest::addColumn<QString>("line");
    QTest::newRow("base stands on nothing") << "core/base/a.cpp"
                                            << "#include \"core/box/place.h\"";
    QTest::newRow("a rule does not know the store") << "core/box/a.cpp"
                                                    << "#include \"core/store/database.h\"";
    QTest::newRow("a rule does not know the use cases") << "core/safety/a.h"
                                                        << "#include <core/usecase/restock.h>";
    QTest::newRow("the gate does not know the menu") << "core/safety/a.h"
                                                     << "#include \"core/rotation/menu.h\"";
    QTest::newRow("upwards by dots") << "core/box/a.cpp"
                                     << "#include \"../store/database.h\"";
    QTest::newRow("spaces around the sign") << "core/box/a.cpp"
                                            << "  #  include   \"core/store/database.h\"";
    QTest::newRow("the store does not know the use cases") << "core/store/a.cpp"
                                                           << "#include \"core/usecase/restock.h\"";
    QTest::newRow("the store does not know the exchange") << "core/store/a.cpp"
                                                          << "#include \"core/sync/segment.h\"";
    QTest::newRow("use cases do not know the exchange") << "core/usecase/a.cpp"
                                                        << "#include \"core/sync/segment.h\"";
    QTest::newRow("sealing does not know the rules") << "core/crypto/a.cpp"
                                                     << "#include \"core/box/place.h\"";
    QTest::newRow("a folder nobody has placed") << "core/shed/a.cpp"
                                                << "#include \"core/base/day.h\"";
    QTest::newRow("the core does not know the app") << "core/usecase/a.cpp"
                                                    << "#include \"mobile/bridge/household.h\"";
    QTest::newRow("the core does not know the app by a bare name") << "core/usecase/a.cpp"
                                                                   << "#include \"theme.h\"";
    QTest::newRow("the core does not know the tests") << "core/box/a.cpp"
                                                      << "#include \"tests/support/island.h\"";
    QTest::newRow("Qt in the core") << "core/box/a.cpp"
                                    << "#include <QString>";
    QTest::newRow("a Qt module in the core") << "core/cli/a.cpp"
                                             << "#include <QtCore/QString>";
    QTest::newRow("a small Qt header in the core") << "core/box/a.h"
                                                   << "#include <qglobal.h>";
    QTest::newRow("SQLite outside the store") << "core/usecase/a.cpp"
                                              << "#include <sqlite3.h>";
    QTest::newRow("SQLite in quotes") << "core/box/a.cpp"
                                      << "#include \"sqlite3.h\"";
    QTest::newRow("SQLite in a test of a rule") << "tests/core/box/tst_a.cpp"
                                                << "#include <sqlite3.h>";
    QTest::newRow("sodium outside its keepers") << "core/box/a.cpp"
                                                << "#include <sodium.h>";
    QTest::newRow("sodium in another file of base") << "core/base/day.cpp"
                                                    << "#include <sodium/randombytes.h>";
    QTest::newRow("curl in another file of the exchange") << "core/sync/publish.cpp"
                                                          << "#include <curl/curl.h>";
    QTest::newRow("pugixml outside the listing") << "core/sync/webdav_storage.cpp"
                                                 << "#include <pugixml.hpp>";
    QTest::newRow("a screen does not know a screen") << "mobile/box/a.cpp"
                                                     << "#include \"mobile/today/today.h\"";
    QTest::newRow("a screen does not know a screen by a bare name") << "mobile/box/a.cpp"
                                                                    << "#include \"today.h\"";
    QTest::newRow("a screen does not know the store") << "mobile/box/a.h"
                                                      << "#include \"core/store/database.h\"";
    QTest::newRow("a screen does not know the use cases") << "mobile/box/a.h"
                                                          << "#include \"core/usecase/restock.h\"";
    QTest::newRow("the bridge does not know a screen") << "mobile/bridge/a.cpp"
                                                       << "#include \"mobile/today/today.h\"";
    QTest::newRow("the design does not know the bridge")
        << "mobile/design/a.cpp"
        << "#include \"mobile/bridge/household.h\"";
    QTest::newRow("the app's tests stay out of it") << "mobile/box/a.cpp"
                                                    << "#include \"island.h\"";
    QTest::newRow("tests of the core do not know the app")
        << "tests/core/tst_a.cpp"
        << "#include \"mobile/bridge/household.h\"";
    QTest::newRow("the reader of squares outside its folder") << "mobile/crew/a.cpp"
                                                              << "#include <ZXing/ReadBarcode.h>";
    QTest::newRow("the writer of squares outside its folder") << "mobile/design/a.cpp"
                                                              << "#include <qrencode.h>";
    QTest::newRow("a camera linked in") << "mobile/crew/a.h"
                                        << "#include <QVideoSink>";
    QTest::newRow("a camera for a screen that needs none") << "mobile/play/A.qml"
                                                           << "import Lidlark.Camera";
    QTest::newRow("a screen imports no screen") << "mobile/box/A.qml"
                                                << "import Lidlark.Today";
    QTest::newRow("a screen imports no screen with a version") << "mobile/box/A.qml"
                                                               << "import Lidlark.PutBack 1.0 as P";
    QTest::newRow("a screen imports no folder of another") << "mobile/today/A.qml"
                                                           << "import \"../box\" as Other";
    QTest::newRow("a screen loads no file of another")
        << "mobile/today/A.qml"
        << "Loader { source: \"../box/BoxRow.qml\" }";
    QTest::newRow("a screen loads no resource of another")
        << "mobile/today/A.qml"
        << "Loader { source: \"qrc:/qt/qml/Lidlark/Box/BoxRow.qml\" }";
    QTest::newRow("the design imports no bridge") << "mobile/design/A.qml"
                                                  << "import Lidlark.Bridge";
    QTest::newRow("a file that is not there") << "core/box/a.cpp"
                                              << "#include \"core/box/b.h\"";
    QTest::newRow("a macro hides the name") << "core/box/a.cpp"
                                            << "#include PLACE_HEADER";
}

void TestArrows::aWrongArrowIsCaught()
{
    QFETCH(QString, path);
    QFETCH(QString, line);
    const std::vector<Complaint> complaints = judge(path, line);
    QCOMPARE(complaints.size(), std::size_t{1});
    QCOMPARE(complaints.front().path, path.toStdString());
    QCOMPARE(complaints.front().line, 2);
}

void TestArrows::aRightArrowIsLetThrough_data()
{
    QTest::addColumn<QString>("path");
    QTest::addColumn<QString>("line");
    QTest::newRow("a rule on base") << "core/box/a.cpp"
                                    << "#include \"core/base/day.h\"";
    QTest::newRow("a rule on itself") << "core/box/a.cpp"
                                      << "#include \"place.h\"";
    QTest::newRow("the menu on the gate") << "core/rotation/a.cpp"
                                          << "#include \"core/safety/admit.h\"";
    QTest::newRow("the store on SQLite") << "core/store/a.cpp"
                                         << "#include <sqlite3.h>";
    QTest::newRow("the store's tests on SQLite") << "tests/core/store/tst_a.cpp"
                                                 << "#include <sqlite3.h>";
    QTest::newRow("sealing on sodium") << "core/crypto/a.cpp"
                                       << "#include <sodium.h>";
    QTest::newRow("the line to a server on curl") << "core/sync/http_client.cpp"
                                                  << "#include <curl/curl.h>";
    QTest::newRow("the exchange on store") << "core/sync/a.cpp"
                                           << "#include \"core/store/database.h\"";
    QTest::newRow("the standard library") << "core/box/a.cpp"
                                          << "#include <queue>";
    QTest::newRow("a screen on a rule's values") << "mobile/today/a.h"
                                                 << "#include \"core/rotation/menu.h\"";
    QTest::newRow("a screen on the bridge by a bare name") << "mobile/today/a.h"
                                                           << "#include \"household.h\"";
    QTest::newRow("a screen on the design") << "mobile/today/A.qml"
                                            << "import Lidlark.Design";
    QTest::newRow("the design on what the phone offers") << "mobile/design/a.cpp"
                                                         << "#include \"mobile/platform/share.h\"";
    QTest::newRow("squares are read where they are kept") << "mobile/platform/qr/a.cpp"
                                                          << "#include <ZXing/ReadBarcode.h>";
    QTest::newRow("the crew's code before a camera") << "mobile/crew/A.qml"
                                                     << "import Lidlark.Camera";
    QTest::newRow("a screen on its own module") << "mobile/putback/A.qml"
                                                << "import Lidlark.PutBack";
    QTest::newRow("a screen on Qt Quick") << "mobile/today/A.qml"
                                          << "import QtQuick.Layouts";
    QTest::newRow("the app on every screen") << "mobile/app/Main.qml"
                                             << "import Lidlark.Today";
    QTest::newRow("what moc makes") << "mobile/bridge/a.cpp"
                                    << "#include \"a.moc\"";
    QTest::newRow("a journey on the use cases") << "tests/journeys/tst_a.cpp"
                                                << "#include \"core/usecase/restock.h\"";
}

void TestArrows::aRightArrowIsLetThrough()
{
    QFETCH(QString, path);
    QFETCH(QString, line);
    const std::vector<Complaint> complaints = judge(path, line);
    QVERIFY2(complaints.empty(), complaints.empty() ? "" : toText(complaints.front()).c_str());
}

void TestArrows::aCommentNamesNothing()
{
    QVERIFY(judge("core/box/a.cpp", "// #include \"core/store/database.h\"").empty());
    QVERIFY(judge("core/box/a.cpp", "/*\n#include \"core/store/database.h\"\n*/").empty());
    QCOMPARE(judge("core/box/a.cpp", "/* why */ #include \"core/store/database.h\"").size(),
             std::size_t{1});
}

void TestArrows::aCircleIsFound()
{
    QCOMPARE(circleIn({{"a", {"b"}}, {"b", {"c", "d"}}, {"c", {}}, {"d", {"b"}}}),
             std::optional<std::string>("b -> d -> b"));
    QCOMPARE(circleIn({{"a", {"a"}}}), std::optional<std::string>("a -> a"));
    QCOMPARE(circleIn({{"a", {"b", "c"}}, {"b", {"c"}}, {"c", {}}}), std::nullopt);
}

void TestArrows::theHouseHasNoCircle()
{
    const std::optional<std::string> circle = circleIn(arrowsOfTheHouse());
    QVERIFY2(!circle, circle ? circle->c_str() : "");
}

void TestArrows::everyFolderHasItsPlaceInTheTable()
{
    QStringList missing;
    for (const SourceFile &file : m_tree) {
        const bool isCode =
            file.path.ends_with(".cpp") || file.path.ends_with(".h") || file.path.ends_with(".qml");
        const std::string folder = folderOf(file.path);
        if (isCode && !folder.starts_with("tests") && !arrowsOfTheHouse().contains(folder))
            missing << QString::fromStdString(file.path);
    }
    QVERIFY2(missing.empty(), qPrintable(missing.join('\n')));
}

void TestArrows::everyArrowAmongTheRulesIsUsed()
{
    ArrowTable used;
    for (const SourceFile &file : m_tree) {
        for (const Mention &mention : mentionsIn(file))
            used[folderOf(file.path)].insert(folderOf(mention.target));
    }
    QStringList stale;
    for (const auto &[folder, targets] : arrowsAmongTheRules()) {
        for (const std::string &target : targets) {
            if (!used[folder].contains(target))
                stale << QString("%1 -> %2").arg(folder.c_str(), target.c_str());
        }
    }
    QVERIFY2(stale.empty(), qPrintable("Arrows that no file needs any more:\n" + stale.join('\n')));
}

void TestArrows::theTreeObeys()
{
    QStringList told;
    for (const SourceFile &file : m_tree) {
        for (const Complaint &complaint : wrongArrows(file, m_known))
            told << QString::fromStdString(toText(complaint));
    }
    QVERIFY2(told.empty(), qPrintable(told.join('\n')));
}

QTEST_APPLESS_MAIN(TestArrows)
#include "tst_arrows.moc"

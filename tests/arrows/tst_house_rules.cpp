#include "tests/arrows/house_rule.h"
#include "tests/arrows/mention.h"

#include <QtCore/QDir>
#include <QtCore/QFileInfo>
#include <QtCore/QProcess>
#include <QtCore/QRegularExpression>
#include <QtCore/QSet>
#include <QtTest/QtTest>

using namespace lidlark::arrows;

/// The rules of the house about names, lengths and looks, first on made-up files, then on the
/// whole tree as it is.
class TestHouseRules : public QObject
{
    Q_OBJECT

private slots:
    void initTestCase();
    void aStrangerAtTheTopIsCaught();
    void anEmptyNameIsCaught();
    void aBareNoteIsCaught();
    void aStrayLookIsCaught_data();
    void aStrayLookIsCaught();
    void aLookFromTheThemeIsLetThrough_data();
    void aLookFromTheThemeIsLetThrough();
    void linesAreCounted();

    void theTopHoldsWhatItShould();
    void everyFileIsShort();
    void everyNameSaysSomething();
    void everyNoteSaysWhy();
    void looksStayInTheDesign();
    void everyWordIsOurOwn();
    void everyQtImportHasItsPackage();

private:
    using Rule = std::vector<Complaint> (*)(const SourceFile &);
    void applyToTheTree(Rule rule);

    QDir m_root;
    std::vector<SourceFile> m_tree;
};

namespace {

QString told(const std::vector<Complaint> &complaints)
{
    QStringList lines;
    for (const Complaint &complaint : complaints)
        lines << QString::fromStdString(toText(complaint));
    return lines.join('\n');
}

SourceFile screenWith(const QString &line)
{
    return {"mobile/today/TodayScreen.qml", line.toStdString() + "\n"};
}

} // namespace

/// On a bare machine a Qt module that no package brings is missed only when its screen opens.
void TestHouseRules::everyQtImportHasItsPackage()
{
    QFile list(m_root.filePath("packaging/debian-packages.txt"));
    QVERIFY(list.open(QIODevice::ReadOnly));
    const QString packages = "\n" + QString::fromUtf8(list.readAll());
    static const QRegularExpression form("^import (Qt[A-Za-z.]*)",
                                         QRegularExpression::MultilineOption);
    QSet<QString> modules;
    for (const SourceFile &file : m_tree) {
        if (!file.path.ends_with(".qml"))
            continue;
        auto found = form.globalMatch(QString::fromStdString(file.text));
        while (found.hasNext())
            modules.insert(found.next().captured(1));
    }
    QVERIFY(modules.contains("QtQuick"));
    for (const QString &module : std::as_const(modules)) {
        const QString package = "qml6-module-" + module.toLower().replace('.', '-');
        QVERIFY2(packages.contains("\n" + package + " "), qPrintable(package));
    }
}

void TestHouseRules::initTestCase()
{
    const QString root = qEnvironmentVariable("LIDLARK_SOURCE_DIR");
    QVERIFY2(!root.isEmpty(), "LIDLARK_SOURCE_DIR names the folder of the project");
    m_root.setPath(root);
    m_tree = readTree(root.toStdString(), {"core", "mobile", "tests", "packaging"});
    QVERIFY(!m_tree.empty());
}

void TestHouseRules::applyToTheTree(Rule rule)
{
    std::vector<Complaint> all;
    for (const SourceFile &file : m_tree) {
        const std::vector<Complaint> complaints = rule(file);
        all.insert(all.end(), complaints.begin(), complaints.end());
    }
    QVERIFY2(all.empty(), qPrintable(told(all)));
}

void TestHouseRules::aStrangerAtTheTopIsCaught()
{
    std::set<std::string> names = topLevelNames();
    QVERIFY(wrongTopLevel(names).empty());
    names.insert({".ci", "build", "build-arm64"});
    QVERIFY(wrongTopLevel(names).empty());
    names.insert("notes.txt");
    names.erase("LICENSE");
    QCOMPARE(told(wrongTopLevel(names)),
             QString("notes.txt:0: does not belong at the top\nLICENSE:0: is missing at the top"));
}

void TestHouseRules::anEmptyNameIsCaught()
{
    QCOMPARE(emptyNames({"core/box/BoxManager.h", {}}).size(), std::size_t{1});
    QCOMPARE(emptyNames({"core/box/string_utils.h", {}}).size(), std::size_t{1});
    QCOMPARE(emptyNames({"mobile/helpers/Row.qml", {}}).size(), std::size_t{1});
    QVERIFY(emptyNames({"core/box/item_ledger.h", {}}).empty());
}

void TestHouseRules::aBareNoteIsCaught()
{
    const std::string note = std::string("// TO") + "DO";
    QCOMPARE(bareNotes({"core/a.h", "\n" + note + "\n"}),
             (std::vector<Complaint>{{"core/a.h", 2, "unfinished work without its reason"}}));
    QCOMPARE(bareNotes({"core/a.h", note + ": later"}).size(), std::size_t{1});
    QVERIFY(bareNotes({"core/a.h", note + ": the phone has no camera yet"}).empty());
}

void TestHouseRules::aStrayLookIsCaught_data()
{
    QTest::addColumn<QString>("line");
    QTest::newRow("hex colour") << "color: \"#a1B2c3\"";
    QTest::newRow("short hex colour") << "color: '#fff'";
    QTest::newRow("hex colour with its alpha") << "border.color: \"#80a1b2c3\"";
    QTest::newRow("colour from numbers") << "color: Qt.rgba(0, 0, 0, 0.5)";
    QTest::newRow("font family") << "font.family: \"Andika\"";
    QTest::newRow("font family in a group") << "font { family: \"Andika\" }";
    QTest::newRow("pixel size") << "font.pixelSize: 17";
    QTest::newRow("point size in a group") << "font { bold: true; pointSize: 9.5 }";
    QTest::newRow("width") << "width: 320";
    QTest::newRow("implicit height") << "    implicitHeight: 48;";
    QTest::newRow("spacing in one line") << "Row { spacing: 8 }";
    QTest::newRow("anchor margin") << "anchors.leftMargin: -12";
    QTest::newRow("layout width") << "Layout.preferredWidth: 120.5";
    QTest::newRow("radius") << "radius: 6";
}

void TestHouseRules::aStrayLookIsCaught()
{
    QFETCH(QString, line);
    SourceFile file = screenWith(line);
    QCOMPARE(strayLooks(file).size(), std::size_t{1});
    file.path = "mobile/design/Card.qml";
    QVERIFY(strayLooks(file).empty());
}

void TestHouseRules::aLookFromTheThemeIsLetThrough_data()
{
    QTest::addColumn<QString>("line");
    QTest::newRow("a token") << "color: Theme.ink";
    QTest::newRow("a size from the theme") << "font.pixelSize: Theme.body";
    QTest::newRow("twice a token") << "width: 2 * Theme.gap";
    QTest::newRow("nothing") << "spacing: 0";
    QTest::newRow("a number in words") << "text: qsTr(\"#1 of 3\")";
    QTest::newRow("a comment") << "// was color: \"#ffffff\"; width: 320";
    QTest::newRow("a comment in a block") << "/* width: 320 */";
    QTest::newRow("an index") << "maximumValue: 5";
}

void TestHouseRules::aLookFromTheThemeIsLetThrough()
{
    QFETCH(QString, line);
    QCOMPARE(told(strayLooks(screenWith(line))), QString());
}

void TestHouseRules::linesAreCounted()
{
    QCOMPARE(lengthOf({"a.h", ""}), 0);
    QCOMPARE(lengthOf({"a.h", "one\n\nthree\n"}), 3);
    QCOMPARE(lengthOf({"a.h", "one\ntwo without an end"}), 2);
}

void TestHouseRules::theTopHoldsWhatItShould()
{
    std::set<std::string> names;
    const QStringList entries =
        m_root.entryList(QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot);
    for (const QString &name : entries)
        names.insert(name.toStdString());
    const QString complaints = told(wrongTopLevel(names));
    QVERIFY2(complaints.isEmpty(), qPrintable(complaints));
}

void TestHouseRules::everyFileIsShort()
{
    QStringList tooLong;
    for (const SourceFile &file : m_tree) {
        const int lines = lengthOf(file);
        const bool isOurs = file.path.starts_with("core/") || file.path.starts_with("mobile/");
        const QString name = QString::fromStdString(file.path);
        if (isOurs && lines > longestFile)
            tooLong << QString("%1: %2 lines").arg(name).arg(lines);
        else if (isOurs && lines > longishFile)
            qInfo("worth a look: %s has %d lines", qPrintable(name), lines);
    }
    QVERIFY2(tooLong.isEmpty(), qPrintable(tooLong.join('\n')));
}

void TestHouseRules::everyNameSaysSomething()
{
    applyToTheTree(emptyNames);
}

void TestHouseRules::everyNoteSaysWhy()
{
    applyToTheTree(bareNotes);
}

void TestHouseRules::looksStayInTheDesign()
{
    applyToTheTree(strayLooks);
}

/// A bare machine has a QML module of Qt's only where packaging/setup installs its package.
void TestHouseRules::everyWordIsOurOwn()
{
    const QFileInfo checker(m_root.filePath("../shared/tools/own-words"));
    if (!checker.isExecutable())
        QSKIP("own-words is not on this machine: whose words these are was NOT checked");
    QStringList paths;
    for (const std::string &name : topLevelNames())
        paths << m_root.filePath(QString::fromStdString(name));
    QProcess process;
    process.start(checker.canonicalFilePath(), paths);
    QVERIFY(process.waitForFinished(-1));
    QVERIFY2(process.exitStatus() == QProcess::NormalExit && process.exitCode() == 0,
             process.readAllStandardOutput() + process.readAllStandardError());
}

QTEST_GUILESS_MAIN(TestHouseRules)
#include "tst_house_rules.moc"

#include <QtTest>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

namespace {

struct Answer {
    int status = -1;
    QString out;
    QString problem;

    QJsonObject json() const { return QJsonDocument::fromJson(out.toUtf8()).object(); }
    QJsonObject entry() const { return json()["entries"].toArray().first().toObject(); }
    QStringList rules() const
    {
        QStringList rules;
        for (const QJsonValue finding : entry()["findings"].toArray())
            rules << finding["rule"].toString() + " " + finding["field"].toString();
        return rules;
    }
};

Answer lint(QStringList arguments)
{
    arguments.prepend("lint-activity");
    QProcess process;
    process.start(qEnvironmentVariable("LIDLARK_CLI"), arguments);
    process.waitForFinished(60'000);
    return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()),
            QString::fromUtf8(process.readAllStandardError())};
}

} // namespace

/// Guards `lidlark-cli lint-activity`: what it finds, what it leaves to people, and how it ends.
/// Each rule by itself is the business of tst_lint_activity.
class TestLintCommand : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;

    static QString shipped(const QString &name)
    {
        return qEnvironmentVariable("LIDLARK_SOURCE_DIR") + "/assets/catalogue/activities/" + name;
    }

    /// A shipped entry with one text changed, in a folder of any name.
    QString changed(const QString &name, const QByteArray &what, const QByteArray &with)
    {
        QFile file(shipped(name));
        QFile copy(m_folder.filePath(name));
        if (!file.open(QIODevice::ReadOnly) ||
            !copy.open(QIODevice::WriteOnly | QIODevice::Truncate))
            return {};
        QByteArray text = file.readAll();
        if (!text.contains(what))
            return {};
        copy.write(text.replace(what, with));
        return copy.fileName();
    }

private slots:
    void aSoundEntryLeavesOnlyQuestions();
    void aFindingNamesItsFieldAndWhatToDo();
    void theLoadersFindingsComeFirstWithTheirLine();
    void severalFilesAreAnsweredOneByOne();
    void aNewEntryIsComparedWithTheShippedOnes();
    void wrongUseExitsTwo_data();
    void wrongUseExitsTwo();
};

void TestLintCommand::aSoundEntryLeavesOnlyQuestions()
{
    const Answer answer = lint({shipped("slow-oars.yaml"), "--json"});
    QVERIFY2(answer.rules().isEmpty(), qPrintable(answer.out));
    QCOMPARE(answer.status, 0);
    QCOMPARE(answer.json()["sound"], QJsonValue(true));
    QCOMPARE(answer.entry()["id"].toString(), QString("slow-oars"));
    QCOMPARE(answer.entry()["for_people"].toArray().size(), 5);
    QVERIFY(answer.entry()["reading_grade"].toDouble() < 6);
    const Answer plain = lint({shipped("slow-oars.yaml")});
    QCOMPARE(plain.status, 0);
    QVERIFY(plain.out.contains("Nothing found by machine"));
    QVERIFY(plain.out.contains("Not checked, for a person to answer"));
}

void TestLintCommand::aFindingNamesItsFieldAndWhatToDo()
{
    const QString file = changed("slow-oars.yaml", "\nsay: [", "\nsay: [\"Good boy!\"] # [");
    const Answer answer = lint({file, "--json"});
    QCOMPARE(answer.status, 1);
    QCOMPARE(answer.json()["sound"], QJsonValue(false));
    QCOMPARE(answer.rules(), (QStringList{"talk say[1]", "talk say[1]"}));
    const Answer plain = lint({file});
    QCOMPARE(plain.status, 1);
    QVERIFY(plain.out.contains("say[1]: \"good boy\" judges the child"));
    QVERIFY(plain.out.contains("Say what you saw"));
    QVERIFY(!plain.out.contains("Nothing found by machine"));
    QVERIFY(plain.out.contains("Not checked, for a person to answer"));
}

void TestLintCommand::theLoadersFindingsComeFirstWithTheirLine()
{
    const QString file = changed("slow-oars.yaml", "cautions: [BAND]", "cautions: []");
    const Answer answer = lint({file, "--json"});
    QCOMPARE(answer.status, 1);
    QCOMPARE(answer.rules(), QStringList("loader cautions"));
    QVERIFY(answer.entry()["findings"].toArray().first()["line"].toInt() > 1);
    QVERIFY(answer.entry()["id"].isNull());
    QVERIFY(lint({file}).out.contains("cautions: BAND is missing: rband carries it"));
}

void TestLintCommand::severalFilesAreAnsweredOneByOne()
{
    const QString bad = changed("sail-tug.yaml", "name: Sail Tug", "name: Slow Oars");
    const Answer answer = lint({shipped("slow-kettle.yaml"), bad, "--json"});
    QCOMPARE(answer.status, 1);
    const QJsonArray entries = answer.json()["entries"].toArray();
    QCOMPARE(entries.size(), 2);
    QCOMPARE(entries[0]["sound"], QJsonValue(true));
    QCOMPARE(entries[1]["sound"], QJsonValue(false));
    QCOMPARE(entries[1]["findings"].toArray().first()["field"].toString(), QString("name"));
}

/// A copy under another name repeats every line of the one it was copied from.
void TestLintCommand::aNewEntryIsComparedWithTheShippedOnes()
{
    QFile::copy(shipped("slow-oars.yaml"), m_folder.filePath("slower-oars.yaml"));
    QFile file(m_folder.filePath("slower-oars.yaml"));
    QVERIFY(file.open(QIODevice::ReadWrite));
    const QByteArray text = file.readAll()
                                .replace("id: slow-oars", "id: slower-oars")
                                .replace("entry: A60", "entry: A99");
    file.seek(0);
    file.write(text);
    file.close();
    const Answer answer = lint({file.fileName(), "--json"});
    QCOMPARE(answer.status, 1);
    QVERIFY(answer.rules().contains("of-its-own name"));
    QVERIFY(answer.rules().contains("of-its-own steps[1].text"));
    QVERIFY(answer.rules().contains("drawings picture.drawing"));
}

void TestLintCommand::wrongUseExitsTwo_data()
{
    QTest::addColumn<QStringList>("arguments");
    QTest::newRow("no file") << QStringList{};
    QTest::newRow("a file that is not there") << QStringList{"/nowhere/slow-oars.yaml"};
    QTest::newRow("one file twice")
        << QStringList{shipped("slow-oars.yaml"), shipped("slow-oars.yaml")};
    QTest::newRow("an option that is none") << QStringList{shipped("slow-oars.yaml"), "--loudly"};
}

void TestLintCommand::wrongUseExitsTwo()
{
    QFETCH(QStringList, arguments);
    const Answer answer = lint(arguments);
    QCOMPARE(answer.status, 2);
    QVERIFY(answer.out.isEmpty());
    QVERIFY(!answer.problem.isEmpty());
}

QTEST_APPLESS_MAIN(TestLintCommand)
#include "tst_lint_command.moc"

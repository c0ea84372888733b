#include <QtTest>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

#include <memory>

/// Guards `export`: its shape, exit 0 / 1 / 2, two readers that know no Lidlark, and that a mistake
/// leaves everything as it was.
class TestExportCommand : public QObject
{
    Q_OBJECT

private:
    struct Answer {
        int status = -1;
        QJsonObject json;
        QString problem;
    };

    std::unique_ptr<QTemporaryDir> m_folder;

    static Answer run(const QString &program, const QStringList &arguments)
    {
        QProcess process;
        process.start(program, arguments);
        process.closeWriteChannel();
        process.waitForFinished(60'000);
        return {process.exitCode(),
                QJsonDocument::fromJson(process.readAllStandardOutput()).object(),
                QString::fromUtf8(process.readAllStandardError())};
    }
    Answer cli(const QStringList &arguments, const char *store = "fin-ruth") const
    {
        return run(qEnvironmentVariable("LIDLARK_CLI"),
                   arguments + QStringList{"--json", "--clock", "2027-01-11T19:00:00Z", "--store",
                                           m_folder->filePath(QLatin1String(store) + ".lidlark")});
    }
    QString to(const char *name) const { return m_folder->filePath(QLatin1String(name)); }
    QStringList left() const
    {
        return QDir(m_folder->path()).entryList({"*copy*"}, QDir::AllEntries | QDir::Hidden);
    }
    static Answer readBy(const QString &copy)
    {
        return run("python3", {qEnvironmentVariable("LIDLARK_SOURCE_DIR") +
                                   "/tests/core/usecase/read_export.py",
                               copy});
    }

private slots:
    void initTestCase()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        QCOMPARE(cli({"demo", m_folder->path()}).status, 0);
    }
    void init()
    {
        for (const QString &name : left())
            QVERIFY(QDir(m_folder->filePath(name)).removeRecursively() ||
                    QFile::remove(m_folder->filePath(name)));
    }

    void aCopyIsWrittenAndReadElsewhere()
    {
        const Answer answer = cli({"export", "--to", to("copy")});
        QCOMPARE(answer.status, 0);
        QCOMPARE(answer.json["folder"].toString(), to("copy"));
        QStringList files;
        const QJsonArray named = answer.json["files"].toArray();
        for (const auto &name : named)
            files.append(name.toString());
        files.sort();
        QCOMPARE(files, QDir(to("copy")).entryList(QDir::Files | QDir::Hidden, QDir::Name));
        const Answer outside = readBy(to("copy"));
        QCOMPARE(outside.problem.trimmed(), QString());
        QCOMPARE(outside.status, 0);
        qsizetype rows = 0;
        for (const auto &table : outside.json)
            rows += table.toArray().size();
        QCOMPARE(answer.json["rows"].toInteger(), rows);
        QCOMPARE(outside.json["plays"].toArray().size(), 3); // the quiet first week
        QFile about(to("copy/read-me.txt"));
        QVERIFY(about.open(QIODevice::ReadOnly));
        const QString text = QString::fromUtf8(about.readAll());
        for (const char *said : {"about Fin on 2027-01-11", "What stays with the clinic",
                                 "The law says", "It is not locked"})
            QVERIFY2(text.contains(QLatin1String(said)), said);
        QCOMPARE(left(), QStringList{"copy"});
    }

    /// One home of two, one that reads Urdu, and the therapist with all boxes.
    void otherPhonesHaveOneToo()
    {
        for (const char *store : {"effie-kirsty", "zoya-adeel", "morven"}) {
            const QString copy = to("copy-") + QLatin1String(store);
            const Answer answer = cli({"export", "--to", copy}, store);
            QVERIFY2(answer.status == 0, qPrintable(answer.problem));
            const Answer outside = readBy(copy);
            QVERIFY2(outside.status == 0, qPrintable(outside.problem));
        }
    }

    void aGuestHasNone()
    {
        const Answer answer = cli({"export", "--to", to("copy")}, "skye-grandad");
        QCOMPARE(answer.status, 1);
        QVERIFY(answer.problem.contains("for the family to say"));
        QVERIFY(left().isEmpty());
    }

    void oneFamilyOfMany()
    {
        QCOMPARE(cli({"export", "--to", to("copy"), "--child", "Fin"}, "morven").status, 0);
        QFile json(to("copy/record.json"));
        QVERIFY(json.open(QIODevice::ReadOnly));
        const QByteArray text = json.readAll();
        QVERIFY(text.contains("Fin") && !text.contains("Anya"));
    }

    void whatIsThereIsNeverGoneOver()
    {
        QVERIFY(QDir().mkpath(to("copy")));
        QFile kept(to("copy/kept"));
        QVERIFY(kept.open(QIODevice::WriteOnly));
        kept.close();
        const Answer answer = cli({"export", "--to", to("copy")});
        QCOMPARE(answer.status, 1);
        QVERIFY(answer.problem.contains("something is there already"));
        QCOMPARE(QDir(to("copy")).entryList(QDir::Files), QStringList{"kept"});
        QCOMPARE(left(), QStringList{"copy"});
    }

    void mistakesAreNamedAndLeaveNothing_data()
    {
        QTest::addColumn<QStringList>("arguments");
        QTest::addColumn<int>("status");
        QTest::addColumn<QString>("named");
        QTest::newRow("no folder") << QStringList{"export"} << 2 << "--to";
        QTest::newRow("a folder that would lie nowhere")
            << QStringList{"export", "--to", "/not/there/copy"} << 1 << "/not/there";
        QTest::newRow("nobody of that name")
            << QStringList{"export", "--to", to("copy"), "--child", "Nobody"} << 1 << "Nobody";
        QTest::newRow("no name") << QStringList{"export", "--to", ""} << 1 << "cannot find";
    }
    void mistakesAreNamedAndLeaveNothing()
    {
        QFETCH(QStringList, arguments);
        QFETCH(int, status);
        QFETCH(QString, named);
        const Answer answer = cli(arguments);
        QCOMPARE(answer.status, status);
        QVERIFY2(answer.problem.contains(named), qPrintable(answer.problem));
        QVERIFY(left().isEmpty());
    }

    /// A program that may write no file beyond 10 kB: to it the disk is full, in the middle of
    /// record.json.
    void aFullDiskLeavesNothing()
    {
        const QString command =
            QStringLiteral("trap '' XFSZ; ulimit -f 20; exec \"$0\" export --to \"$1\" --store "
                           "\"$2\" --clock 2027-01-11T19:00:00Z");
        const Answer answer = run("sh", {"-c", command, qEnvironmentVariable("LIDLARK_CLI"),
                                         to("copy"), m_folder->filePath("fin-ruth.lidlark")});
        QCOMPARE(answer.status, 1);
        QVERIFY2(answer.problem.contains("storage is full"), qPrintable(answer.problem));
        QVERIFY(left().isEmpty());
    }
};

QTEST_APPLESS_MAIN(TestExportCommand)
#include "tst_export_command.moc"

#include <QtTest>

#include <QDir>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

/// Guards that nothing leaves a phone unless somebody shares: every command of an ordinary day,
/// watched by strace(1), makes no socket to anywhere but this machine's own (AF_UNIX). The app is
/// watched in tests/tour (network_watch).
class TestNothingLeaves : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;

    [[nodiscard]] QString store() const { return m_folder.filePath("fin-ruth.lidlark"); }

    struct Watched {
        int status = -1;
        QByteArray out;
        QStringList sockets; ///< Each call of socket(2) as strace shows it, but for AF_UNIX.
        bool seen = false;   ///< strace saw the program to its end.
    };
    [[nodiscard]] Watched watch(const QStringList &arguments) const
    {
        const QString record = m_folder.filePath("strace.txt");
        QFile::remove(record);
        QProcess process;
        process.start("strace", QStringList{"-f", "-e", "trace=network", "-o", record, "--",
                                            qEnvironmentVariable("LIDLARK_CLI"), "--store", store(),
                                            "--clock", "2027-01-11T18:25:00Z", "--json"} +
                                    arguments);
        process.closeWriteChannel();
        process.waitForFinished(60'000);
        Watched watched{process.exitCode(), process.readAllStandardOutput(), {}, false};
        QFile file(record);
        if (!file.open(QIODevice::ReadOnly))
            return watched;
        const auto lines = QString::fromUtf8(file.readAll()).split('\n');
        for (const QString &line : lines) {
            watched.seen = watched.seen || line.contains("+++ exited with");
            if (line.contains("socket(") && !line.contains("AF_UNIX"))
                watched.sockets << line;
        }
        return watched;
    }
    void staysHere(const QStringList &arguments) const
    {
        const Watched watched = watch(arguments);
        QVERIFY2(watched.seen, qPrintable(arguments.join(' ')));
        QVERIFY2(watched.status == 0, qPrintable(arguments.join(' ') + watched.out));
        QVERIFY2(watched.sockets.isEmpty(), qPrintable(watched.sockets.join('\n')));
    }

private slots:
    void initTestCase()
    {
        QProcess process;
        process.start("strace", {"-o", m_folder.filePath("strace.txt"), "--", "true"});
        process.waitForFinished(60'000);
        QVERIFY2(process.error() != QProcess::FailedToStart, "strace is not there");
        if (process.exitCode() != 0)
            QSKIP("this machine lets nobody watch a program (ptrace)");
        process.start(qEnvironmentVariable("LIDLARK_CLI"), {"demo", m_folder.path(), "--json"});
        process.waitForFinished(60'000);
        QCOMPARE(process.exitCode(), 0);
    }

    void anOrdinaryEvening()
    {
        staysHere({"menu", "--child", "Fin"});
        const Watched played =
            watch({"play", R"({"child":"Fin","activity":"dough-forecast","author":"Ruth"})"});
        const QString play = QJsonDocument::fromJson(played.out).object()["play"].toString();
        QVERIFY(!play.isEmpty());
        QVERIFY2(played.sockets.isEmpty(), qPrintable(played.sockets.join('\n')));
        staysHere({"put-back", R"({"play":")" + play + R"(","author":"Ruth"})"});
        for (const char *command : {"box", "notebook", "forecast-box", "noted", "week", "verify"})
            staysHere({command});
        staysHere({"count", R"({"child":"Fin","author":"Ruth","counts":{"pegs":5}})"});
        staysHere({"request", R"({"child":"Fin","author":"Ruth","item":"eyes"})"});
        staysHere({"export", "--to", m_folder.filePath("copy")});
    }

    /// And it would be seen: only here does a socket to another machine's family appear.
    void onlySharingWithAServerGoesOut()
    {
        staysHere({"join", "--make-code", "--role", "caregiver"}); // asking somebody in is not it
        const Watched watched = watch({"sync", "--to", "https://127.0.0.1:1/crew/"});
        QVERIFY(watched.seen);
        QCOMPARE(watched.status, 1); // nobody answers there
        QVERIFY(!watched.sockets.filter("AF_INET").isEmpty());
    }

    /// Sharing by a folder or a file, is not the internet either.
    void sharingWithoutAServer()
    {
        QVERIFY(QDir(m_folder.path()).mkdir("shared"));
        staysHere({"sync", "--to", m_folder.filePath("shared")});
        staysHere({"sync", "--hand-over", m_folder.filePath("handed.larkbundle")});
    }
};

QTEST_APPLESS_MAIN(TestNothingLeaves)
#include "tst_nothing_leaves.moc"

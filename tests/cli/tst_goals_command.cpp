#include <QtTest>

#include <QProcess>
#include <QTemporaryDir>

namespace {

struct Answer {
    int status = -1;
    QStringList lines;
    QString problem;
};

} // namespace

/// Guards `lidlark-cli goals` of design.md 11. Whether the scores are right is the business of
/// tst_attainment; the printed ones here are of development.md d2.
class TestGoalsCommand : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;

    static Answer run(const QStringList &arguments)
    {
        QProcess process;
        process.start(qEnvironmentVariable("LIDLARK_CLI"), arguments);
        process.waitForFinished(60'000);
        return {process.exitCode(),
                QString::fromUtf8(process.readAllStandardOutput()).split('\n', Qt::SkipEmptyParts),
                QString::fromUtf8(process.readAllStandardError())};
    }
    Answer score(const QByteArray &table) const
    {
        QFile file(m_folder.filePath("goals.csv"));
        if (!file.open(QIODevice::WriteOnly | QIODevice::Truncate))
            return {};
        file.write(table);
        file.close();
        return run({"goals", "--csv", file.fileName()});
    }

private slots:
    void aTableIsAnsweredRowByRowUnrounded()
    {
        const Answer answer = score("id,weights,levels,rho\nD1,1;1;1,2;2;2,0.3\nD8,6;6,1;0,\n"
                                    "\"a, b\",3;5;1;4;2;6,-2;0;-1;2;0;1,0.3\none,4,+2,0.9\n");
        QCOMPARE(answer.problem, QString());
        QCOMPARE(answer.status, 0);
        QCOMPARE(answer.lines.size(), 5);
        QCOMPARE(answer.lines[0], "id,t");
        // Source: gasr README, trial printout S01 (github.com/taylordunn/gasr).
        QVERIFY2(answer.lines[1].startsWith("D1,77.38612"), qPrintable(answer.lines[1]));
        // Source: reference page scoreGAS of PhysioClinical, printed as 56.20.
        QVERIFY2(answer.lines[2].startsWith("D8,56.2017"), qPrintable(answer.lines[2]));
        QCOMPARE(answer.lines[3], "\"a, b\",55.000000000000");
        QCOMPARE(answer.lines[4], "one,70.000000000000");
        for (const QString &line : answer.lines.mid(1))
            QVERIFY(line.section('.', -1).size() >= 5);
    }

    void columnsStandInAnyOrderAndRhoMayBeLeftOut()
    {
        const Answer answer = score("levels;,id\n1,2\n");
        QCOMPARE(answer.status, 1);
        QVERIFY(answer.problem.contains("no column weights"));
        QCOMPARE(score("levels,id,weights\n0; 1 ;1,D3,1;1;1\n").lines.value(1).left(11),
                 QString("D3,59.12870"));
    }

    void aLevelThatNobodyGaveIsLeftOut()
    {
        QCOMPARE(score("id,weights,levels,rho\na,1;7;1,2;;2,0.3\nb,1;1,2;2,0.3\n").lines[1].mid(2),
                 score("id,weights,levels,rho\nb,1;1,2;2,0.3\n").lines[1].mid(2));
    }

    void aRowThatCannotBeScoredIsNamedAndTheOthersAnswered_data()
    {
        QTest::addColumn<QByteArray>("row");
        QTest::addColumn<QString>("reason");
        QTest::newRow("all weights 0") << QByteArray("bad,0;0,1;2,0.3") << "weights: no goal";
        QTest::newRow("nothing rated") << QByteArray("bad,1;1,;,0.3") << "weights: no goal";
        QTest::newRow("nothing at all") << QByteArray("bad,,,") << "weights: not a number";
        QTest::newRow("weight below 0")
            << QByteArray("bad,1;-1,0;0,0.3") << "weights: -1 is below 0";
        QTest::newRow("level 3") << QByteArray("bad,1;1,3;0,0.3") << "levels: 3 is none of";
        QTest::newRow("half a level") << QByteArray("bad,1;1,0.5;0,0.3") << "levels: 0.5 is none";
        QTest::newRow("no number")
            << QByteArray("bad,one;1,0;0,0.3") << "weights: not a number: one";
        QTest::newRow("one too few")
            << QByteArray("bad,1;1;1,0;0,0.3") << "levels: 2, but 3 weights";
        QTest::newRow("rho of 2") << QByteArray("bad,1;1,0;0,2") << "rho: 2 is not within";
        QTest::newRow("rho of nan") << QByteArray("bad,1;1,0;0,nan") << "rho: not a number";
        QTest::newRow("an endless weight")
            << QByteArray("bad,inf;1,0;0,0.3") << "weights: not a number";
        QTest::newRow("a cell too many") << QByteArray("bad,1,0,0.3,4") << "row: more cells";
    }
    void aRowThatCannotBeScoredIsNamedAndTheOthersAnswered()
    {
        QFETCH(QByteArray, row);
        QFETCH(QString, reason);
        const Answer answer =
            score("id,weights,levels,rho\nD7,1;1;1,1;0;0,0.3\n" + row + "\nlast,1,0,0.3\n");
        QCOMPARE(answer.status, 1);
        QCOMPARE(answer.lines.size(), 4);
        QVERIFY(answer.lines[1].startsWith("D7,54.56435"));
        QCOMPARE(answer.lines[2], "bad,");
        QCOMPARE(answer.lines[3], "last,50.000000000000");
        QVERIFY2(answer.problem.contains("line 3, id bad, " + reason), qPrintable(answer.problem));
    }

    void wrongUseExitsTwoAndAMissingFileOne()
    {
        QCOMPARE(run({"goals"}).status, 2);
        const Answer missing = run({"goals", "--csv", m_folder.filePath("none.csv")});
        QCOMPARE(missing.status, 1);
        QVERIFY(missing.problem.contains("none.csv"));
        QCOMPARE(score("").status, 1);
    }
};

QTEST_MAIN(TestGoalsCommand)
#include "tst_goals_command.moc"

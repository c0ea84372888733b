#include <QtTest>

#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

namespace {

struct Answer {
    int status = -1;
    QString out;
    QString problem;

    QStringList lines() const { return out.split('\n', Qt::SkipEmptyParts); }
    QJsonObject json() const { return QJsonDocument::fromJson(out.toUtf8()).object(); }
};

} // namespace

/// Guards `lidlark-cli fit` of design.md 11: its JSON, its CSV, and that a bad row is named and
/// costs no other row its answer. Whether the answers are right is the business of
/// tst_test_cylinder; those here follow from the bore of 31.75 mm (16 CFR 1501.4) and the ball hole
/// of 44.45 mm (16 CFR 1500.19).
class TestFitCommand : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;

    static Answer fit(QStringList arguments)
    {
        arguments.prepend("fit");
        QProcess process;
        process.start(qEnvironmentVariable("LIDLARK_CLI"), arguments);
        process.waitForFinished(60'000);
        return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()),
                QString::fromUtf8(process.readAllStandardError())};
    }

    Answer fitTable(const QByteArray &text) const
    {
        QFile file(m_folder.filePath("things.csv"));
        if (!file.open(QIODevice::WriteOnly | QIODevice::Truncate))
            return {};
        file.write(text);
        file.close();
        return fit({"--csv", file.fileName()});
    }

private slots:
    void aBallIsAnsweredInJson();
    void withoutJsonItIsOneSentence();
    void aSlipExitsOneWithItsReason_data();
    void aSlipExitsOneWithItsReason();
    void wrongUseExitsTwo_data();
    void wrongUseExitsTwo();
    void aTableIsAnsweredRowByRow();
    void anyOrdinaryCsvIsRead_data();
    void anyOrdinaryCsvIsRead();
    void aBadRowIsNamedAndTheOthersAnswered_data();
    void aBadRowIsNamedAndTheOthersAnswered();
    void aTableThatIsNoneIsRefused_data();
    void aTableThatIsNoneIsRefused();
};

void TestFitCommand::aBallIsAnsweredInJson()
{
    const Answer answer = fit({"--shape", "sphere", "--mm", "24.3", "--json"});
    QCOMPARE(answer.status, 0);
    QCOMPARE(answer.lines().size(), 1);
    QCOMPARE(answer.json().keys(), (QStringList{"fits", "scale", "small_ball"}));
    QCOMPARE(answer.json()["fits"], QJsonValue(true));
    QCOMPARE(answer.json()["small_ball"], QJsonValue(true));
    QVERIFY(std::abs(answer.json()["scale"].toDouble() - 31.75 / 24.3) < 0.0014);
    const Answer large = fit({"--shape", "sphere", "--mm", "67", "--json"});
    QCOMPARE(large.json()["fits"], QJsonValue(false));
    QCOMPARE(large.json()["small_ball"], QJsonValue(false));
    const Answer noBall = fit({"--shape", "box", "--mm", "20,30,40", "--json"});
    QCOMPARE(noBall.json()["small_ball"], QJsonValue(QJsonValue::Null));
}

void TestFitCommand::withoutJsonItIsOneSentence()
{
    const Answer small = fit({"--shape", "sphere", "--mm", "24.3"});
    QCOMPARE(small.status, 0);
    QCOMPARE(small.lines().size(), 1);
    QVERIFY(small.out.contains("is a small part"));
    QVERIFY(small.out.contains("is a small ball"));
    const Answer large = fit({"--shape", "disc", "--mm", "40,5"});
    QVERIFY(large.out.contains("does not fit"));
    QVERIFY(!large.out.contains("ball"));
}

void TestFitCommand::aSlipExitsOneWithItsReason_data()
{
    QTest::addColumn<QStringList>("arguments");
    QTest::addColumn<QString>("reason");
    QTest::newRow("unknown shape") << QStringList{"--shape", "cone", "--mm", "20,30"} << "shape";
    QTest::newRow("too few sizes") << QStringList{"--shape", "box", "--mm", "20,30"} << "3 sizes";
    QTest::newRow("metres") << QStringList{"--shape", "sphere", "--mm", "0.024"} << "millimetres";
    QTest::newRow("no number") << QStringList{"--shape", "sphere", "--mm", "nan"} << "number";
    QTest::newRow("below zero") << QStringList{"--shape", "sphere", "--mm=-24"} << "above zero";
    QTest::newRow("no such file") << QStringList{"--csv", "/nowhere/things.csv"} << "/nowhere";
    QTest::newRow("a folder") << QStringList{"--csv", "/"} << "nothing could be read from /";
}

void TestFitCommand::aSlipExitsOneWithItsReason()
{
    QFETCH(QStringList, arguments);
    QFETCH(QString, reason);
    const Answer answer = fit(arguments);
    QCOMPARE(answer.status, 1);
    QVERIFY(answer.out.isEmpty());
    QCOMPARE(answer.problem.count('\n'), 1);
    QVERIFY2(answer.problem.contains(reason), qPrintable(answer.problem));
    // "Does not fit" on its own would be read as the answer, the dangerous way.
    QVERIFY(!answer.problem.contains("not fit"));
}

void TestFitCommand::wrongUseExitsTwo_data()
{
    QTest::addColumn<QStringList>("arguments");
    QTest::newRow("nothing asked") << QStringList{};
    QTest::newRow("a shape without sizes") << QStringList{"--shape", "sphere"};
    QTest::newRow("sizes without a shape") << QStringList{"--mm", "20"};
    QTest::newRow("words for sizes") << QStringList{"--shape", "sphere", "--mm", "twenty"};
    QTest::newRow("one thing and a table")
        << QStringList{"--shape", "sphere", "--mm", "20", "--csv", "things.csv"};
}

void TestFitCommand::wrongUseExitsTwo()
{
    QFETCH(QStringList, arguments);
    const Answer answer = fit(arguments);
    QCOMPARE(answer.status, 2);
    QVERIFY(answer.out.isEmpty());
}

void TestFitCommand::aTableIsAnsweredRowByRow()
{
    const Answer answer = fitTable("name,shape,dim1_mm,dim2_mm,dim3_mm\n"
                                   "Marble,sphere,16,,\n"
                                   "Crown,disc,38.61,2.89,\n"
                                   "Table tennis ball,sphere,40,,\n"
                                   "Tennis ball,sphere,67,,\n");
    QCOMPARE(answer.status, 0);
    QVERIFY2(answer.problem.isEmpty(), qPrintable(answer.problem));
    const QStringList lines = answer.lines();
    QCOMPARE(lines.size(), 5);
    QCOMPARE(lines[0], QString("name,fits,scale,small_ball"));
    // 31.75 over the diameter: 1.984, 0.822, 0.794, 0.474.
    const QList<QRegularExpression> forms{
        QRegularExpression("^Marble,yes,1\\.98\\d{3},yes$"),
        QRegularExpression("^Crown,no,0\\.82\\d{3},n/a$"),
        QRegularExpression("^Table tennis ball,no,0\\.79\\d{3},yes$"),
        QRegularExpression("^Tennis ball,no,0\\.47\\d{3},no$")};
    for (int i = 0; i < forms.size(); ++i)
        QVERIFY2(forms[i].match(lines[i + 1]).hasMatch(), qPrintable(lines[i + 1]));
}

void TestFitCommand::anyOrdinaryCsvIsRead_data()
{
    QTest::addColumn<QByteArray>("table");
    QTest::addColumn<QString>("name");
    const auto row = [](const char *what, const QByteArray &table, const char *name) {
        QTest::newRow(what) << table << name;
    };
    // RFC 4180, and what other programs make of it.
    const QByteArray header = "name,shape,dim1_mm,dim2_mm,dim3_mm";
    row("CR LF", header + "\r\nBead,sphere,16,,\r\n", "Bead");
    row("a byte order mark", "\xEF\xBB\xBF" + header + "\nBead,sphere,16,,\n", "Bead");
    row("no line end at the end", header + "\nBead,sphere,16,,", "Bead");
    row("empty lines", header + "\n\nBead,sphere,16,,\n\n", "Bead");
    row("a comma in quotes", header + "\n\"Bead, red\",sphere,16,,\n", "\"Bead, red\"");
    row("doubled quotes", header + "\n\"5/8\"\" bead\",sphere,16,,\n", "\"5/8\"\" bead\"");
    row("other columns, other order",
        "colour,dim3_mm,dim2_mm,dim1_mm,shape,name,price\nred,,,16,sphere,Bead,3\n", "Bead");
    row("a short record", header + "\nBead,sphere,16\n", "Bead");
    row("spaces about cells", header + "\nBead , sphere, 16.0 ,,\n", "Bead");
}

void TestFitCommand::anyOrdinaryCsvIsRead()
{
    QFETCH(QByteArray, table);
    QFETCH(QString, name);
    const Answer answer = fitTable(table);
    QVERIFY2(answer.status == 0, qPrintable(answer.problem));
    QCOMPARE(answer.lines().size(), 2);
    QVERIFY2(answer.lines()[1].startsWith(name + ",yes,1.98"), qPrintable(answer.out));
}

void TestFitCommand::aBadRowIsNamedAndTheOthersAnswered_data()
{
    QTest::addColumn<QByteArray>("bad");
    QTest::addColumn<QStringList>("words");
    const auto row = [](const char *what, const QByteArray &bad, const QStringList &words) {
        QTest::newRow(what) << bad << words;
    };
    row("no number", "Bad,box,10,ten,10", {"line 3", "dim2_mm", "ten"});
    row("half a number", "Bad,box,10,10,10mm", {"line 3", "dim3_mm", "10mm"});
    row("a decimal comma", "Bad,sphere,\"16,5\",,", {"line 3", "dim1_mm", "16,5"});
    row("below zero", "Bad,disc,10,-1,", {"line 3", "dim2_mm", "above zero"});
    row("infinite", "Bad,sphere,inf,,", {"line 3", "dim1_mm", "above zero"});
    row("metres", "Bad,box,0.03,20,20", {"line 3", "dim1_mm", "millimetres"});
    row("unknown shape", "Bad,cone,10,10,", {"line 3", "shape"});
    row("too many sizes", "Bad,disc,10,10,10", {"line 3", "2 sizes"});
    row("no sizes", "Bad,box,,,", {"line 3", "3 sizes"});
    row("a comma too many", "Bad,red,sphere,16,,", {"line 3", "cells"});
    row("an open quote", "\"Bad,sphere,16,,", {"line 3", "quote"});
    row("text after a quote", "\"Bad\" one,sphere,16,,", {"line 3", "quote"});
}

void TestFitCommand::aBadRowIsNamedAndTheOthersAnswered()
{
    QFETCH(QByteArray, bad);
    QFETCH(QStringList, words);
    const Answer answer = fitTable("name,shape,dim1_mm,dim2_mm,dim3_mm\nFirst,sphere,16,,\n" + bad +
                                   "\nLast,sphere,67,,\n");
    QCOMPARE(answer.status, 1);
    QCOMPARE(answer.problem.count('\n'), 1);
    for (const QString &word : words)
        QVERIFY2(answer.problem.contains(word), qPrintable(answer.problem));
    QCOMPARE(answer.lines().size(), 3);
    QVERIFY(answer.lines()[1].startsWith("First,yes,"));
    QVERIFY(answer.lines()[2].startsWith("Last,no,"));
}

void TestFitCommand::aTableThatIsNoneIsRefused_data()
{
    QTest::addColumn<QByteArray>("table");
    QTest::newRow("empty") << QByteArray("");
    QTest::newRow("no header") << QByteArray("Bead,sphere,16,,\n");
    QTest::newRow("a column is missing")
        << QByteArray("name,shape,dim1_mm,dim2_mm\nBead,sphere,16,\n");
    QTest::newRow("semicolons") << QByteArray("name;shape;dim1_mm;dim2_mm;dim3_mm\n");
}

void TestFitCommand::aTableThatIsNoneIsRefused()
{
    QFETCH(QByteArray, table);
    const Answer answer = fitTable(table);
    QCOMPARE(answer.status, 1);
    QVERIFY(answer.out.isEmpty());
    QCOMPARE(answer.problem.count('\n'), 1);
}

QTEST_GUILESS_MAIN(TestFitCommand)
#include "tst_fit_command.moc"

#include <QtTest>

#include <QProcess>

namespace {

struct Answer {
    int status = -1;
    QString out;
    QString problem;
};

Answer forecast(const QString &arguments)
{
    QProcess process;
    process.start(qEnvironmentVariable("LIDLARK_CLI"),
                  ("forecast " + arguments).split(' ', Qt::SkipEmptyParts));
    process.waitForFinished(60'000);
    return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()),
            QString::fromUtf8(process.readAllStandardError())};
}

} // namespace

/// Guards `lidlark-cli forecast` of design.md 11. Whether the answers are right is the business of
/// tst_piece_forecast; those here can be done by hand: with shape 1 the pieces are geometric,
/// P(N <= k) = 1 - (t / (b + t))^(k + 1).
class TestForecastCommand : public QObject
{
    Q_OBJECT

private slots:
    void theQuantileIsAnsweredInJson();
    void withoutJsonItIsOneSentence_data();
    void withoutJsonItIsOneSentence();
    void aNumberThatDoesNotFitExitsOneWithItsField_data();
    void aNumberThatDoesNotFitExitsOneWithItsField();
    void wrongUseExitsTwo_data();
    void wrongUseExitsTwo();
};

void TestForecastCommand::theQuantileIsAnsweredInJson()
{
    // 1 - 0.5^7 = 0.9921875: six pieces reach it, and five reach 0.984375 only.
    const Answer answer = forecast("--shape 1 --rate 30 --days 30 --p 0.99 --json");
    QCOMPARE(answer.status, 0);
    QCOMPARE(answer.out, QString("{\"pieces\":6}\n"));
    QCOMPARE(answer.problem, QString());
}

void TestForecastCommand::withoutJsonItIsOneSentence_data()
{
    QTest::addColumn<QString>("asked");
    QTest::addColumn<QString>("said");
    QTest::newRow("some") << "--shape 1 --rate 30 --days 30 --p 0.99"
                          << "At most 6 pieces go in 30 days, with a chance of at least 0.99.\n";
    QTest::newRow("one") << "--shape 1 --rate 1 --days 1 --p 0.75"
                         << "At most 1 piece goes in 1 day, with a chance of at least 0.75.\n";
}

void TestForecastCommand::withoutJsonItIsOneSentence()
{
    QFETCH(QString, asked);
    const Answer answer = forecast(asked);
    QCOMPARE(answer.status, 0);
    QTEST(answer.out, "said");
}

void TestForecastCommand::aNumberThatDoesNotFitExitsOneWithItsField_data()
{
    QTest::addColumn<QString>("asked");
    QTest::addColumn<QString>("field");
    QTest::newRow("no shape") << "--shape 0 --rate 30 --days 30 --p 0.5"
                              << "shape: ";
    QTest::newRow("a negative rate") << "--shape 1 --rate=-30 --days 30 --p 0.5"
                                     << "rate: ";
    QTest::newRow("yesterday") << "--shape 1 --rate 30 --days=-1 --p 0.5"
                               << "days: ";
    QTest::newRow("certainty") << "--shape 1 --rate 30 --days 30 --p 1"
                               << "p: ";
    QTest::newRow("no number") << "--shape nan --rate 30 --days 30 --p 0.5"
                               << "shape: ";
}

void TestForecastCommand::aNumberThatDoesNotFitExitsOneWithItsField()
{
    QFETCH(QString, asked);
    QFETCH(QString, field);
    const Answer answer = forecast(asked + " --json");
    QCOMPARE(answer.status, 1);
    QCOMPARE(answer.out, QString());
    QVERIFY2(answer.problem.contains(field), qPrintable(answer.problem));
}

void TestForecastCommand::wrongUseExitsTwo_data()
{
    QTest::addColumn<QString>("asked");
    QTest::newRow("nothing asked") << "";
    QTest::newRow("no shape") << "--rate 30 --days 30 --p 0.5";
    QTest::newRow("no rate") << "--shape 1 --days 30 --p 0.5";
    QTest::newRow("no days") << "--shape 1 --rate 30 --p 0.5";
    QTest::newRow("no chance") << "--shape 1 --rate 30 --days 30";
    QTest::newRow("a word for a number") << "--shape one --rate 30 --days 30 --p 0.5";
    QTest::newRow("an unknown option") << "--shape 1 --rate 30 --days 30 --p 0.5 --weeks 2";
}

void TestForecastCommand::wrongUseExitsTwo()
{
    QFETCH(QString, asked);
    const Answer answer = forecast(asked);
    QCOMPARE(answer.status, 2);
    QCOMPARE(answer.out, QString());
    QVERIFY(!answer.problem.isEmpty());
}

QTEST_APPLESS_MAIN(TestForecastCommand)
#include "tst_forecast_command.moc"

#include <QtTest>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

#include <memory>

/// Guards `answer`, `request`, `tend` and `forecast-box`: shapes, exit 0 / 1 / 2, and that a
/// mistake changes nothing.
class TestBoxCommands : public QObject
{
    Q_OBJECT

private:
    struct Answer {
        int status = -1;
        QJsonObject json;
        QString problem;
    };

    std::unique_ptr<QTemporaryDir> m_folder;

    static Answer run(const QStringList &arguments)
    {
        QProcess process;
        process.start(qEnvironmentVariable("LIDLARK_CLI"), arguments);
        process.closeWriteChannel();
        process.waitForFinished(60'000);
        return {process.exitCode(),
                QJsonDocument::fromJson(process.readAllStandardOutput()).object(),
                QString::fromUtf8(process.readAllStandardError())};
    }
    Answer ruths(const QStringList &arguments, const char *clock = "2027-01-11T18:25:00Z") const
    {
        return run(arguments + QStringList{"--json", "--clock", clock, "--store",
                                           m_folder->filePath("fin-ruth.lidlark")});
    }
    static QJsonObject itemOf(const Answer &answer, const char *id)
    {
        const QJsonArray items = answer.json["items"].toArray();
        for (const auto &item : items) {
            if (item.toObject()["id"].toString() == QLatin1String(id))
                return item.toObject();
        }
        return {};
    }
    QString box() const { return QString::fromUtf8(QJsonDocument(ruths({"box"}).json).toJson()); }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        QCOMPARE(run({"demo", m_folder->path(), "--json"}).status, 0);
    }

    /// job.md G5.
    void aRequestGoesFromAskedToCountedIn()
    {
        Answer answer = ruths({"request", R"({"child":"Fin","author":"Ruth","item":"eyes"})"});
        QCOMPARE(answer.status, 0);
        QCOMPARE(answer.json["requests"].toArray().size(), 1);
        answer = ruths({"request", R"({"child":"Fin","item":"eyes","step":"packed"})"});
        QCOMPARE(answer.json["requests"].toArray()[0].toObject()["step"].toString(),
                 QStringLiteral("packed"));
        answer =
            ruths({"request", R"({"child":"Fin","item":"eyes","step":"counted-in","count":2})"});
        QCOMPARE(itemOf(answer, "eyes")["low"].toInt(), 8);
        answer = ruths(
            {"request",
             R"({"child":"Fin","item":"eyes","step":"counted-in","count":3,"correct":true})"});
        QCOMPARE(itemOf(answer, "eyes")["low"].toInt(), 9);
    }

    void whatIsTendedShowsInTheBox()
    {
        Answer answer = ruths({"tend", R"({"child":"Fin","item":"dough","what":"left-open"})"});
        QCOMPARE(answer.status, 0);
        QVERIFY(itemOf(answer, "dough")["use_soon"].toBool());
        QCOMPARE(itemOf(answer, "dough")["opened"].toString(), QStringLiteral("2027-01-04"));
        answer =
            ruths({"tend", R"({"child":"Fin","item":"dough","what":"opened","day":"2027-01-06"})"});
        QCOMPARE(itemOf(answer, "dough")["opened"].toString(), QStringLiteral("2027-01-06"));
        answer = ruths({"tend", R"({"child":"Fin","item":"dough","what":"keeps","days":3})"});
        QCOMPARE(itemOf(answer, "dough")["usable"].toInt(), 0);
        answer = ruths({"tend", R"({"child":"Fin","item":"dough","what":"thrown-away"})"});
        QCOMPARE(itemOf(answer, "dough")["high"].toInt(), 0);
        QCOMPARE(answer.json["requests"].toArray().size(), 1);
        answer = ruths(
            {"tend",
             R"({"child":"Fin","item":"pegs","what":"gone","kind":"still-in-use","count":2})"});
        QCOMPARE(itemOf(answer, "pegs")["out"].toInt(), 2);
        answer = ruths({"tend", R"({"child":"Fin","item":"pegs","what":"back-again","count":2})"});
        QCOMPARE(itemOf(answer, "pegs")["out"].toInt(), 0);
        answer = ruths({"tend", R"({"child":"Fin","item":"pegs","what":"mouthed"})"});
        QVERIFY(itemOf(answer, "pegs")["to_wash"].toBool());
    }

    void theForecastSaysOnWhatItRests()
    {
        for (const char *clock : {"2027-01-12T18:00:00Z", "2027-01-19T18:00:00Z"})
            QCOMPARE(
                ruths({"tend", R"({"child":"Fin","item":"eyes","what":"gone","kind":"used-up"})"},
                      clock)
                    .status,
                0);
        const Answer answer =
            ruths({"forecast-box", "--days-to-round", "14"}, "2027-01-25T18:00:00Z");
        QCOMPARE(answer.status, 0);
        QCOMPARE(answer.json["days_to_round"].toInt(), 14);
        const QJsonObject eyes = itemOf(answer, "eyes");
        QCOMPARE(eyes["pieces_seen"].toInt(), 2);
        QCOMPARE(eyes["days_watched"].toInt(), 22); // 4 to 25 January
        QVERIFY(eyes["mainly_prior"].toBool());
        QVERIFY(eyes["earliest_weeks"].toDouble() < eyes["latest_weeks"].toDouble());
        const double chance = eyes["chance_empty_before_round"].toDouble();
        QVERIFY(chance > 0 && chance < 1);
        QVERIFY(itemOf(answer, "dough").contains("keeps"));
    }

    void mistakesAreNamedAndChangeNothing_data()
    {
        QTest::addColumn<QStringList>("arguments");
        QTest::addColumn<QString>("named");
        QTest::newRow("no such question")
            << QStringList{"answer", R"({"question":"x","answer":"two"})"} << "question";
        QTest::newRow("no answer") << QStringList{"answer", R"({"question":"x"})"} << "answer";
        QTest::newRow("a step that is none")
            << QStringList{"request", R"({"child":"Fin","item":"eyes","step":"eaten"})"} << "step";
        QTest::newRow("no number")
            << QStringList{"request", R"({"child":"Fin","item":"eyes","step":"counted-in"})"}
            << "count";
        QTest::newRow("a thousand and more")
            << QStringList{"request",
                           R"({"child":"Fin","item":"eyes","step":"counted-in","count":1000})"}
            << "999";
        QTest::newRow("a thing that is none")
            << QStringList{"tend", R"({"child":"Fin","item":"eyes","what":"polished"})"} << "what";
        QTest::newRow("a day that is none")
            << QStringList{"tend",
                           R"({"child":"Fin","item":"dough","what":"opened","day":"2027-02-30"})"}
            << "day";
        QTest::newRow("more than there is")
            << QStringList{"tend",
                           R"({"child":"Fin","item":"eyes","what":"gone","kind":"lost","count":7})"}
            << "more than";
        QTest::newRow("a box of nobody")
            << QStringList{"tend", R"({"child":"Nemo","item":"eyes","what":"checked"})"} << "Nemo";
    }
    void mistakesAreNamedAndChangeNothing()
    {
        QFETCH(QStringList, arguments);
        QFETCH(QString, named);
        const QString before = box();
        const Answer answer = ruths(arguments);
        QCOMPARE(answer.status, 1);
        QVERIFY2(answer.problem.contains(named), qPrintable(answer.problem));
        QCOMPARE(box(), before);
    }

    void wrongUseIsTwo()
    {
        QCOMPARE(ruths({"forecast-box", "--days-to-round", "-3"}).status, 2);
        QCOMPARE(ruths({"forecast-box", "--days-to-round", "soon"}).status, 2);
    }
};

QTEST_APPLESS_MAIN(TestBoxCommands)
#include "tst_box_commands.moc"

#include <QtTest>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QSet>
#include <QTemporaryDir>

/// Guards `week`, `wish` and `pin-grading`: shapes, exit 0 / 1 / 2, and that a mistake changes
/// nothing.
class TestPlanCommands : public QObject
{
    Q_OBJECT

private:
    struct Answer {
        int status = -1;
        QJsonObject json;
        QString problem;
    };

    QTemporaryDir m_folder;

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
    Answer on(const char *store, const QStringList &arguments) const
    {
        return run(arguments + QStringList{"--json", "--clock", "2027-01-11T18:25:00Z", "--store",
                                           m_folder.filePath(store)});
    }
    Answer ruths(const QStringList &arguments) const { return on("fin-ruth.lidlark", arguments); }
    static QJsonObject day(const Answer &answer, int index)
    {
        return answer.json["days"].toArray()[index].toObject();
    }
    static QString planned(const Answer &answer, int index)
    {
        return day(answer, index)["planned"].toArray()[0].toObject()["id"].toString();
    }

private slots:
    void init() { QCOMPARE(run({"demo", m_folder.path(), "--json"}).status, 0); }

    void aWeekHasSevenDaysAndSaysWhetherItIsProven()
    {
        const Answer week = ruths({"week"});
        QCOMPARE(week.status, 0);
        QCOMPARE(week.json["days"].toArray().size(), 7);
        QCOMPARE(day(week, 0)["day"].toString(), QStringLiteral("2027-01-11"));
        QVERIFY(week.json["proven"].toBool());
        QCOMPARE(week.json["gap"].toInt(), 0);
        QCOMPARE(week.json["bound"], week.json["value"]);
        QSet<QString> ids;
        for (int i = 0; i < 7; ++i)
            ids.insert(planned(week, i));
        QCOMPARE(ids.size(), 7);
    }

    void severalADayAreNeverTheSame()
    {
        const Answer week = ruths({"week", "--per-day", "2", "--date", "2027-01-18"});
        QSet<QString> ids;
        for (int i = 0; i < 7; ++i) {
            const QJsonArray planned = day(week, i)["planned"].toArray();
            for (const auto &one : planned)
                ids.insert(one.toObject()["id"].toString());
        }
        QCOMPARE(ids.size(), 14);
        QCOMPARE(day(week, 0)["day"].toString(), QStringLiteral("2027-01-18"));
    }

    void aWishIsKeptAndTakenBack()
    {
        const Answer kept = ruths(
            {"wish", R"({"child":"Fin","day":"2027-01-13","wish":"keep","activity":"slow-oars"})"});
        QCOMPARE(kept.status, 0);
        QCOMPARE(planned(kept, 2), QStringLiteral("slow-oars"));
        QCOMPARE(day(kept, 2)["wish"].toString(), QStringLiteral("keep"));
        const Answer free = ruths({"wish", R"({"child":"Fin","day":"2027-01-13","wish":"free"})"});
        QVERIFY(day(free, 2)["planned"].toArray().isEmpty());
        const Answer open = ruths({"wish", R"({"child":"Fin","day":"2027-01-13","wish":"open"})"});
        QCOMPARE(day(open, 2)["wish"].toString(), QStringLiteral("open"));
        QVERIFY(!planned(open, 2).isEmpty());
        QVERIFY(ruths({"verify"}).json["projections_match"].toBool());
    }

    void mistakesChangeNothing_data()
    {
        QTest::addColumn<QString>("input");
        QTest::addColumn<QString>("problem");
        QTest::newRow("no day") << R"({"child":"Fin","wish":"free"})"
                                << "day:";
        QTest::newRow("a day that is none") << R"({"child":"Fin","day":"2027-02-30","wish":"free"})"
                                            << "day:";
        QTest::newRow("long gone") << R"({"child":"Fin","day":"1926-01-13","wish":"free"})"
                                   << "a week ahead";
        QTest::newRow("another wish") << R"({"child":"Fin","day":"2027-01-13","wish":"must"})"
                                      << "wish:";
        QTest::newRow("nothing to keep") << R"({"child":"Fin","day":"2027-01-13","wish":"keep"})"
                                         << "activity";
        QTest::newRow("nobody") << R"({"child":"Kit","day":"2027-01-13","wish":"free"})"
                                << "Kit";
        QTest::newRow("no JSON") << "{"
                                 << "not a JSON object";
    }

    void mistakesChangeNothing()
    {
        QFETCH(QString, input);
        QFETCH(QString, problem);
        const auto events = ruths({"verify"}).json["events"].toInt();
        const Answer answer = ruths({"wish", input});
        QCOMPARE(answer.status, 1);
        QVERIFY2(answer.problem.contains(problem), qPrintable(answer.problem));
        QCOMPARE(ruths({"verify"}).json["events"].toInt(), events);
    }

    void aMenuThatIsShortSaysWhatWouldHelp()
    {
        const Answer none = ruths({"menu", "--child", "Fin", "--minutes", "1"});
        QCOMPARE(none.status, 0);
        QVERIFY(none.json["offers"].toArray().isEmpty());
        QCOMPARE(none.json["help"].toString(),
                 QStringLiteral("With a few minutes more, more fits."));
        QVERIFY(!ruths({"menu", "--child", "Fin"}).json.contains("help"));
    }

    void wrongUseIsTwo()
    {
        QCOMPARE(ruths({"week", "--per-day", "4"}).status, 2);
        QCOMPARE(ruths({"week", "--date", "soon"}).status, 1);
    }

    void onlyTheTherapistPins()
    {
        const QString easier =
            R"({"child":"Fin","activity":"slow-oars","way":"easier","lever":"distance"})";
        QCOMPARE(on("morven.lidlark", {"pin-grading", easier}).json["pinned"].toBool(), true);
        const Answer parent = ruths({"pin-grading", easier});
        QCOMPARE(parent.status, 1);
        QVERIFY2(parent.problem.contains("only the therapist"), qPrintable(parent.problem));
        const Answer lever =
            on("morven.lidlark",
               {"pin-grading",
                R"({"child":"Fin","activity":"slow-oars","way":"easier","lever":"luck"})"});
        QVERIFY2(lever.problem.contains("lever:"), qPrintable(lever.problem));
        const Answer off =
            on("morven.lidlark",
               {"pin-grading", R"({"child":"Fin","activity":"slow-oars","way":"none"})"});
        QCOMPARE(off.json["pinned"].toBool(true), false);
    }
};

QTEST_APPLESS_MAIN(TestPlanCommands)
#include "tst_plan_commands.moc"

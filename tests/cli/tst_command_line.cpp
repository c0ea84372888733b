#include <QtTest>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

namespace {

struct Answer {
    int status = -1;
    QByteArray out;
    QString problem;

    QJsonObject json() const { return QJsonDocument::fromJson(out).object(); }
};

const QStringList dayOneEvening{QStringLiteral("--clock"), QStringLiteral("2027-01-11T18:25:00Z"),
                                QStringLiteral("--json")};

} // namespace

/// Guards the command line of design.md 11: exactly those JSON shapes, exit 0 / 1 / 2, and that a
/// mistake changes nothing.
class TestCommandLine : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;

    static Answer ask(const QStringList &arguments, const QByteArray &input = {})
    {
        QProcess process;
        process.start(qEnvironmentVariable("LIDLARK_CLI"), arguments);
        process.write(input);
        process.closeWriteChannel();
        process.waitForFinished(60'000);
        return {process.exitCode(), process.readAllStandardOutput(),
                QString::fromUtf8(process.readAllStandardError())};
    }

    QString store(const char *name) const
    {
        return m_folder.filePath(QStringLiteral("island/") + QLatin1String(name) +
                                 QStringLiteral(".lidlark"));
    }

    Answer askStore(const char *name, QStringList arguments, const QByteArray &input = {}) const
    {
        arguments << QStringLiteral("--store") << store(name) << dayOneEvening;
        return ask(arguments, input);
    }

    /// A catalogue with all items and only these activities, so that a menu must show them.
    QString shelfOf(const QStringList &activities) const
    {
        const QDir from(qEnvironmentVariable("LIDLARK_SOURCE_DIR") +
                        QStringLiteral("/assets/catalogue"));
        const QDir to(m_folder.filePath(QStringLiteral("shelf")));
        to.mkpath(QStringLiteral("items"));
        to.mkpath(QStringLiteral("activities"));
        const QDir items(from.filePath(QStringLiteral("items")));
        for (const QString &name : items.entryList(QDir::Files))
            QFile::copy(items.filePath(name), to.filePath(QStringLiteral("items/") + name));
        for (const QString &id : activities) {
            const QString name = QStringLiteral("activities/%1.yaml").arg(id);
            QFile::copy(from.filePath(name), to.filePath(name));
        }
        return to.path();
    }

    static QJsonObject itemIn(const QJsonObject &box, const char *id)
    {
        for (const auto &item : box[QStringLiteral("items")].toArray()) {
            if (item[QStringLiteral("id")].toString() == QLatin1String(id))
                return item.toObject();
        }
        return {};
    }

private slots:
    void init()
    {
        const Answer demo =
            ask({QStringLiteral("demo"), m_folder.filePath(QStringLiteral("island")),
                 QStringLiteral("--json")});
        QCOMPARE(demo.status, 0);
        QCOMPARE(demo.json()[QStringLiteral("stores")].toArray().size(), 17);
        const QJsonObject ruth = demo.json()[QStringLiteral("stores")].toArray()[1].toObject();
        QCOMPARE(ruth[QStringLiteral("file")].toString(), QStringLiteral("fin-ruth.lidlark"));
        QCOMPARE(ruth[QStringLiteral("person")].toString(), QStringLiteral("Ruth"));
        QCOMPARE(ruth[QStringLiteral("role")].toString(), QStringLiteral("parent"));
        QCOMPARE(ruth[QStringLiteral("child")].toString(), QStringLiteral("Fin"));
        QVERIFY(!ruth[QStringLiteral("device")].toString().isEmpty());
    }

    void cleanup()
    {
        QVERIFY(QDir(m_folder.filePath(QStringLiteral("island"))).removeRecursively());
    }

    void menuHasTheShapeScriptsRelyOn()
    {
        const Answer menu = askStore(
            "fin-ruth", {QStringLiteral("menu"), QStringLiteral("--child"), QStringLiteral("Fin")});
        QCOMPARE(menu.status, 0);
        const QJsonObject json = menu.json();
        QCOMPARE(json[QStringLiteral("child")].toString(), QStringLiteral("Fin"));
        QCOMPARE(json[QStringLiteral("date")].toString(), QStringLiteral("2027-01-11"));
        QCOMPARE(json[QStringLiteral("part")].toString(), QStringLiteral("evening"));
        QVERIFY(json[QStringLiteral("value")].isDouble());
        QCOMPARE(json[QStringLiteral("proven")].toBool(), true);
        QCOMPARE(json[QStringLiteral("offers")].toArray().size(), 3);
        for (const auto &offer : json[QStringLiteral("offers")].toArray()) {
            for (const char *key : {"id", "name", "minutes", "supervision", "label", "cautions",
                                    "swaps", "why", "sentence"})
                QVERIFY2(!offer[QLatin1String(key)].isUndefined(), key);
            QVERIFY(!offer[QStringLiteral("sentence")].toString().isEmpty());
            QVERIFY(offer[QStringLiteral("minutes")][QStringLiteral("play")].toInt() >= 3);
        }
        for (const auto &held : json[QStringLiteral("held_back")].toArray())
            QVERIFY(!held[QStringLiteral("reasons")].toArray().isEmpty());
    }

    /// The issue's own line: for Lewis with Mirren in the room nothing with a hard tag is offered.
    /// The ten tags of job.md F2.
    void withMirrenHereNothingForHerMouthIsOffered()
    {
        const QStringList hard{QStringLiteral("SMALL"),   QStringLiteral("COIN"),
                               QStringLiteral("BALLOON"), QStringLiteral("ELASTIC"),
                               QStringLiteral("FOAM"),    QStringLiteral("FOIL"),
                               QStringLiteral("STRAW"),   QStringLiteral("STICKER"),
                               QStringLiteral("CORD"),    QStringLiteral("DOUGH")};
        for (const char *room : {"under-three,mouther", "Mirren"}) {
            const Answer menu =
                askStore("lewis-catriona",
                         {QStringLiteral("menu"), QStringLiteral("--child"),
                          QStringLiteral("Lewis"), QStringLiteral("--room"), QLatin1String(room)});
            QCOMPARE(menu.json()[QStringLiteral("offers")].toArray().size(), 3);
            for (const auto &offer : menu.json()[QStringLiteral("offers")].toArray()) {
                for (const auto &tag : offer[QStringLiteral("cautions")].toArray())
                    QVERIFY(!hard.contains(tag.toString()));
            }
        }
    }

    /// Letter by letter: EN 71-1 by way of safety.md L-7, 16 CFR 1500.19(b)(2) by way of L-2.
    void labelWordsAreThoseOfTheCountry()
    {
        const QString shelf = shelfOf({"slow-sky-taps", "slow-oars", "sail-tug"});
        const auto labelsIn = [this, &shelf](const char *locale) {
            QString all;
            const Answer menu =
                askStore("fin-ruth", {QStringLiteral("menu"), QStringLiteral("--child"),
                                      QStringLiteral("Fin"), QStringLiteral("--catalogue"), shelf,
                                      QStringLiteral("--locale"), QLatin1String(locale)});
            for (const auto &offer : menu.json()[QStringLiteral("offers")].toArray()) {
                for (const auto &label : offer[QStringLiteral("label")].toArray())
                    all += label[QStringLiteral("words")].toString() + u'\n';
            }
            return all;
        };
        const QString europe = labelsIn("en_GB");
        QVERIFY2(europe.contains("Children under eight years can choke or suffocate on"),
                 qPrintable(europe));
        QVERIFY(!europe.contains("CHOKING HAZARD"));
        QVERIFY(labelsIn("en_US").contains("CHOKING HAZARD"));
    }

    /// Source: reference/rotation/optimum.csv (CBC 2.10.8 and GLPK 5.0 agreed).
    void aMenuProblemOfPlainNumbersIsSolved()
    {
        const QString folder =
            qEnvironmentVariable("LIDLARK_SOURCE_DIR") + QStringLiteral("/tests/data/rotation/");
        const Answer solved =
            ask({QStringLiteral("menu-solve"), folder + QStringLiteral("r60-k5-tight-s32-d1.rot"),
                 QStringLiteral("--json")});
        QCOMPARE(solved.status, 0);
        QCOMPARE(solved.json()[QStringLiteral("value")].toInt(), 1393);
        QCOMPARE(solved.json()[QStringLiteral("chosen")].toArray(),
                 (QJsonArray{6, 11, 20, 21, 32}));
        QCOMPARE(solved.json()[QStringLiteral("proven")].toBool(), true);
        const Answer foreign =
            ask({QStringLiteral("menu-solve"), folder + QStringLiteral("optimum.csv")});
        QCOMPARE(foreign.status, 1);
        QVERIFY2(foreign.problem.contains("line 1, lidrot"), qPrintable(foreign.problem));
    }

    /// Source: reference/rotation/optimum.csv (CBC 2.10.8).
    void aMenuProblemOfSevenDaysIsSolved()
    {
        const QString folder =
            qEnvironmentVariable("LIDLARK_SOURCE_DIR") + QStringLiteral("/tests/data/rotation/");
        const QString week = folder + QStringLiteral("r60-k5-loose-s40-d7.rot");
        const QJsonObject solved =
            ask({QStringLiteral("menu-solve"), week, QStringLiteral("--json")}).json();
        QCOMPARE(solved[QStringLiteral("feasible")].toBool(), true);
        QCOMPARE(solved[QStringLiteral("value")].toInt(), 11339);
        QCOMPARE(solved[QStringLiteral("bound")].toInt(), 11339);
        QCOMPARE(solved[QStringLiteral("gap")].toInt(-1), 0);
        QCOMPARE(solved[QStringLiteral("proven")].toBool(), true);
        const QJsonArray days = solved[QStringLiteral("chosen")].toArray();
        QCOMPARE(days.size(), 7);
        QSet<int> all;
        for (const auto &day : days) {
            QCOMPARE(day.toArray().size(), 5);
            for (const auto &id : day.toArray())
                all.insert(id.toInt());
        }
        QCOMPARE(all.size(), 35);
        const Answer plain = ask({QStringLiteral("menu-solve"), week});
        QVERIFY2(plain.out.startsWith("value 11339\nday 0: "), plain.out.constData());
        const Answer late = ask(
            {QStringLiteral("menu-solve"), week, QStringLiteral("--limit"), QStringLiteral("0")});
        QCOMPARE(late.status, 1);
        QVERIFY2(late.problem.contains("--limit: no choice was found"), qPrintable(late.problem));
    }

    /// Source: as above.
    void sevenDaysThatCannotBeFilledAreSaidSo()
    {
        const QString week = qEnvironmentVariable("LIDLARK_SOURCE_DIR") +
                             QStringLiteral("/tests/data/rotation/r60-k3-tight-s39-d7.rot");
        const Answer none = ask({QStringLiteral("menu-solve"), week, QStringLiteral("--json")});
        QCOMPARE(none.status, 0);
        QCOMPARE(none.json()[QStringLiteral("feasible")].toBool(true), false);
        QCOMPARE(none.json()[QStringLiteral("proven")].toBool(), true);
        QVERIFY(none.json()[QStringLiteral("value")].isNull());
        QVERIFY(none.json()[QStringLiteral("chosen")].toArray().isEmpty());
        QCOMPARE(ask({QStringLiteral("menu-solve"), week}).out,
                 QByteArray("No choice keeps to all limits.\n"));
    }

    /// Contradictory words are refused, and nothing is offered.
    void nobodyElseAndSomebodyIsRefused()
    {
        const Answer menu =
            askStore("lewis-catriona",
                     {QStringLiteral("menu"), QStringLiteral("--child"), QStringLiteral("Lewis"),
                      QStringLiteral("--room"), QStringLiteral("nobody-else,under-three")});
        QCOMPARE(menu.status, 1);
        QVERIFY2(menu.problem.contains("--room: nobody-else"), qPrintable(menu.problem));
    }

    void playPutBackAndBoxTellOneStory()
    {
        const Answer play = askStore("fin-ruth", {QStringLiteral("play")},
                                     R"({"child":"Fin","activity":"hidden-harbour-lights",
                                         "author":"Ruth","kite":"steady"})");
        QCOMPARE(play.status, 0);
        const QByteArray id = play.json()[QStringLiteral("play")].toString().toUtf8();
        QVERIFY(!id.isEmpty());
        const Answer box = askStore(
            "fin-ruth", {QStringLiteral("put-back")},
            R"({"play":")" + id +
                R"(","author":"Ruth","exceptions":[{"item":"eyes","kind":"used-up","count":1}]})");
        QCOMPARE(box.status, 0);
        const QJsonObject eyes = itemIn(box.json(), "eyes");
        QCOMPARE(eyes[QStringLiteral("expected")].toInt(), 6);
        QCOMPARE(eyes[QStringLiteral("low")].toInt(), 5);
        QCOMPARE(eyes[QStringLiteral("high")].toInt(), 5);
        QCOMPARE(eyes[QStringLiteral("out")].toInt(), 0);
        QCOMPARE(itemIn(box.json(), "dough")[QStringLiteral("opened")].toString(),
                 QStringLiteral("2027-01-04"));
        QCOMPARE(box.json()[QStringLiteral("revision")].toInt(), 1);
        QVERIFY(box.json()[QStringLiteral("open_notes")].toArray().isEmpty());
        QCOMPARE(askStore("fin-ruth", {QStringLiteral("box")}).out, box.out);
        const Answer again = askStore(
            "fin-ruth", {QStringLiteral("put-back")},
            R"({"play":")" + id +
                R"(","author":"Ruth","exceptions":[{"item":"eyes","kind":"used-up","count":0}]})");
        QCOMPARE(itemIn(again.json(), "eyes")[QStringLiteral("low")].toInt(), 6);
        const QJsonObject verified = askStore("fin-ruth", {QStringLiteral("verify")}).json();
        QCOMPARE(verified[QStringLiteral("projections_match")].toBool(), true);
        QCOMPARE(verified[QStringLiteral("integrity")].toString(), QStringLiteral("ok"));
        QVERIFY(verified[QStringLiteral("events")].toInt() > 40);
    }

    void countResetsAndNotebookRemembers()
    {
        const Answer counted = askStore("fin-ruth", {QStringLiteral("count")},
                                        R"({"child":"Fin","author":"Ruth","counts":{"pegs":5}})");
        QCOMPARE(counted.status, 0);
        QCOMPARE(itemIn(counted.json(), "pegs")[QStringLiteral("low")].toInt(), 5);
        const Answer notebook = askStore("fin-ruth", {QStringLiteral("notebook")});
        QCOMPARE(notebook.status, 0);
        QVERIFY(!notebook.json()[QStringLiteral("plays")].toArray().isEmpty());
    }

    void theDemoIsRepeatableAndMovesOn()
    {
        const QString folder = m_folder.filePath(QStringLiteral("island"));
        QVERIFY(ask({QStringLiteral("demo"), folder, QStringLiteral("--day"), QStringLiteral("15")})
                    .status == 0);
        const Answer later = askStore("fin-ruth", {QStringLiteral("notebook")});
        QVERIFY(later.json()[QStringLiteral("plays")].toArray().size() > 4);
        QCOMPARE(askStore("fin-ruth", {QStringLiteral("verify")})
                     .json()[QStringLiteral("projections_match")]
                     .toBool(),
                 true);
    }

    void mistakesInTheDataExitOneWithOneSentence_data()
    {
        QTest::addColumn<QStringList>("arguments");
        QTest::addColumn<QByteArray>("input");
        const auto row = [](const char *name, const QStringList &arguments,
                            const QByteArray &input = {}) {
            QTest::newRow(name) << arguments << input;
        };
        row("no such child",
            {QStringLiteral("menu"), QStringLiteral("--child"), QStringLiteral("Nobody")});
        row("no such day",
            {QStringLiteral("menu"), QStringLiteral("--child"), QStringLiteral("Fin"),
             QStringLiteral("--date"), QStringLiteral("2027-02-30")});
        row("no such kite",
            {QStringLiteral("menu"), QStringLiteral("--child"), QStringLiteral("Fin"),
             QStringLiteral("--kite"), QStringLiteral("purple")});
        row("nobody of that name",
            {QStringLiteral("menu"), QStringLiteral("--child"), QStringLiteral("Fin"),
             QStringLiteral("--room"), QStringLiteral("Mirrren")});
        row("a day before birth",
            {QStringLiteral("menu"), QStringLiteral("--child"), QStringLiteral("Fin"),
             QStringLiteral("--date"), QStringLiteral("2019-01-11")});
        row("not JSON", {QStringLiteral("play")}, "{\"child\":");
        row("no such activity", {QStringLiteral("play")},
            R"({"child":"Fin","activity":"moon-walk"})");
        row("no such play", {QStringLiteral("put-back")}, R"({"play":"0"})");
        row("a thousand eyes", {QStringLiteral("count")},
            R"({"child":"Fin","counts":{"eyes":1000}})");
        row("half an eye", {QStringLiteral("count")}, R"({"child":"Fin","counts":{"eyes":0.5}})");
        row("found none", {QStringLiteral("found")}, R"({"child":"Fin","item":"eyes","count":0})");
    }

    void mistakesInTheDataExitOneWithOneSentence()
    {
        QFETCH(QStringList, arguments);
        QFETCH(QByteArray, input);
        const auto before = askStore("fin-ruth", {QStringLiteral("verify")}).out;
        const Answer answer = askStore("fin-ruth", arguments, input);
        QCOMPARE(answer.status, 1);
        QVERIFY(answer.out.isEmpty());
        QCOMPARE(answer.problem.count(u'\n'), 1);
        QCOMPARE(askStore("fin-ruth", {QStringLiteral("verify")}).out, before);
    }

    void wrongUseExitsTwo_data()
    {
        QTest::addColumn<QStringList>("arguments");
        QTest::newRow("no command") << QStringList{};
        QTest::newRow("unknown command") << QStringList{QStringLiteral("dance")};
        QTest::newRow("unknown option")
            << QStringList{QStringLiteral("verify"), QStringLiteral("--loud")};
        QTest::newRow("menu without a child") << QStringList{QStringLiteral("menu")};
    }

    void wrongUseExitsTwo()
    {
        QFETCH(QStringList, arguments);
        QCOMPARE(ask(arguments).status, 2);
    }

    void aStoreThatIsNotOneIsRefusedInPlainWords()
    {
        QFile letter(m_folder.filePath(QStringLiteral("letter.lidlark")));
        QVERIFY(letter.open(QIODevice::WriteOnly));
        letter.write(QByteArray("Dear Morven, ").repeated(500));
        letter.close();
        const Answer answer =
            ask({QStringLiteral("box"), QStringLiteral("--store"), letter.fileName()});
        QCOMPARE(answer.status, 1);
        QVERIFY(answer.problem.contains(QStringLiteral("not a Lidlark store")));
        const Answer missing = ask({QStringLiteral("box"), QStringLiteral("--store"),
                                    m_folder.filePath(QStringLiteral("nowhere.lidlark"))});
        QCOMPARE(missing.status, 1);
        QVERIFY(!QFile::exists(m_folder.filePath(QStringLiteral("nowhere.lidlark"))));
    }

    void aClockIn1970OrIn2100IsSaidSo()
    {
        for (const char *clock : {"1970-01-01T08:00:00Z", "2100-01-01T08:00:00Z"}) {
            const Answer answer =
                ask({QStringLiteral("menu"), QStringLiteral("--child"), QStringLiteral("Fin"),
                     QStringLiteral("--store"), store("fin-ruth"), QStringLiteral("--clock"),
                     QLatin1String(clock)});
            QCOMPARE(answer.status, 1);
            QVERIFY(answer.problem.contains(QStringLiteral("clock shows 1 January")));
        }
    }
};

QTEST_GUILESS_MAIN(TestCommandLine)
#include "tst_command_line.moc"

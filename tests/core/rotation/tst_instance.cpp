#include <QtTest>

#include "core/rotation/exact_search.h"
#include "core/rotation/instance.h"
#include "tests/core/rotation/glpk_oracle.h"
#include "tests/core/rotation/random_problem.h"

#include <QFile>

using namespace lidlark::rotation;

namespace {

/// Two activities that share a skill; a third one of no family.
const QByteArray small("lidrot 1\n"
                       "n 3 k 2 days 1 skills 1 items 1\n"
                       "minutes 10\n"
                       "messy 1\n"
                       "stock 2\n"
                       "skill 0 w 2 seg 3:5 4:1\n"
                       "a 0 v 10 m 5 y 0 f 1 e 0:3 i 0:1\n"
                       "a 1 v 9 m 5 y 1 f 2 e 0:3 i 0:1\n"
                       "a 2 v -4 m 6 y 0 f 0 e - i -\n");

} // namespace

/// Guards the text format of reference/rotation.md, and the search on what it describes: minutes
/// shared by the chosen, mess, stock and families, with no condition of our own menus.
class TestInstance : public QObject
{
    Q_OBJECT

private slots:
    void readsWhatTheFormatSays()
    {
        const auto instance = readInstance(small.toStdString());
        QVERIFY(instance.ok());
        QCOMPARE(instance->perDay, std::size_t{2});
        QCOMPARE(instance->minutes, std::vector<int>{10});
        QCOMPARE(instance->problem.stock, std::vector<int>{2});
        QCOMPARE(instance->problem.curves.front(), (Curve{{3, 10}, {4, 2}})); // slope times w
        QCOMPARE(instance->problem.entries[1].isMessy, true);
        QCOMPARE(instance->problem.entries[2].family, noFamily);
        QCOMPARE(instance->problem.entries[2].worth, -4);
    }

    /// By hand: 10 + 9 and six minutes on the curve, 3 * 10 + 3 * 2.
    void solvesTheSmallOne()
    {
        const auto instance = readInstance(small.toStdString());
        std::int64_t nodes = 0;
        const auto choice = bestChoice(instance->problem, rulesOf(*instance, 0), nodes);
        QCOMPARE(choice->value, 19 + 36);
        QCOMPARE(choice->entries, (std::vector<std::size_t>{0, 1}));
    }

    void aFormatThatIsNoneIsRefusedByLineAndField_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QString>("reason");
        const auto with = [](const char *from, const char *to) {
            return QByteArray(small).replace(from, to);
        };
        QTest::newRow("empty") << QByteArray() << "line 1, end: the file stops here";
        QTest::newRow("foreign") << QByteArray("\x7f"
                                               "ELF\n")
                                 << "line 1, lidrot: not found here";
        QTest::newRow("version") << with("lidrot 1", "lidrot 2")
                                 << "line 1, lidrot: only version 1 is known";
        QTest::newRow("below zero")
            << with("n 3", "n -3") << "line 2, n: not a whole number from 0 to 20000";
        QTest::newRow("a thousand million")
            << with("n 3", "n 1000000000") << "line 2, n: not a whole number from 0 to 20000";
        QTest::newRow("none a day")
            << with("k 2", "k 0") << "line 2, k: not a whole number from 1 to 10";
        QTest::newRow("overflow") << with("v 10", "v 99999999999999999999")
                                  << "line 7, v: not a whole number from -1000000 to 1000000";
        QTest::newRow("half") << with("minutes 10", "minutes 10.5")
                              << "line 3, minutes: not a whole number from 0 to 1000000";
        QTest::newRow("too few") << with("stock 2", "stock") << "line 5, stock: missing";
        QTest::newRow("too many") << with("stock 2", "stock 2 3") << "line 5, 3: one word too many";
        QTest::newRow("convex") << with("3:5 4:1", "3:1 4:5")
                                << "line 6, seg: slopes must strictly fall, in at most 16 segments";
        QTest::newRow("no colon") << with("e 0:3 i 0:1\na 1", "e 3 i 0:1\na 1")
                                  << "line 7, e: not such as 3:5,7:2";
        QTest::newRow("no such skill") << with("e 0:3 i 0:1\na 1", "e 1:3 i 0:1\na 1")
                                       << "line 7, e: not a whole number from 0 to 0";
        QTest::newRow("twice") << with("e 0:3 i 0:1\na 1", "e 0:3,0:2 i 0:1\na 1")
                               << "line 7, e: 0 twice";
        QTest::newRow("an id again")
            << with("a 1 v", "a 0 v") << "line 8, a: ids run from 0, in order";
        QTest::newRow("torn") << small.left(small.indexOf("a 2"))
                              << "line 9, end: the file stops here";
        QTest::newRow("longer") << small + "a 3 v 1 m 1 y 0 f 0 e - i -\n"
                                << "line 10, end: more lines than n says";
    }
    void aFormatThatIsNoneIsRefusedByLineAndField()
    {
        QFETCH(QByteArray, text);
        QFETCH(QString, reason);
        const auto instance = readInstance(text.toStdString());
        QVERIFY(!instance.ok());
        QCOMPARE(QString::fromStdString(instance.error().detail), reason);
    }

    /// Source: GLPK 5.0, at zero gap, on the same problem written down by itself. Where the first
    /// look gets through and where the prices are needed, and where nothing fits.
    void reachesTheOptimumThatGlpkProves_data()
    {
        QTest::addColumn<int>("entries");
        QTest::addColumn<int>("perDay");
        QTest::addColumn<int>("problems");
        QTest::newRow("12, 3 a day") << 12 << 3 << 120;
        QTest::newRow("60, 3 a day") << 60 << 3 << 80;
        QTest::newRow("60, 5 a day") << 60 << 5 << 80;
        QTest::newRow("200, 5 a day") << 200 << 5 << 20;
        QTest::newRow("600, 5 a day: the prices are needed") << 600 << 5 << 4;
    }
    void reachesTheOptimumThatGlpkProves()
    {
        QFETCH(int, entries);
        QFETCH(int, perDay);
        QFETCH(int, problems);
        int infeasible = 0;
        for (int i = 0; i < problems; ++i) {
            Instance instance = randomInstance(entries, perDay, i);
            std::int64_t nodes = 0;
            const ChoiceRules rules = rulesOf(instance, 0);
            const auto choice = bestChoice(instance.problem, rules, nodes);
            oracle::GlpkMenu glpk(instance.problem, rules);
            const auto optimum = glpk.optimum();
            QCOMPARE(choice.has_value(), optimum.has_value());
            infeasible += optimum ? 0 : 1;
            if (choice)
                QCOMPARE(choice->value, *optimum);
        }
        qInfo("%d problems, %d of them infeasible", problems, infeasible);
    }

    /// Source: reference/rotation/optimum.csv, optima that CBC 2.10.8 and GLPK 5.0 agreed on, with
    /// their choice; tests/data/rotation holds copies of the days of up to 300 activities.
    void solvesTheSampleDays_data()
    {
        QTest::addColumn<QString>("file");
        QTest::addColumn<int>("optimum");
        QTest::addColumn<QStringList>("chosen");
        QFile table(folder() + "optimum.csv");
        QVERIFY(table.open(QIODevice::ReadOnly));
        table.readLine();
        while (!table.atEnd()) {
            const QStringList cells = QString::fromUtf8(table.readLine()).trimmed().split(u',');
            if (cells[0].endsWith("-d7.rot")) // several days: tst_plan_search.cpp
                continue;
            QTest::newRow(qPrintable(cells[0]))
                << cells[0] << cells[1].toInt() << cells[6].split(u' ');
        }
    }
    void solvesTheSampleDays()
    {
        QFETCH(QString, file);
        QFETCH(int, optimum);
        QFETCH(QStringList, chosen);
        QFile text(folder() + file);
        QVERIFY(text.open(QIODevice::ReadOnly));
        const auto instance = readInstance(text.readAll().toStdString());
        QVERIFY2(instance.ok(), instance ? "" : instance.error().detail.c_str());
        std::int64_t nodes = 0;
        const auto choice = bestChoice(instance->problem, rulesOf(*instance, 0), nodes);
        QCOMPARE(choice->value, optimum);
        QStringList found;
        for (const std::size_t entry : choice->entries)
            found.append(QString::number(entry));
        QCOMPARE(found, chosen);
    }

    /// Once time is over the best so far is kept, and said to be not proven.
    void whatIsStoppedIsNotProven()
    {
        const Instance instance = randomInstance(200, 5, 7);
        std::int64_t nodes = 0;
        int asked = 0;
        const auto choice = bestChoice(instance.problem, rulesOf(instance, 0), nodes,
                                       [&asked] { return ++asked > 25; });
        QVERIFY(choice.has_value());
        QVERIFY(!choice->proven);
        std::int64_t all = 0;
        const auto best = bestChoice(instance.problem, rulesOf(instance, 0), all);
        QVERIFY(choice->value <= best->value && best->proven);
    }

private:
    static QString folder()
    {
        return qEnvironmentVariable("LIDLARK_SOURCE_DIR") + "/tests/data/rotation/";
    }

    static Instance randomInstance(int entries, int perDay, int seed)
    {
        samples::ProblemShape shape;
        shape.entries = entries;
        shape.families = seed % 2 == 0 ? 6 : 40;
        shape.items = 12;
        shape.skills = 9;
        shape.worthMost = seed % 3 == 0 ? 20 : 120;
        Instance instance;
        instance.problem = samples::randomProblem(shape, 900u + static_cast<unsigned>(seed));
        std::mt19937 source(static_cast<unsigned>(seed));
        for (Entry &entry : instance.problem.entries) {
            entry.minutes = 2 + static_cast<int>(source() % 9);
            entry.isNew = entry.isKnownFriend = entry.isWithoutTable = entry.isHeldBack = false;
            entry.family = source() % 4 == 0 ? noFamily : entry.family;
        }
        instance.perDay = static_cast<std::size_t>(perDay);
        instance.minutes = {perDay * (2 + static_cast<int>(source() % 5))};
        instance.messy = {static_cast<int>(source() % 3)};
        return instance;
    }
};

QTEST_APPLESS_MAIN(TestInstance)
#include "tst_instance.moc"

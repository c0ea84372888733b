#include <QtTest>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>

#include "tests/core/catalogue/shipped_catalogue.h"

namespace {

struct Answer {
    int status = -1;
    QString out;
    QString problem;

    [[nodiscard]] QJsonObject json() const
    {
        return QJsonDocument::fromJson(out.toUtf8()).object();
    }
};

Answer sheet(const QStringList &arguments)
{
    QProcess process;
    process.start(qEnvironmentVariable("LIDLARK_CLI"), QStringList("sheet") + arguments);
    process.waitForFinished(60'000);
    return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()),
            QString::fromUtf8(process.readAllStandardError())};
}

QString goldenFile()
{
    return shipped::source("tests/data/workbench/golden_build.json");
}

QJsonObject golden()
{
    QFile file(goldenFile());
    return file.open(QIODevice::ReadOnly) ? QJsonDocument::fromJson(file.readAll()).object()
                                          : QJsonObject();
}

QJsonObject boxOf(const QJsonObject &sheet, const QString &code)
{
    for (const auto &value : sheet["boxes"].toArray()) {
        if (value.toObject()["code"] == code)
            return value.toObject();
    }
    return {};
}

} // namespace

/// `lidlark-cli sheet`: the golden case of reference/job.md 2.8 from a file, and what is wrong with
/// other files.
class TestSheetCommand : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;

    Answer sheetOf(const QByteArray &text, const QStringList &more = {})
    {
        QFile file(m_folder.filePath("build.json"));
        if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size())
            return {};
        file.close();
        return sheet(QStringList(file.fileName()) + more);
    }
    Answer sheetOf(const QJsonObject &build, const QStringList &more = {})
    {
        return sheetOf(QJsonDocument(build).toJson(), more);
    }

private slots:
    void theGoldenCaseInJson()
    {
        const Answer answer = sheet({goldenFile(), "--json"});
        QCOMPARE(answer.problem, QString());
        QCOMPARE(answer.status, 0);
        const QJsonObject json = answer.json();
        QCOMPARE(json["currency"].toString(), QString("GBP"));
        QCOMPARE(json["spend_today"].toInt(), 22'034);
        const QJsonArray lines = json["lines"].toArray();
        const auto rows = shipped::rowsOf("tests/data/workbench/golden_sheet.csv");
        QCOMPARE(static_cast<std::size_t>(lines.size()), rows.size());
        for (std::size_t i = 0; i < rows.size(); ++i) {
            const QJsonObject line = lines[static_cast<qsizetype>(i)].toObject();
            QCOMPARE(line["item"].toString(), rows[i].at("item"));
            QCOMPARE(line["name"].toString(), rows[i].at("name"));
            for (const char *column : {"need", "spares", "in_stock", "packs", "spend", "leftover"})
                QCOMPARE(line[QLatin1String(column)].toInt(), rows[i].at(column).toInt());
            QCOMPARE(json["shelf_after"].toObject()[rows[i].at("item")].toInt(),
                     rows[i].at("leftover").toInt());
        }
    }

    void whatIsInEachBoxAndHowItDiffers()
    {
        const QJsonObject json = sheet({goldenFile(), "--json"}).json();
        QCOMPARE(json["boxes"].toArray().size(), 25);
        QCOMPARE(boxOf(json, "HAL-S-1")["material"].toInt(), 699);
        QCOMPARE(boxOf(json, "HAL-S-1")["differences"].toArray().size(), 0);
        QCOMPARE(boxOf(json, "HAL-T")["whose"].toString(), QString("the therapist's own"));
        QCOMPARE(boxOf(json, "HAL-LATEX-2")["material"].toInt(), 912);
        QCOMPARE(boxOf(json, "HAL-WHEAT")["material"].toInt(), 809);
        QCOMPARE(boxOf(json, "HAL-MOUTH-3")["material"].toInt(), 627);
        QCOMPARE(boxOf(json, "HAL-WHEAT")["differences"].toArray(),
                 QJsonArray({"Dough pot, wheat-free instead of Dough pot, wheat."}));
    }

    void oneMoreBox()
    {
        const Answer answer = sheet({goldenFile(), "--one-more", "HAL-S-1", "--json"});
        const QJsonObject more = answer.json()["one_more"].toObject();
        QCOMPARE(more["spend_today"].toInt(), 24'584);
        QCOMPARE(more["more"].toInt(), 2'550);
        QCOMPARE(more["material"].toInt(), 699);
        QCOMPARE(more["changed"].toArray().size(), 3);
        QCOMPARE(more["sentence"].toString(),
                 QString("One box more: the till asks for £25.50 more. What lies in the box is "
                         "worth £6.99."));
        QCOMPARE(sheet({goldenFile(), "--one-more", "nobody's"}).status, 1);
    }

    void theTableIsReadable()
    {
        const Answer answer = sheet({goldenFile(), "--one-more", "HAL-T"});
        QCOMPARE(answer.status, 0);
        const QStringList lines = answer.out.split('\n');
        QVERIFY(lines[0].startsWith("Item "));
        for (int i = 1; i <= 23; ++i)
            QCOMPARE(lines[i].size(), lines[0].size());
        QCOMPARE(lines[6].simplified(), QString("Clothes pegs 150 0 10 6 £9.00 4"));
        QVERIFY(answer.out.contains("\nWhat you spend today: £220.34\n"));
        QVERIFY(answer.out.contains("\n  HAL-S-1 and 15 more like it: £6.99\n"));
        QVERIFY(answer.out.contains("Silicone loops (latex-free) instead of Rubber bands."));
        QVERIFY(answer.out.contains("\n  Clothes pegs, packs to buy: 7 instead of 6.\n"));
        QVERIFY(answer.out.endsWith("Then you spend today: £245.84\n"));
    }

    void severalPacksAndShops()
    {
        const Answer answer = sheetOf(QByteArray(R"({"currency":"PLN","spares_percent":0,
            "items":[{"id":"pegs","name":"pegs","offers":[
                {"shop":"Harbour Stores","pieces":10,"pence":100},
                {"shop":"Kilbrae Crafts","pieces":24,"pence":200},
                {"shop":"School Supply","pieces":7,"pence":70}]}],
            "boxes":[{"code":"one","parts":{"pegs":31}}]})"));
        QCOMPARE(answer.problem, QString());
        const QStringList lines = answer.out.split('\n');
        QCOMPARE(lines[1].simplified(), QString("pegs 31 0 0 2 PLN 2.70 0"));
        QCOMPARE(lines[2].simplified(), QString("of 24, Kilbrae Crafts 1 PLN 2.00"));
        QCOMPARE(lines[3].simplified(), QString("of 7, School Supply 1 PLN 0.70"));
    }

    void whatIsWrongIsNamedWithItsField_data()
    {
        QTest::addColumn<QString>("was");
        QTest::addColumn<QString>("is");
        QTest::addColumn<QString>("said");
        QTest::newRow("pack of nothing") << R"("pieces":24)"
                                         << R"("pieces":0)"
                                         << "items.pegs.offers.0.pieces: Pegs: a pack holds";
        QTest::newRow("no size") << R"("pieces":24,)"
                                 << ""
                                 << "items.0.offers.0.pieces: missing";
        QTest::newRow("below zero") << R"("pence":150)"
                                    << R"("pence":-150)"
                                    << "items.pegs.offers.0.pence: Pegs: a pack costs";
        QTest::newRow("far too much") << R"("pence":150)"
                                      << R"("pence":99999999999999999999)"
                                      << "items.0.offers.0.pence: whole pence are wanted";
        QTest::newRow("a fraction") << R"("pence":150)"
                                    << R"("pence":1.5)"
                                    << "items.0.offers.0.pence: whole pence are wanted";
        QTest::newRow("no price") << R"("pence":150)"
                                  << R"("pence":null)"
                                  << "items.pegs.offers.0.pence: Pegs: there is no price yet.";
        QTest::newRow("two currencies") << R"("pence":150)"
                                        << R"("pence":150,"currency":"EUR")"
                                        << "items.pegs.offers.0.currency: ";
        QTest::newRow("too many boxes") << R"("code":"one")"
                                        << R"("code":"one","times":10001)"
                                        << "boxes: A build holds at most 10000 boxes.";
        QTest::newRow("negative pieces") << R"("pegs":6)"
                                         << R"("pegs":-6)"
                                         << "boxes.one.parts.pegs: Box one, pegs: 1 to 1000";
        QTest::newRow("unknown item") << R"("pegs":6)"
                                      << R"("kite":6)"
                                      << "boxes.one.parts.kite: Box one holds kite";
        QTest::newRow("spares") << R"("spares_percent":10)"
                                << R"("spares_percent":101)"
                                << "spares_percent: Spares are 0 to 100 percent.";
        QTest::newRow("a slip") << "spares_percent"
                                << "spares"
                                << "spares: not known";
        QTest::newRow("no design") << R"("parts":{"pegs":6})"
                                   << R"("design":"standard")"
                                   << "boxes.0.design: not among the designs";
        QTest::newRow("no parts") << R"(,"parts":{"pegs":6})"
                                  << ""
                                  << "boxes.0.parts: say either all parts";
        QTest::newRow("no JSON") << R"({"currency")"
                                 << "{"
                                 << "file: not a JSON object";
        QTest::newRow("a number") << R"([{"code":"one","parts":{"pegs":6}}])"
                                  << "[7]"
                                  << "boxes.0: an object is wanted";
    }

    void whatIsWrongIsNamedWithItsField()
    {
        QFETCH(QString, was);
        QFETCH(QString, is);
        QFETCH(QString, said);
        QString text = R"({"currency":"GBP","spares_percent":10,"items":[{"id":"pegs",)"
                       R"("name":"pegs","offers":[{"pieces":24,"pence":150}]}],)"
                       R"("boxes":[{"code":"one","parts":{"pegs":6}}]})";
        QCOMPARE(sheetOf(text.toUtf8()).status, 0);
        QVERIFY(text.contains(was));
        const Answer answer = sheetOf(text.replace(was, is).toUtf8());
        QVERIFY2(answer.problem.contains(said), qPrintable(answer.problem));
        QCOMPARE(answer.status, 1);
        QCOMPARE(answer.out, QString());
    }

    void tenThousandBoxes()
    {
        QJsonObject build = golden();
        build["boxes"] =
            QJsonArray({QJsonObject({{"code", "B"}, {"design", "standard"}, {"times", 10'000}})});
        const Answer answer = sheetOf(build, {"--json"});
        QCOMPARE(answer.problem, QString());
        const QJsonObject json = answer.json();
        QCOMPARE(json["boxes"].toArray().size(), 10'000);
        // By hand: (120,000 pieces need 480 packs of 250 for £7.80.)
        QCOMPARE(json["lines"].toArray()[2].toObject()["spend"].toInt(), 480 * 780);
    }

    void wrongUseExitsTwo()
    {
        QCOMPARE(sheet({}).status, 2);
        QCOMPARE(sheet({goldenFile(), "--two-more", "x"}).status, 2);
        QCOMPARE(sheet({m_folder.filePath("none.json")}).status, 1);
    }
};

QTEST_APPLESS_MAIN(TestSheetCommand)
#include "tst_sheet_command.moc"

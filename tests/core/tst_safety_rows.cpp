#include <QTest>

#include <QRegularExpression>

#include "tests/core/catalogue/shipped_catalogue.h"

using namespace lidlark;
using namespace lidlark::catalogue;

/// Every row of safety.md 1 is encoded, and a test holds it, or is left out for a reason:
/// tests/data/safety_rows.csv says which. Rows that are words for an adult (care of an item) are
/// checked here.
class TestSafetyRows : public QObject
{
    Q_OBJECT

private slots:
    void everyRowIsAccountedFor();
    void careIsWritten_data();
    void careIsWritten();
    void noLegalExemptionCounts();
    void nobodyPlaysAlone();
    void nothingIsSaidToMeetAStandard();

private:
    static QString textOf(const QString &path)
    {
        QFile file(shipped::source(path));
        return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
    }
};

void TestSafetyRows::everyRowIsAccountedFor()
{
    // The ids of safety.md 1, in its order.
    const QStringList ids =
        QStringLiteral("SP-01 SP-02 SP-03 SP-04 SP-05 SP-06 SP-07 BA-01 BA-02 BA-03 BA-04 BA-05 "
                       "PO-01 BL-01 BL-02 BL-03 BL-04 BL-05 CO-01 CO-02 CO-03 CO-04 CO-05 EL-01 "
                       "EL-02 RB-01 RB-02 RB-03 LA-01 LA-02 LA-03 MD-01 MD-02 MD-03 MD-04 SF-01 "
                       "EO-01 HY-01 HY-02 HY-03 HY-04 SC-01 SC-02 PT-01 MG-01 BB-01 EX-01 SU-01 "
                       "HM-01 TB-01 PB-01 PB-02 CN-01 CN-02 FD-01 FD-02 FD-03 FO-01 ST-01 WA-01 "
                       "SV-01 SV-02 SV-03 SV-04 AL-01 RE-01 EM-01 EM-02 EM-03 EM-04 EM-05")
            .split(' ');
    QStringList listed;
    for (const shipped::Row &row : shipped::rowsOf("tests/data/safety_rows.csv")) {
        const QString id = row.at("row");
        listed.append(id);
        const QString last = row.at("function or reason");
        if (row.at("how") == "not applicable") {
            QVERIFY2(last.size() > 30, qPrintable(id));
            continue;
        }
        QCOMPARE(row.at("how"), QString("encoded"));
        const QString test = textOf(row.at("where"));
        QVERIFY2(!test.isEmpty(), qPrintable(id + ": no file " + row.at("where")));
        const QRegularExpression function("void (\\w+::)?" + last + "\\(\\)\\s*\\{");
        QVERIFY2(test.contains(function), qPrintable(id + ": no test " + last));
        QVERIFY2(test.contains(id), qPrintable(id + ": not named in " + row.at("where")));
    }
    QCOMPARE(listed, ids);
}

void TestSafetyRows::careIsWritten_data()
{
    QTest::addColumn<QString>("item");
    QTest::addColumn<QStringList>("words");
    const auto row = [](const char *name, const char *item, const QStringList &words) {
        QTest::newRow(name) << item << words;
    };
    row("PO-01", "pompoms", {"Pull at each one before it is packed"});
    row("BL-02", "balloon",
        {"hand pump", "ties it", "locked away", "every bit picked up", "Under 8 years"});
    row("CO-03", "lace", {"Never round a neck, wrist or ankle", "never tied to furniture"});
    row("EL-01", "bands", {"Never on a finger, wrist, ankle or neck", "never in hair"});
    row("EL-01, the swap", "loops", {"Never on a finger, wrist, ankle or neck", "never in hair"});
    row("RB-01", "rband", {"Before every use", "whole length", "nick", "throw it away"});
    row("RB-02", "rband", {"never more than twice its length"});
    row("RB-03", "rband", {"An adult fits it and holds it", "Never round a neck", "door handle"});
    row("MD-03", "dough", {"poison dogs and cats", "kept up high"});
    row("MD-03, the swap", "ricedough", {"poison dogs and cats"});
    row("SF-01", "foam", {"the can stays with the adult", "Stings eyes", "Sleeves up", "yoghurt"});
    row("HY-04", "straw", {"one child only", "Wash after every use"});
    row("SC-01", "scissors", {"Round ends", "Stored shut"});
    row("TB-01", "ball", {"An adult alone cuts", "60 to 80 mm", "no flap", "Show the squeeze"});
    row("ST-01", "stickers", {"45 mm or wider", "Count them", "look at skin"});
    row("WA-01", "water", {"Poured away", "Nobody is left alone beside water"});
    row("WA-01, the dropper", "dropper", {"never one that held medicine"});
    row("CN-01, the handful", "coins", {"button battery"});
}

void TestSafetyRows::careIsWritten()
{
    QFETCH(QString, item);
    QFETCH(QStringList, words);
    static const Catalogue catalogue = shipped::catalogue();
    const ItemKind *kind = catalogue.item({item.toStdString()});
    QVERIFY(kind);
    QString care;
    for (const std::string &line : kind->care)
        care += QString::fromStdString(line) + " ";
    for (const QString &wanted : words)
        QVERIFY2(care.contains(wanted), qPrintable(wanted + " is not in: " + care));
}

/// SP-05: what the law exempts (crayons, balloons, dough, books) is measured all the same.
void TestSafetyRows::noLegalExemptionCounts()
{
    const Catalogue catalogue = shipped::catalogue();
    QVERIFY(catalogue.item({"crayons"})->hazards.tags.has(Tag::Small));
    for (const ItemKind &kind : catalogue.items()) {
        QVERIFY2(kind.measures.whole || !kind.measures.soft.empty(), kind.id.value.c_str());
        QVERIFY2((kind.hazards.tags.without(kind.tags)).empty(), kind.id.value.c_str());
    }
}

/// SV-03, SV-04: the loosest supervision there is has an adult in the same room.
void TestSafetyRows::nobodyPlaysAlone()
{
    QCOMPARE(supervisionNames.names.size(), std::size_t{3});
    QVERIFY(supervisionNames.parse("near") == Supervision::Near);
    for (const char *word : {"none", "alone", "away", ""})
        QVERIFY(!supervisionNames.parse(word));
}

/// RE-01: "the app must not claim any item 'meets' a toy standard".
void TestSafetyRows::nothingIsSaidToMeetAStandard()
{
    const QRegularExpression claim("certified|complies|compliant|conforms|approved|"
                                   "meets (the|a|all|any|EN|ISO|ASTM|safety)|CE mark",
                                   QRegularExpression::CaseInsensitiveOption);
    for (const char *folder : {"items", "activities"}) {
        for (const SourceFile &file : shipped::filesIn(folder)) {
            const auto match = claim.match(QString::fromStdString(file.text));
            QVERIFY2(!match.hasMatch(),
                     qPrintable(match.captured() + " in " + QString::fromStdString(file.name)));
        }
    }
}

QTEST_APPLESS_MAIN(TestSafetyRows)
#include "tst_safety_rows.moc"

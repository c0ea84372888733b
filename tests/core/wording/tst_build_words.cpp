#include <QTest>

#include "core/wording/build_words.h"
#include "core/wording/money_words.h"
#include "core/wording/pack_words.h"
#include "core/workbench/cheapest_offer.h"
#include "core/workbench/new_item_id.h"

#include <set>

using namespace lidlark;
using namespace lidlark::wording;

namespace {

/// "150" for a price that was read, its sentence for one that was not, else nothing.
QString readAs(const char *typed, const char *currency)
{
    const workbench::ReadPrice read = workbench::readPrice(typed, currency);
    if (read.fault)
        return QString::fromStdString(fill(priceFaultWords(*read.fault, currency)));
    return read.pence ? QString::number(*read.pence) : QString();
}

workbench::ChangedLine pegs(int before, int after)
{
    workbench::ChangedLine line;
    line.before.item = line.after.item = {"pegs"};
    line.before.packs = {before, 1};
    line.after.packs = {after, 1};
    return line;
}

Argument nameOf(const ItemId & /*item*/)
{
    return {"clothes pegs"};
}

} // namespace

/// Money in words, and what one more box costs (reference/job.md 2.8).
class TestBuildWords : public QObject
{
    Q_OBJECT

private slots:
    void money_data()
    {
        QTest::addColumn<qint64>("pence");
        QTest::addColumn<std::string>("currency");
        QTest::addColumn<std::string>("text");
        QTest::newRow("pounds") << qint64(22'034) << std::string("GBP") << std::string("£220.34");
        QTest::newRow("pence") << qint64(5) << std::string("GBP") << std::string("£0.05");
        QTest::newRow("nothing") << qint64(0) << std::string("GBP") << std::string("£0.00");
        QTest::newRow("less") << qint64(-120) << std::string("GBP") << std::string("-£1.20");
        QTest::newRow("other") << qint64(1'200) << std::string("PLN") << std::string("PLN 12.00");
    }

    void money()
    {
        QFETCH(qint64, pence);
        QFETCH(std::string, currency);
        QTEST(moneyText(pence, currency), "text");
    }

    void theTillAndTheBoxAreBothSaid()
    {
        workbench::OneMoreBox more;
        more.more = {2'550};
        more.inTheBox.material = {699};
        QCOMPARE(fill(oneMoreSentence(more, "GBP")),
                 std::string("One box more: the till asks for £25.50 more. What lies in the box "
                             "is worth £6.99."));
        more.more = {0};
        QCOMPARE(fill(oneMoreSentence(more, "GBP")),
                 std::string("One box more: nothing more to pay. What lies in the box is worth "
                             "£6.99."));
        QCOMPARE(fill(moreBoxesSentence(more, 3, true, "GBP")),
                 std::string("3 boxes more: nothing more to pay. What lies in one of them is "
                             "worth £6.99."));
        QCOMPARE(fill(moreBoxesSentence(more, 3, false, "GBP")),
                 std::string("3 boxes more: nothing more to pay."));
    }

    void aLineThatChanges()
    {
        QCOMPARE(fill(changedLineSentence(pegs(5, 6), nameOf)),
                 std::string("Clothes pegs, packs to buy: 7 instead of 6."));
        workbench::ChangedLine first = pegs(0, 0);
        first.before.packs = {0, 0};
        QCOMPARE(fill(changedLineSentence(first, nameOf)),
                 std::string("Clothes pegs, packs to buy: 1."));
        workbench::ChangedLine other = pegs(5, 5);
        other.after.packs = {6, 0};
        QCOMPARE(fill(changedLineSentence(other, nameOf)),
                 std::string("Clothes pegs: other packs, as many."));
    }

    void aTypedPriceIsReadOrRefused_data()
    {
        QTest::addColumn<QByteArray>("typed");
        QTest::addColumn<QByteArray>("currency");
        QTest::addColumn<QString>("read");
        const auto row = [](const char *typed, const char *currency, const char *read) {
            QTest::addRow("%s %s", typed, currency)
                << QByteArray(typed) << QByteArray(currency) << QString::fromUtf8(read);
        };
        row("1.50", "GBP", "150");
        row("1,50", "GBP", "150");
        row(" 12 ", "GBP", "1200");
        row("0.05", "GBP", "5");
        row("007.00", "GBP", "700");
        row("100000.00", "GBP", "10000000");
        row("1.50", "PLN", "150");
        row("", "GBP", "");
        row("  ", "JPY", "");
        for (const char *typed : {"\u00a31.50", "1.50 GBP", "1e3", "+1", ".50", "1.-5", "1.2.3",
                                  "1,234.50", "0x10", "\u0661", "."})
            row(typed, "GBP", "Price: digits and one dot only, such as 1.50.");
        row("-1", "GBP", "Price: nothing below zero.");
        row("-0.50", "GBP", "Price: nothing below zero.");
        for (const char *typed : {"1.5", "1.234", "1,234", "1."})
            row(typed, "GBP", "Price: two digits after the dot, such as 1.50.");
        row("100000.01", "GBP", "Price: at most \u00a3100000.00 for a pack.");
        row("99999999999999999999", "GBP", "Price: at most \u00a3100000.00 for a pack.");
        // Source: ISO 4217, minor unit: JPY 0, BHD 3, CLF 4 (from memory, and in ICU 72).
        for (const char *currency : {"JPY", "BHD", "CLF"}) {
            const QByteArray sentence = QByteArray("Price: Lidlark reckons in hundredths, and ") +
                                        currency + " has none. It cannot keep this price.";
            row("150", currency, sentence.constData());
        }
    }
    void aTypedPriceIsReadOrRefused()
    {
        QFETCH(QByteArray, typed);
        QFETCH(QByteArray, currency);
        QTEST(readAs(typed.constData(), currency.constData()), "read");
    }

    void whatIsShownIsReadAsTheSame()
    {
        for (const std::int64_t pence : {0, 5, 50, 100, 12'345, 10'000'000}) {
            const workbench::ReadPrice read =
                workbench::readPrice(workbench::priceText(pence), "GBP");
            QVERIFY(read.pence == pence);
        }
    }

    void theCheapestPieceIsFoundExactly()
    {
        using workbench::PackOffer;
        const auto cheapest = [](const std::vector<PackOffer> &offers) {
            const auto found = workbench::cheapestOffer(offers, "GBP");
            return found ? static_cast<int>(*found) : -1;
        };
        QCOMPARE(cheapest({}), -1);
        QCOMPARE(cheapest({{"Harbour Stores", 24, std::nullopt, ""}}), -1);
        // 2.50 p a piece, 2.49 p, and again 2.49 p: of equals the one that is liked more.
        QCOMPARE(cheapest({{"", 60, 150, ""}, {"", 100, 249, "GBP"}, {"", 200, 498, ""}}), 1);
        // A third of a penny is no rounding: 1/3 is less than 3334/10000.
        QCOMPARE(cheapest({{"", 10'000, 3'334, ""}, {"", 3, 1, ""}}), 1);
        QCOMPARE(cheapest({{"", 10, 1, "EUR"}, {"", 10, 900, ""}}), 1);
        QCOMPARE(cheapest({{"", 1, 9, "EUR"}, {"", 1, 1, "PLN"}, {"", 1, 8, "EUR"}}), 2);
    }

    void aReasonThatSeveralThingsShareIsToldOnce()
    {
        using workbench::CallKind;
        using workbench::Why;
        const auto named = [](const ItemId &item) { return wording::Argument(item.value); };
        const auto because = [](Why why) { return workbench::Departure{{}, why, {}}; };
        const std::vector<workbench::CallOut> calls{
            {CallKind::LeftHand, {}, {}, 0, 0, {}, {}},
            {CallKind::LeftOut, {"lace"}, {}, 0, 0, {}, because(Why::Mouthing)},
            {CallKind::LeftOut, {"eyes"}, {}, 0, 0, {}, because(Why::Home)},
            {CallKind::LeftOut, {"bands"}, {}, 0, 0, {}, because(Why::Mouthing)}};
        QStringList told;
        for (const wording::CalledLine &line : wording::callOutLines(calls, named))
            told.append(QString::fromStdString(wording::fill(line.words)));
        QCOMPARE(told, QStringList({"Left-handed scissors only.",
                                    "Because somebody puts things in the mouth.",
                                    "No lace in this box.", "No bands in this box.",
                                    "No eyes in this box. Why: For this home."}));
    }

    void aNewThingGetsAnIdOfItsName()
    {
        std::set<ItemId> there{{"box-with-lid"}, {"thing"}};
        const auto idOf = [&there](const char *name) {
            return QString::fromStdString(workbench::newItemId(name, [&there](const ItemId &id) {
                                              return there.contains(id);
                                          }).value);
        };
        QCOMPARE(idOf(" Felt tip, blue (5)"), QString("felt-tip-blue-5"));
        QCOMPARE(idOf("Box with lid"), QString("box-with-lid-2"));
        there.insert({"box-with-lid-2"});
        QCOMPARE(idOf("BOX with LID!"), QString("box-with-lid-3"));
        QCOMPARE(idOf("\u0688\u0628\u06c1"), QString("thing-2"));
        QCOMPARE(idOf(std::string(80, 'a').c_str()), QString(34, u'a'));
    }
};

QTEST_APPLESS_MAIN(TestBuildWords)
#include "tst_build_words.moc"

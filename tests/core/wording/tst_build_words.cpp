#include <QTest>

#include "core/wording/build_words.h"
#include "core/wording/money_words.h"

using namespace lidlark;
using namespace lidlark::wording;

namespace {

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
    }

    void aLineThatChanges()
    {
        QCOMPARE(fill(changedLineSentence(pegs(5, 6), nameOf)),
                 std::string("Clothes pegs, packs to buy: 7 instead of 6."));
        workbench::ChangedLine other = pegs(5, 5);
        other.after.packs = {6, 0};
        QCOMPARE(fill(changedLineSentence(other, nameOf)),
                 std::string("Clothes pegs: other packs, as many."));
    }
};

QTEST_APPLESS_MAIN(TestBuildWords)
#include "tst_build_words.moc"

#include <QTest>

#include "core/forecast/item_forecast.h"

using namespace lidlark;
using namespace lidlark::forecast;

namespace {

const Day first = *dayFrom({2027, 1, 11});

/// Six stick-on eyes, three of them expected to go in 60 days; ten days later nothing has gone.
ItemHistory eyes()
{
    ItemHistory history;
    history.prior = {3, 60};
    history.since = first;
    history.today = first + 9;
    history.low = 6;
    history.high = 6;
    return history;
}

ItemForecast forecastOf(const ItemHistory &history)
{
    const auto forecast = forecastItem(history);
    return forecast ? *forecast : ItemForecast{};
}

} // namespace

/// One item of one box: what counts as seen, and how the parts come together. The parts have tests
/// of their own. Invented histories.
class TestItemForecast : public QObject
{
    Q_OBJECT

private slots:
    void nothingGoneIsSeenToo();
    void piecesAndDaysAreAdded();
    void whatCannotHaveBeenSeenIsIgnored_data();
    void whatCannotHaveBeenSeenIsIgnored();
    void daysOutOfStockTeachNothing_data();
    void daysOutOfStockTeachNothing();
    void aUseOnADayOutOfStockCountsItsDay();
    void fewPiecesAreMainlyOurGuess();
    void theRoundIsAskedByTheLowerCount();
    void doubtWidensTheRange();
    void anEmptyItemIsEmptyNow();
    void whatDoesNotFitIsNamed_data();
    void whatDoesNotFitIsNamed();
};

void TestItemForecast::nothingGoneIsSeenToo()
{
    const ItemForecast forecast = forecastOf(eyes());
    QVERIFY(forecast.rate == (GammaRate{3, 70}));
    QCOMPARE(forecast.piecesSeen, 0);
    QCOMPARE(forecast.daysWatched, 10); // the first day and today both count
    QVERIFY(!forecast.emptyBeforeRound);
    QVERIFY(forecast.lasting == *lastingRange({3, 70}, 6, 6));
}

void TestItemForecast::piecesAndDaysAreAdded()
{
    ItemHistory history = eyes();
    history.uses = {{first + 9, 2}, {first, 1}, {first + 4, 1}, {first + 4, 1}};
    const ItemForecast forecast = forecastOf(history);
    QVERIFY(forecast.rate == (GammaRate{8, 70}));
    QCOMPARE(forecast.piecesSeen, 5);
    QVERIFY(!forecast.mainlyPrior);
}

void TestItemForecast::whatCannotHaveBeenSeenIsIgnored_data()
{
    QTest::addColumn<int>("day");
    QTest::addColumn<int>("pieces");
    QTest::newRow("tomorrow") << 10 << 2;
    QTest::newRow("before it was in the box") << -1 << 2;
    QTest::newRow("no pieces") << 4 << 0;
    QTest::newRow("fewer than no pieces") << 4 << -2;
}

void TestItemForecast::whatCannotHaveBeenSeenIsIgnored()
{
    QFETCH(int, day);
    QFETCH(int, pieces);
    ItemHistory history = eyes();
    history.uses = {{first + day, pieces}};
    const ItemForecast forecast = forecastOf(history);
    QVERIFY(forecast.rate == (GammaRate{3, 70}));
    QCOMPARE(forecast.piecesSeen, 0);
    QCOMPARE(forecast.daysWatched, 10);
}

void TestItemForecast::daysOutOfStockTeachNothing_data()
{
    QTest::addColumn<QList<int>>("spans"); // first and last day of each
    QTest::addColumn<int>("watched");
    QTest::newRow("one day") << QList<int>{3, 3} << 9;
    QTest::newRow("four days") << QList<int>{3, 6} << 6;
    QTest::newRow("apart") << QList<int>{1, 2, 5, 6} << 6;
    QTest::newRow("overlapping") << QList<int>{1, 4, 3, 6} << 4;
    QTest::newRow("one inside another") << QList<int>{1, 6, 3, 4} << 4;
    QTest::newRow("from before it came") << QList<int>{-20, 1} << 8;
    QTest::newRow("until after today") << QList<int>{8, 40} << 8;
    QTest::newRow("all along") << QList<int>{-3, 12} << 0;
    QTest::newRow("only later") << QList<int>{10, 12} << 10;
    QTest::newRow("the wrong way round") << QList<int>{6, 3} << 10;
}

void TestItemForecast::daysOutOfStockTeachNothing()
{
    QFETCH(QList<int>, spans);
    QFETCH(int, watched);
    ItemHistory history = eyes();
    for (int i = 0; i + 1 < spans.size(); i += 2)
        history.outOfStock.push_back({first + spans[i], first + spans[i + 1]});
    const ItemForecast forecast = forecastOf(history);
    QCOMPARE(forecast.daysWatched, watched);
    QVERIFY(forecast.rate == (GammaRate{3, 60.0 + watched}));
}

void TestItemForecast::aUseOnADayOutOfStockCountsItsDay()
{
    ItemHistory history = eyes();
    history.outOfStock = {{first + 3, first + 6}};
    history.uses = {{first + 3, 1}, {first + 3, 1}};
    const ItemForecast forecast = forecastOf(history);
    QCOMPARE(forecast.piecesSeen, 2);
    QCOMPARE(forecast.daysWatched, 7);
}

void TestItemForecast::fewPiecesAreMainlyOurGuess()
{
    ItemHistory history = eyes();
    history.uses = {{first, 2}};
    QVERIFY(forecastOf(history).mainlyPrior);
    history.uses = {{first, 3}};
    QVERIFY(!forecastOf(history).mainlyPrior);
}

void TestItemForecast::theRoundIsAskedByTheLowerCount()
{
    ItemHistory history = eyes();
    history.low = 4;
    history.daysToRound = 30;
    const ItemForecast forecast = forecastOf(history);
    QVERIFY(forecast.emptyBeforeRound);
    QCOMPARE(*forecast.emptyBeforeRound, *probabilityEmptyWithin({3, 70}, 4, 30));
    QVERIFY(*forecast.emptyBeforeRound > *probabilityEmptyWithin({3, 70}, 6, 30));
}

void TestItemForecast::doubtWidensTheRange()
{
    ItemHistory history = eyes();
    history.low = 4;
    history.high = 5;
    const LastingRange range = forecastOf(history).lasting;
    QVERIFY(range ==
            (LastingRange{*daysUntilEmpty({3, 70}, 4, 0.1), *daysUntilEmpty({3, 70}, 5, 0.9)}));
}

void TestItemForecast::anEmptyItemIsEmptyNow()
{
    ItemHistory history = eyes();
    history.low = 0;
    history.high = 0;
    history.daysToRound = 14;
    const ItemForecast forecast = forecastOf(history);
    QVERIFY(forecast.lasting == (LastingRange{0, 0}));
    QCOMPARE(*forecast.emptyBeforeRound, 1.0);
}

void TestItemForecast::whatDoesNotFitIsNamed_data()
{
    QTest::addColumn<QString>("field");
    QTest::newRow("no prior") << "shape";
    QTest::newRow("a prior of no days") << "rate";
    QTest::newRow("fewer than none left") << "low";
    QTest::newRow("high below low") << "high";
    QTest::newRow("in the box from tomorrow") << "since";
    QTest::newRow("in the box for ages") << "since";
    QTest::newRow("a round that was") << "daysToRound";
    QTest::newRow("more pieces than any box") << "shape";
}

void TestItemForecast::whatDoesNotFitIsNamed()
{
    QFETCH(QString, field);
    const QString story = QTest::currentDataTag();
    ItemHistory history = eyes();
    if (story == "no prior")
        history.prior.shape = 0;
    else if (story == "a prior of no days")
        history.prior.rateDays = 0;
    else if (story == "fewer than none left")
        history.low = -1;
    else if (story == "high below low")
        history.high = 5;
    else if (story == "in the box from tomorrow")
        history.since = history.today + 1;
    else if (story == "in the box for ages")
        history.since = history.today - 36'500;
    else if (story == "a round that was")
        history.daysToRound = -1;
    else
        history.uses = {{first, 2'000'000'000}, {first, 2'000'000'000}};
    const auto forecast = forecastItem(history);
    QVERIFY(!forecast);
    QCOMPARE(forecast.error().code, ErrorCode::Invalid);
    QVERIFY(QString::fromStdString(forecast.error().detail).startsWith(field + ": "));
}

QTEST_APPLESS_MAIN(TestItemForecast)
#include "tst_item_forecast.moc"

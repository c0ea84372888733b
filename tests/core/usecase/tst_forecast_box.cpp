#include <QtTest>

#include "core/forecast/piece_forecast.h"
#include "core/store/recording.h"
#include "core/usecase/forecast_box.h"
#include "core/usecase/restock.h"
#include "core/usecase/stock_history.h"
#include "core/usecase/tend_item.h"
#include "core/wording/outlook_words.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

namespace {

Day on(int dayOfJanuary)
{
    return *dayFrom({2027, 1, 1}) + (dayOfJanuary - 1);
}

store::ItemRow rowWith(std::vector<box::Arrival> arrivals, std::vector<box::DatedUse> uses,
                       int left)
{
    store::ItemRow row;
    row.item = {"eyes"};
    row.low = left;
    row.high = left;
    row.arrivals = std::move(arrivals);
    row.uses = std::move(uses);
    return row;
}

using enum box::ExceptionKind;

} // namespace

/// Guards what the forecast of a box is given. The mathematics itself: tests/core/forecast.
class TestForecastBox : public QObject
{
    Q_OBJECT

private slots:
    /// Prior and posterior by the conjugate rule (Gelman and others, Bayesian Data Analysis, 3rd
    /// ed., section 2.6): the pieces add to the shape, the days watched to the rate.
    void theBeliefIsTheItemsPriorAndWhatWasSeen()
    {
        const catalogue::ItemKind &eyes = *realCatalogue().item({"eyes"});
        const auto outlook = usecase::forecastOne(
            rowWith({{std::nullopt, on(4), 6}}, {{on(8), UsedUp, 1}, {on(15), Lost, 2}}, 3), &eyes,
            on(24));
        QVERIFY(outlook && *outlook);
        const forecast::ItemForecast &forecast = (*outlook)->forecast;
        QCOMPARE(forecast.piecesSeen, 3);
        QCOMPARE(forecast.daysWatched, 21);
        QVERIFY(!forecast.mainlyPrior);
        QCOMPARE(forecast.rate.shape, eyes.use->pieces + 3.0);
        QCOMPARE(forecast.rate.rateDays, eyes.use->days + 21.0);
        QVERIFY(*forecast.lasting.earliest <= *forecast.lasting.latest);
        // Running out by a day is using three or more by then: the one identity behind both.
        const auto atMostTwo =
            forecast::probabilityOfAtMost(forecast.rate, usecase::daysBetweenRounds, 2);
        QVERIFY(std::abs(*forecast.emptyBeforeRound - (1 - *atMostTwo)) < 1e-12);
        QVERIFY(!(*outlook)->keeping); // eyes do not go off
    }

    /// On days without any, none could go: they teach nothing.
    void daysWithoutAnyAreNotWatched()
    {
        const store::ItemRow row =
            rowWith({{std::nullopt, on(4), 2}, {0, on(20), 2}}, {{on(9), UsedUp, 2}}, 2);
        const auto spans = usecase::daysWithout(row, on(24));
        QCOMPARE(spans.size(), std::size_t{1});
        QVERIFY(spans.front().from == on(10));
        QVERIFY(spans.front().to == on(19));
        const auto outlook = usecase::forecastOne(row, realCatalogue().item({"eyes"}), on(24));
        QCOMPARE((*outlook)->forecast.daysWatched, 21 - 10);
        const store::ItemRow empty = rowWith({{std::nullopt, on(4), 2}}, {{on(9), UsedUp, 2}}, 0);
        QVERIFY(usecase::daysWithout(empty, on(24)).front().to == on(24));
    }

    /// A pot that is still good counts its days and no end (right-censoring).
    void livesEndOrGoOn()
    {
        store::ItemRow row =
            rowWith({{std::nullopt, on(4), 1}, {0, on(20), 1}}, {{on(14), DriedOut, 1}}, 1);
        row.care.pieces = {{box::pieceId(std::nullopt, 0), on(4), 0},
                           {box::pieceId(0, 0), on(21), 0}};
        const auto lives = usecase::livesOf(row, on(24));
        QCOMPARE(lives.size(), std::size_t{2});
        QCOMPARE(lives[0].days, 10.0);
        QVERIFY(lives[0].ended);
        QCOMPARE(lives[1].days, 3.0);
        QVERIFY(!lives[1].ended);
        const auto outlook = usecase::forecastOne(row, realCatalogue().item({"dough"}), on(24));
        QVERIFY((*outlook)->keeping.has_value());
        QCOMPARE((*outlook)->keeping->piecesSeen, 2);
        QCOMPARE((*outlook)->keeping->ended, 1);
    }

    /// The whole way: what a family notes, and how the screen says it.
    void aFamilysWeeksBecomeAForecast()
    {
        auto morven = therapistWith({"Fin"});
        Phone ruth("Ruth", store::Role::Parent, "h-fin");
        QVERIFY(ruth.meet(*morven) > 0);
        usecase::Workplace workplace = ruth.workplace();
        for (const int january : {11, 18, 25}) {
            ruth.clock.moveTo(islandTime(january, 18, 0));
            QVERIFY(usecase::noteGone(workplace, {"Fin", {}, {"eyes"}}, UsedUp, 1).ok());
        }
        const auto family = usecase::loadFamily(workplace, "Fin");
        const auto outlooks = usecase::forecastBox(*family, realCatalogue(), on(25));
        QVERIFY(outlooks.ok());
        QCOMPARE(outlooks->size(), family->items.size()); // every item of a box has a prior
        const auto eyes = std::find_if(outlooks->begin(), outlooks->end(),
                                       [](const auto &one) { return one.item.value == "eyes"; });
        QCOMPARE(eyes->forecast.piecesSeen, 3);
        QCOMPARE(wording::fill(wording::restsOnWords(eyes->forecast)),
                 std::string("So far 3 pieces went in 3 weeks."));
        const std::string lasts = wording::fill(*wording::lastingWords(eyes->forecast));
        QVERIFY2(lasts.starts_with("Probably lasts "), lasts.c_str());
        QVERIFY(!usecase::forecastBox(*family, realCatalogue(), on(25), -1).ok());
    }

    void thePastOfAnItemThatCameTomorrowIsNothing()
    {
        const auto outlook = usecase::forecastOne(rowWith({{std::nullopt, on(4), 6}}, {}, 6),
                                                  realCatalogue().item({"eyes"}), on(1));
        QVERIFY(outlook.ok() && !*outlook);
        QVERIFY(!*usecase::forecastOne(rowWith({}, {}, 0), nullptr, on(1)));
    }

    void theWordsSayHowLongAndHowSure_data()
    {
        QTest::addColumn<int>("earliest"); // days; -1: longer
        QTest::addColumn<int>("latest");
        QTest::addColumn<QByteArray>("words");
        const auto row = [](int earliest, int latest, const char *words) {
            QTest::newRow(words) << earliest << latest << QByteArray(words);
        };
        row(22, 41, "Probably lasts 3 to 6 weeks.");
        row(2, 6, "Probably lasts less than a week.");
        row(3, 20, "Probably lasts up to 3 weeks.");
        row(35, 35, "Probably lasts about 5 weeks.");
        row(7, 7, "Probably lasts about a week.");
        row(8, -1, "Probably lasts a week or longer.");
        row(70, -1, "Probably lasts 10 weeks or longer.");
        row(400, -1, "Probably lasts longer than a year.");
        row(-1, -1, "Probably lasts longer than a year.");
    }
    void theWordsSayHowLongAndHowSure()
    {
        QFETCH(int, earliest);
        QFETCH(int, latest);
        QFETCH(QByteArray, words);
        forecast::ItemForecast forecast;
        forecast.lasting = {earliest < 0 ? std::nullopt : std::optional(earliest),
                            latest < 0 ? std::nullopt : std::optional(latest)};
        QCOMPARE(wording::fill(*wording::lastingWords(forecast)), words.toStdString());
    }

    void noneLeftLastsNotAtAllAndSaysNothing()
    {
        forecast::ItemForecast forecast;
        forecast.lasting = {0, 0};
        QVERIFY(!wording::lastingWords(forecast));
    }

    void theRoundIsMentionedOnlyWhereItMatters()
    {
        forecast::ItemForecast forecast;
        forecast.emptyBeforeRound = 0.1;
        QVERIFY(!wording::roundWords(forecast));
        forecast.emptyBeforeRound = 0.3;
        QCOMPARE(wording::fill(*wording::roundWords(forecast)),
                 std::string("It may run out before the next round."));
        forecast.emptyBeforeRound = 0.8;
        QCOMPARE(wording::fill(*wording::roundWords(forecast)),
                 std::string("It probably runs out before the next round."));
    }
};

QTEST_APPLESS_MAIN(TestForecastBox)
#include "tst_forecast_box.moc"

#include "core/cli/commands.h"

#include "core/cli/box_json.h"
#include "core/store/recording.h"
#include "core/usecase/forecast_box.h"
#include "core/wording/outlook_words.h"

#include <iostream>

namespace lidlark::cli {

namespace {

using Json = nlohmann::ordered_json;

constexpr double daysOfWeek = 7;

Json weeks(const std::optional<int> &days)
{
    return days ? Json(*days / daysOfWeek) : Json();
}

Json orNull(const std::optional<int> &value)
{
    return value ? Json(*value) : Json();
}

std::string sentenceOf(const usecase::ItemOutlook &outlook)
{
    std::string text;
    if (const auto lasting = wording::lastingWords(outlook.forecast))
        text += wording::fill(*lasting) + " ";
    if (const auto round = wording::roundWords(outlook.forecast))
        text += wording::fill(*round) + " ";
    return text + wording::fill(wording::restsOnWords(outlook.forecast));
}

Json outlookJson(const usecase::ItemOutlook &outlook)
{
    const forecast::ItemForecast &forecast = outlook.forecast;
    const std::optional<double> empty = forecast.emptyBeforeRound;
    Json json{{"id", outlook.item.value},
              {"shape", forecast.rate.shape},
              {"rate", forecast.rate.rateDays},
              {"earliest_days", orNull(forecast.lasting.earliest)},
              {"latest_days", orNull(forecast.lasting.latest)},
              {"earliest_weeks", weeks(forecast.lasting.earliest)},
              {"latest_weeks", weeks(forecast.lasting.latest)},
              {"chance_empty_before_round", empty ? Json(*empty) : Json()},
              {"pieces_seen", forecast.piecesSeen},
              {"days_watched", forecast.daysWatched},
              {"mainly_prior", forecast.mainlyPrior},
              {"sentence", sentenceOf(outlook)}};
    if (outlook.keeping)
        json["keeps"] = {{"earliest_days", orNull(outlook.keeping->earliestDays)},
                         {"latest_days", orNull(outlook.keeping->latestDays)},
                         {"pieces_seen", outlook.keeping->piecesSeen},
                         {"ended", outlook.keeping->ended}};
    return json;
}

} // namespace

int runForecastBox(const Options &options, const ForecastBoxOptions &asked)
{
    const auto desk = Desk::open(options, asked.child);
    if (!desk)
        return fail(desk.error());
    const auto alias = childOrOnly((*desk)->database(), asked.child);
    if (!alias)
        return fail(alias.error());
    const auto family = usecase::loadFamily((*desk)->workplace(), *alias);
    const auto today = store::todayOf((*desk)->workplace().clock);
    if (!family || !today)
        return fail(family ? today.error() : family.error());
    const auto outlooks =
        usecase::forecastBox(*family, (*desk)->catalogue(), today->day, asked.daysToRound);
    if (!outlooks)
        return fail(outlooks.error());
    Json items = Json::array();
    for (const usecase::ItemOutlook &outlook : *outlooks) {
        items.push_back(outlookJson(outlook));
        if (!options.json)
            std::cout << outlook.item.value << ": " << sentenceOf(outlook) << '\n';
    }
    if (options.json)
        std::cout << Json{{"child", *alias}, {"days_to_round", asked.daysToRound}, {"items", items}}
                         .dump()
                  << '\n';
    return allWell;
}

} // namespace lidlark::cli

#include "core/wording/outlook_words.h"

#include <algorithm>
#include <string>

namespace lidlark::wording {

namespace {

constexpr int daysOfWeek = 7;
constexpr int longestWeeks = 52;
constexpr double likely = 0.5;
constexpr double possible = 0.2; // one time in five is worth a word [P]

std::string number(int value)
{
    return std::to_string(value);
}

/// One way to say how long: whole sentences, so that each can be translated as one.
struct Phrasing {
    const char *overAYear;
    const char *underAWeek;
    const char *upTo;
    const char *aWeekOrLonger;
    const char *orLonger;
    const char *aboutAWeek;
    const char *about;
    const char *range;
};

constexpr Phrasing lasts{"Probably lasts longer than a year.", "Probably lasts less than a week.",
                         "Probably lasts up to %1 weeks.",     "Probably lasts a week or longer.",
                         "Probably lasts %1 weeks or longer.", "Probably lasts about a week.",
                         "Probably lasts about %1 weeks.",     "Probably lasts %1 to %2 weeks."};
constexpr Phrasing staysGood{"Opened, it probably stays good longer than a year.",
                             "Opened, it probably stays good less than a week.",
                             "Opened, it probably stays good up to %1 weeks.",
                             "Opened, it probably stays good a week or longer.",
                             "Opened, it probably stays good %1 weeks or longer.",
                             "Opened, it probably stays good about a week.",
                             "Opened, it probably stays good about %1 weeks.",
                             "Opened, it probably stays good %1 to %2 weeks."};

/// The stretch from @p earliest to @p latest days.
Sentence stretch(const Phrasing &say, std::optional<int> earliest, std::optional<int> latest)
{
    const int from = earliest ? *earliest / daysOfWeek : longestWeeks;
    const int to = latest ? (*latest + daysOfWeek - 1) / daysOfWeek : longestWeeks + 1;
    if (from >= longestWeeks)
        return {say.overAYear, {}};
    if (to <= 1)
        return {from == 1 ? say.aboutAWeek : say.underAWeek, {}};
    if (to > longestWeeks && from <= 1)
        return {say.aWeekOrLonger, {}};
    if (to > longestWeeks)
        return {say.orLonger, {number(from)}};
    if (from == 0)
        return {say.upTo, {number(to)}};
    if (from == to)
        return {say.about, {number(from)}};
    return {say.range, {number(from), number(to)}};
}

std::string piecesText(int pieces)
{
    return pieces == 1 ? "1 piece" : number(pieces) + " pieces";
}

std::string watchedText(int days)
{
    if (days < 2 * daysOfWeek)
        return days == 1 ? "1 day" : number(days) + " days";
    return number(days / daysOfWeek) + " weeks";
}

} // namespace

std::optional<Sentence> lastingWords(const forecast::ItemForecast &forecast)
{
    if (forecast.lasting.latest && *forecast.lasting.latest == 0)
        return std::nullopt;
    return stretch(lasts, forecast.lasting.earliest, forecast.lasting.latest);
}

Sentence restsOnWords(const forecast::ItemForecast &forecast)
{
    const std::string watched = watchedText(forecast.daysWatched);
    if (forecast.piecesSeen == 0)
        return {"None has gone in %1 so far. The rest is our guess.", {watched}};
    if (forecast.mainlyPrior)
        return {"Mostly our guess: %1 went in %2.", {piecesText(forecast.piecesSeen), watched}};
    return {"So far %1 went in %2.", {piecesText(forecast.piecesSeen), watched}};
}

std::optional<Sentence> roundWords(const forecast::ItemForecast &forecast)
{
    if (!forecast.emptyBeforeRound || *forecast.emptyBeforeRound < possible)
        return std::nullopt;
    if (*forecast.emptyBeforeRound >= likely)
        return Sentence{"It probably runs out before the next round.", {}};
    return Sentence{"It may run out before the next round.", {}};
}

Sentence keepingWords(std::optional<int> earliest, std::optional<int> latest)
{
    return stretch(staysGood, earliest, latest);
}

} // namespace lidlark::wording

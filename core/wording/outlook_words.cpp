#include "core/wording/outlook_words.h"

#include <algorithm>
#include <string>

namespace lidlark::wording {

namespace {

constexpr int daysOfWeek = 7;
constexpr int longestWeeks = 52;
constexpr double likely = 0.5;
constexpr double possible = 0.2; // one time in five is worth a word [P]

/// One way to say how long: whole sentences, so that each can be translated as one.
struct Phrasing {
    English overAYear;
    English underAWeek;
    English upTo;
    English aWeekOrLonger;
    English orLonger;
    English aboutAWeek;
    English about;
    English range;
};

constexpr Phrasing lasts{
    say("Probably lasts longer than a year."),        say("Probably lasts less than a week."),
    sayCounted("Probably lasts up to %1 weeks."),     say("Probably lasts a week or longer."),
    sayCounted("Probably lasts %1 weeks or longer."), say("Probably lasts about a week."),
    sayCounted("Probably lasts about %1 weeks."),     say("Probably lasts %1 to %2 weeks.")};
constexpr Phrasing staysGood{say("Opened, it probably stays good longer than a year."),
                             say("Opened, it probably stays good less than a week."),
                             sayCounted("Opened, it probably stays good up to %1 weeks."),
                             say("Opened, it probably stays good a week or longer."),
                             sayCounted("Opened, it probably stays good %1 weeks or longer."),
                             say("Opened, it probably stays good about a week."),
                             sayCounted("Opened, it probably stays good about %1 weeks."),
                             say("Opened, it probably stays good %1 to %2 weeks.")};

/// The stretch from @p earliest to @p latest days.
Sentence stretch(const Phrasing &phrase, std::optional<int> earliest, std::optional<int> latest)
{
    const int from = earliest ? *earliest / daysOfWeek : longestWeeks;
    const int to = latest ? (*latest + daysOfWeek - 1) / daysOfWeek : longestWeeks + 1;
    if (from >= longestWeeks)
        return {phrase.overAYear, {}};
    if (to <= 1)
        return {from == 1 ? phrase.aboutAWeek : phrase.underAWeek, {}};
    if (to > longestWeeks && from <= 1)
        return {phrase.aWeekOrLonger, {}};
    if (to > longestWeeks)
        return {phrase.orLonger, {inDigits(from)}};
    if (from == 0)
        return {phrase.upTo, {inDigits(to)}};
    if (from == to)
        return {phrase.about, {inDigits(from)}};
    return {phrase.range, {inDigits(from), inDigits(to)}};
}

Sentence piecesText(int pieces)
{
    if (pieces == 1)
        return {say("1 piece"), {}};
    return {sayCounted("%1 pieces"), {inDigits(pieces)}};
}

Sentence watchedText(int days)
{
    if (days == 1)
        return {say("1 day"), {}};
    if (days < 2 * daysOfWeek)
        return {sayCounted("%1 days"), {inDigits(days)}};
    return {sayCounted("%1 weeks"), {inDigits(days / daysOfWeek)}};
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
    const Sentence watched = watchedText(forecast.daysWatched);
    if (forecast.piecesSeen == 0)
        return {say("None has gone in %1 so far. The rest is our guess."), {watched}};
    if (forecast.mainlyPrior)
        return {say("Mostly our guess: %1 went in %2."),
                {piecesText(forecast.piecesSeen), watched}};
    return {say("So far %1 went in %2."), {piecesText(forecast.piecesSeen), watched}};
}

std::optional<Sentence> roundWords(const forecast::ItemForecast &forecast)
{
    if (!forecast.emptyBeforeRound || *forecast.emptyBeforeRound < possible)
        return std::nullopt;
    if (*forecast.emptyBeforeRound >= likely)
        return Sentence{say("It probably runs out before the next round."), {}};
    return Sentence{say("It may run out before the next round."), {}};
}

Sentence keepingWords(std::optional<int> earliest, std::optional<int> latest)
{
    return stretch(staysGood, earliest, latest);
}

} // namespace lidlark::wording

#include "core/forecast/item_forecast.h"

#include <algorithm>
#include <cstdint>
#include <set>

namespace lidlark::forecast {

namespace {

/// What was seen, as a posterior wants it.
struct Seen {
    std::int64_t pieces = 0; ///< Sums of what anybody typed.
    int days = 0;
};

Seen seenIn(const ItemHistory &history)
{
    Seen seen;
    std::set<Day> out;
    for (const DaySpan &span : history.outOfStock) {
        const Day last = std::min(span.to, history.today);
        for (Day day = std::max(span.from, history.since); day <= last; day = day + 1)
            out.insert(day);
    }
    for (const UseDay &use : history.uses) {
        if (use.pieces <= 0 || use.day < history.since || use.day > history.today)
            continue;
        seen.pieces += use.pieces;
        out.erase(use.day);
    }
    seen.days = history.today - history.since + 1 - static_cast<int>(out.size());
    return seen;
}

Outcome checkHistory(const ItemHistory &history)
{
    if (history.since > history.today || history.today - history.since >= mostDays)
        return Error{ErrorCode::Invalid, "since: must be today or in the hundred years before"};
    if (history.daysToRound && (*history.daysToRound < 0 || *history.daysToRound > mostDays))
        return Error{ErrorCode::Invalid, "daysToRound: must be 0 to 36,500"};
    return Done{};
}

} // namespace

Result<ItemForecast> forecastItem(const ItemHistory &history)
{
    if (Outcome known = checkHistory(history); !known)
        return known.error();
    const Seen seen = seenIn(history);
    const Result<GammaRate> rate = posterior(history.prior, seen.pieces, seen.days);
    if (!rate)
        return rate.error();
    const Result<LastingRange> lasting = lastingRange(*rate, history.low, history.high);
    if (!lasting)
        return lasting.error();
    ItemForecast forecast;
    forecast.rate = *rate;
    forecast.lasting = *lasting;
    forecast.piecesSeen = static_cast<int>(seen.pieces); // at most mostShape
    forecast.daysWatched = seen.days;
    forecast.mainlyPrior = seen.pieces < fewPieces;
    if (history.daysToRound) {
        const auto empty = probabilityEmptyWithin(*rate, history.low, *history.daysToRound);
        if (!empty)
            return empty.error();
        forecast.emptyBeforeRound = *empty;
    }
    return forecast;
}

} // namespace lidlark::forecast

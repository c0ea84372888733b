#pragma once

#include "core/forecast/item_forecast.h"
#include "core/wording/sentence.h"

#include <optional>

namespace lidlark::wording {

/// "Probably lasts 3 to 6 weeks." Four times in five it does (design.md 6). Nothing is said of an
/// item of which none is left.
std::optional<Sentence> lastingWords(const forecast::ItemForecast &forecast);

/// On how few data it rests: "So far 3 pieces went in 3 weeks.", "Mostly our guess: 1 piece went in
/// 2 weeks."
Sentence restsOnWords(const forecast::ItemForecast &forecast);

/// "It may run out before the next round." Nothing where that is unlikely.
std::optional<Sentence> roundWords(const forecast::ItemForecast &forecast);

/// "Opened, it probably stays good 2 to 8 weeks." @param earliest,latest days; nothing: longer.
Sentence keepingWords(std::optional<int> earliest, std::optional<int> latest);

} // namespace lidlark::wording

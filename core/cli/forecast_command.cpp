#include "core/cli/commands.h"

#include "core/forecast/piece_forecast.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace lidlark::cli {

int runForecast(const Options &options, const ForecastOptions &forecast)
{
    const Result<std::int64_t> pieces =
        forecast::quantile({forecast.shape, forecast.rate}, forecast.days, forecast.p);
    if (!pieces)
        return fail(pieces.error());
    if (options.json) {
        std::cout << nlohmann::ordered_json{{"pieces", *pieces}}.dump() << '\n';
        return allWell;
    }
    std::cout << "At most " << *pieces << (*pieces == 1 ? " piece goes" : " pieces go") << " in "
              << forecast.days << (forecast.days == 1 ? " day" : " days")
              << ", with a chance of at least " << forecast.p << ".\n";
    return allWell;
}

} // namespace lidlark::cli

#include "core/cli/crew_commands.h"

#include "core/cli/json_input.h"
#include "core/store/recording.h"
#include "core/usecase/erase.h"

#include <iostream>

namespace lidlark::cli {

int runErase(const Options &options, const EraseOptions &erase)
{
    const auto what = usecase::erasableNames.parse(erase.what);
    if (!what) {
        std::cerr << "erase: --what check-ins or plays?\n";
        return wrongUse;
    }
    auto desk = Desk::open(options);
    if (!desk)
        return fail(desk.error());
    usecase::Workplace &place = (*desk)->workplace();
    const auto today = store::todayOf(place.clock);
    if (!today)
        return fail(today.error());
    const auto day = erase.upTo.empty() ? std::optional(today->day) : dayFromText(erase.upTo);
    if (!day)
        return fail({ErrorCode::Invalid, "--up-to: not a day such as 2027-01-11"});
    const auto gone = usecase::erase(place, *what, *day);
    if (!gone)
        return fail(gone.error());
    const nlohmann::ordered_json told{
        {"what", erase.what}, {"up_to", toText(*day)}, {"gone", *gone}};
    std::cout << told.dump(2) << '\n';
    return allWell;
}

} // namespace lidlark::cli
